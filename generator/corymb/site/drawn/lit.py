"""What becomes of each colour of a drawn picture in the lights it can be shown in?

Of the wall, the table and the vessel too. A look's drawing is published once, and beside it a small
table of its colours: the page puts others in their place when a light is asked for. A style link
has its hours' light alone, and so a drawing of its own.
"""

from __future__ import annotations

import json
import re
from collections.abc import Mapping

from corymb.trade.light.lights import Light
from corymb.trade.light.seen import seen

PAINT = re.compile(r'(?:fill|stroke|color)="(#[0-9a-f]{6})"')


def colours_in_light(svg: str, lights: Mapping[str, Light]) -> str:
    """As JSON: for each light, by its word in an address, the drawing's colours as seen in it."""
    colours = sorted(set(PAINT.findall(svg)))
    table = {
        known_as: {colour: seen(colour, light) for colour in colours}
        for known_as, light in lights.items()
    }
    return json.dumps(table, separators=(",", ":"))


def in_light(svg: str, light: Light) -> str:
    """A drawing with each of its colours as it is seen in a light."""
    return PAINT.sub(lambda paint: paint[0].replace(paint[1], seen(paint[1], light)), svg)
