"""A wired buttonhole: the stems bound with tape, and the pin that will hold it to the lapel."""

from corymb.picture.colour import shade
from corymb.picture.geometry import Point
from corymb.picture.paths import disc, polyline
from corymb.picture.svg import element
from corymb.picture.vessels import hand
from corymb.picture.vessels.base import Body, Halves, piece

USUAL = hand.USUAL
STEEL, PEARL = "#8d9094", "#efe8dc"


def draw(body: Body) -> Halves:
    bound = hand.draw(body)
    return Halves(bound.behind, bound.before + pin(body))


def pin(body: Body) -> str:
    """A pearl-headed pin, laid across the binding."""
    long = body.high * 1.25
    foot = Point(body.half * 1.6 + long * 0.1, -body.high * 0.42)
    tip = Point(foot.x - long * 0.62, foot.y - long * 0.34)
    thick = body.cm * 0.07
    parts = []
    for dx, dy, tone in ((0.5, 1.5, -0.3), (0.0, 0.0, 0.0)):
        line = polyline([foot, tip]).at(dx * thick, dy * thick)
        parts.append(
            element(
                "path",
                d=line.written(),
                fill="none",
                stroke=shade(STEEL, tone),
                stroke_width=thick,
                stroke_linecap="round",
            )
        )
    size = body.cm * 0.2
    parts.append(piece(disc(foot.x + size * 0.1, foot.y + size * 0.25, size), shade(PEARL, -0.25)))
    parts.append(piece(disc(foot.x, foot.y, size), PEARL))
    parts.append(piece(disc(foot.x - size * 0.3, foot.y - size * 0.3, size * 0.3), "#ffffff"))
    return "".join(parts)
