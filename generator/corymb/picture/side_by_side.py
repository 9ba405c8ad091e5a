"""How do the sizes of one arrangement compare? Side by side on one table, all at one scale."""

from collections.abc import Sequence
from dataclasses import dataclass

from corymb.picture import backdrop
from corymb.picture.arrangement import Arrangement, colour_hex
from corymb.picture.geometry import Box, moved
from corymb.picture.heads import HeadShop
from corymb.picture.layout import Layout
from corymb.picture.scene import SHADOW_INK, pieces
from corymb.picture.styles import style_of
from corymb.picture.svg import element, safe_id, text_element

WIDE, HIGHEST, LOWEST = 1400.0, 1050.0, 480.0
MARGIN = 70.0
APART = 0.16  # of the narrowest piece's width, between two
TICK = 11.0  # half the width of the ends of the line to compare with
LINE_INK, LINE_PAPER = "#2a2622", "#fffdf8"


@dataclass(frozen=True)
class _Laid:
    """One of them, laid out in cm."""

    arrangement: Arrangement
    layout: Layout
    lying: bool


def draw_side_by_side(
    arrangements: Sequence[Arrangement], title: str, line_cm: float | None = None
) -> str:
    """All of them from left to right as SVG; the same values give the same bytes.

    Each needs an id of its own, and there has to be one at least. They are seen against what the
    first is seen against. An upright line of `line_cm`, to compare with, stands at the right.
    """
    all_laid = [_laid(each) for each in arrangements]
    apart = APART * min(each.layout.box.width for each in all_laid)
    across = sum(each.layout.box.width for each in all_laid) + apart * (len(all_laid) - 1)
    across += apart if line_cm else 0
    high = max(line_cm or 0, *(each.layout.box.height for each in all_laid))
    cm = min((WIDE - 2 * MARGIN) / across, (HIGHEST - 2 * MARGIN) / high)
    sheet = Box(0, 0, WIDE, max(LOWEST, high * cm + 2 * MARGIN))
    shops = [HeadShop(each.arrangement, each.layout.blooms, cm) for each in all_laid]
    floor = (sheet.height + high * cm) / 2
    left, groups = (WIDE - across * cm) / 2, []
    for each, shop in zip(all_laid, shops, strict=True):
        box = each.layout.box
        place = moved(left - box.left * cm, floor - box.bottom * cm)
        papers = pieces(each.arrangement, each.layout, shop, cm, each.lying)
        groups.append(element("g", papers, transform=place.written()))
        left += (box.width + apart) * cm
    name = f"{safe_id(arrangements[0].id)}-sizes"
    return element(
        "svg",
        text_element("title", title, id=f"{name}-title"),
        element("defs", *[part for shop in shops for part in shop.definitions.values()]),
        _behind(all_laid[0], sheet, floor),
        element("g", *groups, color=SHADOW_INK),
        _line(left, floor, line_cm * cm) if line_cm else "",
        xmlns="http://www.w3.org/2000/svg",
        viewBox=f"0 0 {sheet.width:.0f} {sheet.height:.0f}",
        role="img",
        aria_labelledby=f"{name}-title",
    )


def _line(x: float, foot: float, long: float) -> str:
    """Upright, with its ends; dark upon pale, so that it is seen against any wall."""
    top = foot - long
    ends = "".join(f"M{x - TICK:.1f} {y:.1f}h{2 * TICK:.0f}" for y in (top, foot))
    way = f"{ends}M{x:.1f} {top:.1f}V{foot:.1f}"
    return "".join(
        element("path", d=way, fill="none", stroke=stroke, stroke_width=width)
        for stroke, width in ((LINE_PAPER, 8), (LINE_INK, 3))
    )


def _laid(arrangement: Arrangement) -> _Laid:
    style = style_of(arrangement)
    used = style.as_used(arrangement)
    return _Laid(used, style.lay(used), style.lying)


def _behind(first: _Laid, sheet: Box, floor: float) -> str:
    background = colour_hex(first.arrangement.background)
    scene = backdrop.wall(sheet, background)
    if first.lying:
        return scene + backdrop.mount(sheet, background, first.arrangement.id)
    edge = floor - sheet.height * 0.055
    return scene + backdrop.table(sheet, edge, background, first.arrangement.id)
