"""A wired buttonhole: its stems bound with tape, and through that the pin that will hold it."""

from corymb.picture.colour import shade
from corymb.picture.geometry import Point
from corymb.picture.paths import disc, polyline
from corymb.picture.svg import element
from corymb.picture.vessels import hand
from corymb.picture.vessels.base import Body, Halves, piece

USUAL = hand.USUAL
STEEL, PEARL = "#9b9da0", "#efe8dc"
LONG_CM, THICK_CM, PEARL_CM = 3.6, 0.055, 0.17  # a dressmaker's pin, from memory

ASLANT = 64.0  # degrees from upright


def draw(body: Body) -> Halves:
    bound = hand.draw(body)
    return Halves(bound.behind, pin(body) + bound.before)


def pin(body: Body) -> str:
    """A pearl-headed pin, over its shadow; the binding, which is laid on it, hides its middle."""
    cm, ground = body.cm, shade(body.ground, -0.1)
    top = Point(0, -body.high).towards(ASLANT, LONG_CM * cm * 0.5)
    tip = top.towards(ASLANT - 180, LONG_CM * cm)
    line = polyline([top, tip])
    size = PEARL_CM * cm
    return (
        _needle(line.at(0.05 * cm, 0.1 * cm).written(), ground, cm)
        + _needle(line.written(), STEEL, cm)
        + piece(disc(top.x + size * 0.15, top.y + size * 0.35, size), shade(PEARL, -0.25))
        + piece(disc(top.x, top.y, size), PEARL)
        + piece(disc(top.x - size * 0.3, top.y - size * 0.3, size * 0.3), "#ffffff")
    )


def _needle(path: str, colour: str, cm: float) -> str:
    return element(
        "path",
        d=path,
        fill="none",
        stroke=colour,
        stroke_width=THICK_CM * cm,
        stroke_linecap="round",
    )
