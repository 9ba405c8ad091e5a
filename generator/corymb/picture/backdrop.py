"""What is the arrangement seen against? The cloth or wall it is made for, as sheets of paper.

Wall and table go on past the sheet on all sides, so that a frame of another shape (a tall card
for a wide piece) is filled without cutting into the flowers.
"""

from corymb.picture.colour import lightness, shade
from corymb.picture.geometry import Box, Point
from corymb.picture.paths import disc, polyline, smooth
from corymb.picture.seed import dice, give
from corymb.picture.svg import element


def step(background: str, amount: float) -> str:
    """A neighbouring sheet: darker on a light wall, lighter on a dark one."""
    return shade(background, -amount if lightness(background) > 0.35 else amount)


def wall(sheet: Box, background: str) -> str:
    return element(
        "rect",
        x=sheet.left - sheet.width,
        y=sheet.top - sheet.height,
        width=3 * sheet.width,
        height=3 * sheet.height,
        fill=background,
    )


def table(sheet: Box, edge: float, background: str, seed: str) -> str:
    """The table: a second sheet, its upper edge torn almost straight, over its own shadow."""
    rng = dice(seed, "table")
    points = [
        Point(sheet.left - 20 + (sheet.width + 40) * n / 9, edge + give(rng, sheet.height * 0.004))
        for n in range(10)
    ]
    top = smooth(points)
    right, left = sheet.right + sheet.width, sheet.left - sheet.width
    below = sheet.bottom + sheet.height
    around = polyline(
        [Point(right, edge), Point(right, below), Point(left, below), Point(left, edge)]
    )
    whole = top.written() + "L" + around.written()[1:] + "z"
    return element("path", d=whole, fill=step(background, 0.085), transform="translate(0 -5)") + (
        element("path", d=whole, fill=step(background, 0.035))
    )


def mount(sheet: Box, background: str, seed: str) -> str:
    """For what lies on the table: a sheet beneath it, torn a little unevenly at its edges."""
    rng, inset = dice(seed, "mount"), min(sheet.width, sheet.height) * 0.045
    left, top = sheet.left + inset, sheet.top + inset
    right, bottom = sheet.right - inset, sheet.bottom - inset
    corners = [Point(left, top), Point(right, top), Point(right, bottom), Point(left, bottom)]
    points = []
    for corner, following in zip(corners, [*corners[1:], corners[0]], strict=True):
        for part in (0.0, 0.2, 0.4, 0.6, 0.8):
            place = corner.between(following, part)
            points.append(Point(place.x + give(rng, 1.6), place.y + give(rng, 1.6)))
    face = polyline(points, True).written()
    below = element("path", d=face, fill=step(background, 0.085), transform="translate(3 7)")
    return below + element("path", d=face, fill=step(background, 0.03))


def ground_shadow(half: float, deep: float, background: str) -> str:
    """The flat shadow under what stands, falling to the right."""
    return element(
        "path",
        d=disc(half * 0.22, deep * 0.2, half, deep).written(),
        fill=shade(step(background, 0.035), -0.075),
    )
