"""How is a turned or thrown vessel cut? Its inside, its outside, a darker side and its rim."""

from corymb.picture.colour import shade
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, bow, disc, smooth
from corymb.picture.svg import element
from corymb.picture.vessels.base import Body, Halves, piece, profile

HANDLED = ("cup", "teacup", "mug", "jug", "pitcher")
RIM = 0.13  # how far the mouth opens to us, as a part of its half width


def draw(
    body: Body, half_profile: list[tuple[float, float]], foot: Outline | None = None
) -> Halves:
    """The profile is told in parts of the half width and of the height, foot first."""
    points = [(part * body.half, up * body.high) for part, up in half_profile]
    mouth, top = points[-1]
    rim = mouth * RIM
    inside = piece(disc(0, -top, mouth, rim), shade(body.colour, -0.17))
    if body.is_called(*HANDLED):
        inside = _handle(body, points) + inside
    outside = profile(points, rim)
    shaded = profile([(half * 0.97, high) for half, high in points], rim)
    parts = [piece(foot, shade(body.colour, -0.1))] if foot else []
    parts += [
        piece(outside, shade(body.colour, -0.085)),
        piece(_lit(shaded, mouth), body.colour),
        piece(_glint(points), shade(body.colour, 0.04)),
    ]
    lip = profile([(mouth * 1.0, top - rim * 0.25), (mouth * 1.03, top)], rim)
    parts.append(piece(lip, shade(body.colour, 0.03)))
    return Halves(inside, "".join(parts))


def _handle(body: Body, points: list[tuple[float, float]]) -> str:
    """A loop on the right, behind the body."""
    side = max(half for half, _ in points)
    top, foot = Point(side * 0.86, -body.high * 0.84), Point(side * 0.86, -body.high * 0.3)
    out = side * 1.62
    loop = bow(top, Point(out, top.y - body.high * 0.06), Point(out, foot.y), foot)
    wide = body.half * 0.15
    return "".join(
        element(
            "path",
            d=loop.at(0, drop).written(),
            fill="none",
            stroke=shade(body.colour, tone),
            stroke_width=wide,
        )
        for drop, tone in ((wide * 0.3, -0.15), (0.0, -0.03))
    )


def _lit(outline: Outline, mouth: float) -> Outline:
    """The lighter sheet, moved towards the light so that the dark one shows on the right."""
    return outline.at(-mouth * 0.06, 0)


def _glint(points: list[tuple[float, float]]) -> Outline:
    """A sliver of lighter paper following the left side."""
    middle = points[len(points) // 3 : -1] or points
    left = [(-half * 0.74, high) for half, high in middle]
    right = [(-half * 0.66, high) for half, high in middle]
    around = [Point(x, -y) for x, y in [*left, *reversed(right)]]
    return smooth(around, closed=True, ease=1 / 9)
