"""How much of a picture does each stem really take? Its heads in one flat colour each, counted.

The heads' papers are all given their stem's colour of the count, shadows and soft edges taken
away; what is left is rendered by Chromium and its pixels are told apart by exact colour.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from playwright.sync_api import Page

HEAD = re.compile(r'<g id="[^"]*-(\d+)[abc]\d?">(.*?)</g>', re.DOTALL)
PAPER = re.compile(r'(fill|stroke)="#[0-9a-f]{6}"')
SHADOW = re.compile(r'<use href="[^"]*s" opacity="[^"]*" transform="[^"]*"/>')
WIDE = 640

COUNT = """async ([svg, wide, stems]) => {
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([svg], {type: "image/svg+xml"}));
  await image.decode();
  const high = Math.round(wide * image.naturalHeight / image.naturalWidth);
  const canvas = new OffscreenCanvas(wide, high);
  const brush = canvas.getContext("2d");
  brush.drawImage(image, 0, 0, wide, high);
  const seen = new Array(stems).fill(0), data = brush.getImageData(0, 0, wide, high).data;
  for (let at = 0; at < data.length; at += 4) {
    if (data[at] === 1 && data[at + 1] === 254 && data[at + 2] < stems) seen[data[at + 2]] += 1;
  }
  return seen;
}"""


def flat(svg: str) -> str:
    """The picture with every head of stem n in the colour rgb(1, 254, n)."""

    def coloured(found: re.Match[str]) -> str:
        own = f"#01fe{int(found[1]):02x}"
        return found[0].replace(found[2], PAPER.sub(rf'\1="{own}"', found[2]))

    sized = svg.replace("<svg ", f'<svg shape-rendering="crispEdges" width="{WIDE}" ', 1)
    return HEAD.sub(coloured, SHADOW.sub("", sized))


def shares_seen(page: Page, pictures: Mapping[str, tuple[str, int]]) -> dict[str, list[float]]:
    """For each picture (with its number of stems) each stem's share of all that heads cover."""
    found = {}
    for known_as, (svg, stems) in pictures.items():
        seen: Any = page.evaluate(COUNT, [flat(svg), WIDE, stems])
        whole = sum(seen) or 1
        found[known_as] = [pixels / whole for pixels in seen]
    return found


SMALL = """async ([svg, wide]) => {
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([svg], {type: "image/svg+xml"}));
  await image.decode();
  const brush = new OffscreenCanvas(wide, wide).getContext("2d");
  brush.imageSmoothingQuality = "high";
  brush.drawImage(image, 0, 0, wide, wide);
  return [...brush.getImageData(0, 0, wide, wide).data];
}"""


def small_render(page: Page, svg: str, wide: int = 24) -> list[list[int]]:
    """A thumbnail's dots, row by row, each as red, green and blue."""
    data: Any = page.evaluate(
        SMALL, [svg.replace("<svg ", '<svg width="96" height="96" ', 1), wide]
    )
    return [data[at : at + 3] for at in range(0, len(data), 4)]
