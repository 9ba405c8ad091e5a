"""Phlox, hydrangea, sweet william, lilac: a dome packed with small open florets."""

from collections.abc import Iterator
from random import Random

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, dealt, eyed
from corymb.picture.geometry import Point
from corymb.picture.paths import bow, disc
from corymb.picture.shapes import filling, floret

RISE = (0.98, 1.04, 0.96)  # how high the dome stands over its middle, in radii, for each view:
FALL = (0.86, 0.68, 0.94)  # and how far it falls below: from the front, the side, well above
RINGS = (0.72, 0.42, 0.0)  # from the rim in, so that those in the middle lie on top
LIGHTS = (-0.035, -0.005, 0.025)


def draw(head: Head) -> Drawn:
    """Florets ring by ring, each with its eye; from the side their stalks are seen."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    count = min(36, max(13, round(9 + head.across_cm * 2.3)))
    size = min(r * 0.42, r * 1.76 / count**0.5)
    view = head.view % len(RISE)
    if view == 1:
        _stalks(sheet, head)
    low = r * (FALL[view] - RISE[view]) / 2
    tall = r * (FALL[view] + RISE[view]) / 2
    sheet.cut([disc(0, low, r * 0.84, tall * 0.8)], shade(head.palette.main, -0.12))
    colours = dealt(eyed(head.palette), count, rng)
    lobes = rng.choice((4, 5, 5))
    for ring, light in zip(_rings(count), LIGHTS, strict=True):
        spots = [(_on_dome(at, size / r, view, r), colours[index]) for index, at in ring]
        _florets(sheet, head, spots, size, lobes, light, rng)
    return sheet.finished()


def _rings(count: int) -> Iterator[list[tuple[int, Point]]]:
    """The florets' places on a disc of radius 1, outermost first."""
    places = list(enumerate(filling(count, 1.0, 0.98)))
    outer = 9.0
    for inner in RINGS:
        yield [pair for pair in places if inner <= pair[1].distance(Point(0, 0)) < outer]
        outer = inner


def _on_dome(at: Point, size: float, view: int, r: float) -> Point:
    """A place on the disc as it is seen on the dome."""
    tall = RISE[view] if at.y < 0 else FALL[view]
    return Point(at.x * r * (1 - size * 0.95), at.y * r * (tall - size * 0.9))


def _florets(
    sheet: Sheet,
    head: Head,
    spots: list[tuple[Point, str]],
    size: float,
    lobes: int,
    light: float,
    rng: Random,
) -> None:
    """Those of one ring, each turned a little, in a darker and a lighter sheet of its colour."""
    groups: dict[tuple[str, int], list[Point]] = {}
    for at, colour in spots:
        groups.setdefault((colour, rng.randrange(2)), []).append(at)
    share = head.palette.heart_share
    eye = size * 2 * max(0.15, min(0.42, share**0.5 * 0.7))
    for (colour, odd), places in sorted(groups.items()):
        paper = shade(colour, light + 0.02 * odd - 0.01)
        cut = floret(size * (0.94 + 0.1 * odd), lobes, 40 * odd + light * 300)
        sheet.stamped(cut, places, paper, size * 0.11, rim=size * 0.07)
    eyes: dict[str, list[Point]] = {}
    for at, colour in spots:
        eyes.setdefault(head.palette.heart if share else shade(colour, -0.08), []).append(at)
    for colour, places in eyes.items():
        sheet.dots(places, eye, colour, True)


def _stalks(sheet: Sheet, head: Head) -> None:
    """From the stem's top to the dome's underside."""
    r = head.radius
    foot = Point(0, r * 0.84)
    for part in (-0.62, -0.3, 0.0, 0.3, 0.62):
        top = Point(r * part, r * 0.3)
        bend = Point(top.x * 0.9, r * 0.7)
        sheet.line(bow(foot, bend, top, top), shade(head.green, 0.03 * (part > 0)), r * 0.06)
