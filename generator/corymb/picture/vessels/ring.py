"""A ring: the wire or twisted willow that a crown or a wreath is bound to."""

from corymb.picture.colour import shade
from corymb.picture.paths import disc
from corymb.picture.svg import element
from corymb.picture.vessels.base import Body, Halves

USUAL = "#8b6f4f"


def draw(body: Body) -> Halves:
    """Three strands that cross one another; `half` and `high` are the ring's half axes."""
    thick = body.cm * 0.36
    strands = []
    for index, (wide, tall) in enumerate(((1.0, 1.0), (0.985, 1.02), (1.01, 0.985))):
        around = disc(0, -body.high, body.half * wide, body.high * tall)
        for drop, tone in ((0.4, -0.14), (0.0, 0.02 * index)):
            strands.append(
                element(
                    "path",
                    d=around.at(0, drop * thick).written(),
                    fill="none",
                    stroke=shade(body.colour, tone),
                    stroke_width=thick * 0.8,
                )
            )
    return Halves("".join(strands), "")
