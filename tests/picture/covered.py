"""How much of the paper does a head cover? Its silhouette filled in, and the dots counted."""

from __future__ import annotations

import re
from xml.etree import ElementTree

from PIL import Image, ImageDraw

from corymb.picture.forms import Drawn

STEP = re.compile(r"([Mmlchz])([^Mmlchz]*)")
NUMBER = re.compile(r"-?(?:\d+(?:\.\d+)?|\.\d+)")
SCALE = 2
Spot = tuple[float, float]


def covered(head: Drawn) -> float:
    """In square units of the drawing; stalks alone are not counted."""
    box = head.box
    size = (round(box.width * SCALE) + 4, round(box.height * SCALE) + 4)
    image = Image.new("1", size)
    brush = ImageDraw.Draw(image)
    for path in ElementTree.fromstring(f"<g>{head.silhouette}</g>"):
        lines = [
            [((x - box.left) * SCALE + 2, (y - box.top) * SCALE + 2) for x, y in line]
            for line in lines_of(path.get("d", ""))
        ]
        half = float(path.get("stroke-width", "0")) / 2 * SCALE
        for line in lines:
            if half:
                (x, y) = line[0]
                brush.ellipse((x - half, y - half, x + half, y + half), fill=1)
            elif len(line) > 2:
                brush.polygon(line, fill=1)
    return sum(image.histogram()[1:]) / SCALE**2


def lines_of(path: str) -> list[list[Spot]]:
    """Each outline of a path as points; curves in eight steps."""
    lines: list[list[Spot]] = []
    x, y = 0.0, 0.0
    for letter, text in STEP.findall(path):
        found = [float(word) for word in NUMBER.findall(text)]
        if letter in "Mm":
            x, y = (found[0], found[1]) if letter == "M" else (x + found[0], y + found[1])
            lines.append([(x, y)])
        for at in range(0, len(found), 6 if letter == "c" else 2):
            if letter == "c":
                a, b, c = ((x + found[at + n], y + found[at + n + 1]) for n in (0, 2, 4))
                lines[-1] += [_along((x, y), a, b, c, step / 8) for step in range(1, 9)]
                x, y = c
            elif letter == "l":
                x, y = x + found[at], y + found[at + 1]
                lines[-1].append((x, y))
        if letter == "z":
            x, y = lines[-1][0]
    return lines


def _along(a: Spot, b: Spot, c: Spot, d: Spot, t: float) -> Spot:
    s = 1 - t
    parts = (s**3, 3 * s * s * t, 3 * s * t * t, t**3)
    x, y = (sum(part * p[n] for part, p in zip(parts, (a, b, c, d), strict=True)) for n in (0, 1))
    return x, y
