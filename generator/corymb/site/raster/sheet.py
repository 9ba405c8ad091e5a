"""How large is a drawing's sheet, and how does it take another shape without losing a flower?"""

from __future__ import annotations

import re

VIEW_BOX = re.compile(r'viewBox="(\S+) (\S+) (\S+) (\S+)"')


class NotDrawnError(ValueError):
    """A drawing that can't be turned into pixels."""


def view_box(svg: str) -> tuple[float, float, float, float]:
    """Left, top, width and height of a drawing's sheet. Raises NotDrawnError."""
    found = VIEW_BOX.search(svg)
    if found is None:
        raise NotDrawnError("a drawn picture has no viewBox.")
    left, top, width, height = (float(number) for number in found.groups())
    return left, top, width, height


def reframed(svg: str, shape: tuple[int, int]) -> str:
    """The drawing with more of its wall and table about it, until it has this shape."""
    left, top, width, height = view_box(svg)
    across, down = shape
    wide, high = max(width, height * across / down), max(height, width * down / across)
    return on_sheet(svg, (left - (wide - width) / 2, top - (high - height) / 2, wide, high))


def on_sheet(svg: str, sheet: tuple[float, float, float, float]) -> str:
    """The drawing on another sheet: its left, top, width and height in the drawing's own units."""
    return VIEW_BOX.sub(f'viewBox="{" ".join(f"{number:.2f}" for number in sheet)}"', svg, count=1)
