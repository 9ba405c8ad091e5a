"""How are the leaves between the heads drawn? In a few sheets, each over the shadow of its own."""

from corymb.picture.arrangement import colour_hex
from corymb.picture.colour import shade
from corymb.picture.layout import Leaf
from corymb.picture.paths import Outline, written
from corymb.picture.shapes import leaf, rib
from corymb.picture.svg import element

SHEETS = 4  # leaves of one sheet and colour are one path; more sheets, more edges between leaves
INSIDE = -0.045  # leaves stand further in than heads, and are cut from a darker sheet


def leaf_sheets(leaves: tuple[Leaf, ...], cm: float) -> str:
    """All the leaves, from the outermost in, so that the middle lies on top."""
    parts = []
    size = -(-len(leaves) // SHEETS)
    for number in range(SHEETS):
        sheet = leaves[number * size : (number + 1) * size]
        for green in dict.fromkeys(one.green for one in sheet):
            parts.append(_sheet([one for one in sheet if one.green == green], green, number, cm))
    return "".join(reversed(parts))


def _sheet(leaves: list[Leaf], green: str, number: int, cm: float) -> str:
    colour = shade(colour_hex(green), INSIDE + 0.02 * (number % 2))
    blades, ribs = [], list[Outline]()
    for index, one in enumerate(leaves):
        long, bend = one.length_cm * cm, 0.12 if index % 2 else -0.12
        x, y = one.at.x * cm, one.at.y * cm
        blades.append(leaf(long, long * 0.44, bend).at(x, y, one.lean))
        ribs.append(rib(long, long * 0.03, bend).at(x, y, one.lean))
    face = written(blades)
    return (
        element("path", d=face, fill=shade(colour, -0.1), transform="translate(2 5)")
        + element("path", d=face, fill=colour)
        + element("path", d=written(ribs), fill=shade(colour, -0.07))
    )
