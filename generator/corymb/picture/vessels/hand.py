"""A hand tie: no vessel, only twine wound round the stems and knotted, or tape."""

from corymb.picture.colour import shade
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, bow, smooth
from corymb.picture.seed import give
from corymb.picture.svg import element
from corymb.picture.vessels import ribbon
from corymb.picture.vessels.base import Body, Halves, piece

USUAL = "#c9b184"
ROUNDS = 5


def draw(body: Body) -> Halves:
    """Wound about the middle of the stems at `high`; each round lies on the one below.

    What the recipe calls tape, ribbon or cloth is drawn broad; anything else is twine.
    """
    if body.is_called("tape", "ribbon", "silk", "velvet", "ticking"):
        return ribbon.draw(body)
    thick = max(body.half * 0.2, body.cm * 0.22)
    rounds = []
    for turn in range(ROUNDS):
        y = -body.high + (turn - ROUNDS / 2) * thick * 0.86
        colour = shade(body.colour, give(body.rng, 0.03))
        band = _round(body.half * 1.06, y, thick, give(body.rng, thick * 0.3))
        rounds.append(piece(band.at(thick * 0.06, thick * 0.2), shade(body.colour, -0.16)))
        rounds.append(piece(band, colour))
    return Halves("", "".join(rounds) + _knot(body, thick))


def _round(half: float, y: float, thick: float, slant: float) -> Outline:
    sag = thick * 0.9
    return smooth(
        [
            Point(-half, y - slant),
            Point(0, y + sag),
            Point(half, y + slant),
            Point(half, y + slant + thick),
            Point(0, y + sag + thick),
            Point(-half, y - slant + thick),
        ],
        closed=True,
        ease=1 / 8,
    )


def _knot(body: Body, thick: float) -> str:
    """Two loose ends and the knot over them."""
    x, y = body.half * 0.3, -body.high + thick * 1.2
    parts = []
    for out, down in ((-1.1, 7.5), (1.5, 6.2)):
        end = Point(x + out * thick * 2.2, y + down * thick)
        course = bow(
            Point(x, y), Point(x + out * thick * 2, y + thick), Point(end.x, y + thick * 4), end
        )
        for dx, dy, tone in ((0.1, 0.22, -0.16), (0.0, 0.0, 0.0)):
            line = course.at(dx * thick, dy * thick)
            parts.append(
                element(
                    "path",
                    d=line.written(),
                    fill="none",
                    stroke_linecap="round",
                    stroke=shade(body.colour, tone),
                    stroke_width=thick * 0.55,
                )
            )
    bead = smooth(
        [
            Point(x - thick, y),
            Point(x, y - thick * 0.8),
            Point(x + thick, y),
            Point(x, y + thick * 0.8),
        ],
        closed=True,
    )
    return "".join(parts) + piece(bead, shade(body.colour, 0.04))
