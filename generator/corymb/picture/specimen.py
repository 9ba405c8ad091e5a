"""What does one stem look like by itself? A single head on its stalk, for the flower's own page."""

from corymb.picture.arrangement import PictureStem, colour_hex
from corymb.picture.colour import Palette, shade
from corymb.picture.forms import FORMS, Facing, Head
from corymb.picture.geometry import Box
from corymb.picture.seed import dice
from corymb.picture.svg import element, safe_id, text_element

WIDE, HIGH = 400.0, 480.0
MARGIN = 28.0
STALK = 0.42  # of the sheet's height is stalk, under a round head
ROUND = 1.2  # so many times as long as wide a head still counts as round


def draw_stem(stem: PictureStem) -> str:
    """One head on its stalk as an SVG without a ground; the same values give the same bytes."""
    form = FORMS[stem.form]
    length_cm = min(stem.head_length_cm or stem.head_cm * form.length, form.tip * stem.head_cm)
    room = HIGH - 2 * MARGIN
    round_ = form.facing is Facing.FRONT or length_cm < ROUND * stem.head_cm
    upright = room * (1 - STALK) if round_ else room * 0.82
    tall_cm = stem.head_cm if form.facing is Facing.FRONT else max(length_cm, stem.head_cm)
    cm = min((WIDE - 2 * MARGIN) / stem.head_cm, upright / tall_cm)
    green = colour_hex(stem.green)
    head = Head(
        across=stem.head_cm * cm,
        length=length_cm * cm,
        palette=Palette.of(stem.colours),
        green=green,
        rng=dice(stem.id, "specimen"),
        cm=cm,
        heads=stem.heads_per_stem,
    )
    drawn = form.draw(head)
    x, y = _place(drawn.box, form.facing)
    pieces = [
        _stalk(x, y, form.facing, green, cm),
        element("g", drawn.pieces, transform=f"translate({x:.1f} {y:.1f})"),
    ]
    name = safe_id(stem.id)
    return element(
        "svg",
        text_element("title", stem.name or stem.id, id=f"{name}-stem-title"),
        *pieces,
        xmlns="http://www.w3.org/2000/svg",
        viewBox=f"0 0 {WIDE:.0f} {HIGH:.0f}",
        role="img",
        aria_labelledby=f"{name}-stem-title",
    )


def _place(box: Box, facing: Facing) -> tuple[float, float]:
    """Where the head's stem ends, so that the head stands in the middle and near the top."""
    x = WIDE / 2 - (box.left + box.right) / 2
    free = HIGH - 2 * MARGIN - (box.bottom - box.top)
    top = MARGIN + max(0.0, free * (0.5 if facing is Facing.HANGING else 0.12))
    return x, top - box.top


def _stalk(x: float, y: float, facing: Facing, green: str, cm: float) -> str:
    """A stalk from the head to the sheet's foot; a hanging form comes from the top instead."""
    width = min(12.0, max(3.5, 0.35 * cm))
    end = "" if facing is Facing.HANGING else f"{HIGH:.0f}"
    if not end:
        return element(
            "path",
            d=f"M{x:.1f} {y:.1f}Q{x - 46:.1f} {y:.1f} {x - 46:.1f} 0",
            fill="none",
            stroke=shade(green, -0.04),
            stroke_width=width,
        )
    return element(
        "path",
        d=f"M{x:.1f} {y:.1f}Q{x + 5:.1f} {(y + HIGH) / 2:.1f} {x - 9:.1f} {end}",
        fill="none",
        stroke=shade(green, -0.04),
        stroke_width=width,
    )
