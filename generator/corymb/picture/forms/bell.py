"""Bluebell, bellflower, fritillary, foxglove: bells hung from an arching stalk."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, strip
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, bow, disc
from corymb.picture.seed import give


def draw(head: Head) -> Drawn:
    """One nodding bell where the head is no longer than wide; else a stalk of them."""
    sheet, rng = Sheet(), head.rng
    long = max(head.length, head.across)
    count = max(1, min(11, round(long / head.across * 1.6) - 1))
    bell = head.across * (0.5 if count > 1 else 0.8)
    side = rng.choice((-1, 1))
    top = long - (0 if count > 1 else bell * 0.1)
    axis = [Point(side * head.across * 0.22 * t**3, -top * (t - 0.06 * t**4)) for t in _steps(6)]
    sheet.line(strip(axis), head.green, max(1.2, bell * 0.07))
    for index in range(count):
        t = 0.3 + 0.68 * index / max(1, count - 1) if count > 1 else 1.0
        hand = side if count == 1 else (-1 if index % 2 else 1)
        size = bell * (1.0 - 0.45 * (t - 0.3)) if count > 1 else bell
        foot = Point(side * head.across * 0.22 * t**3, -top * (t - 0.06 * t**4))
        reach = head.across * (0.17 if count > 1 else 0.08)
        hung = Point(foot.x + hand * reach, foot.y + size * 0.12)
        crown = Point(foot.x + hand * reach * 0.7, foot.y - size * 0.16)
        sheet.line(bow(foot, crown, crown, hung), head.green, max(1.0, bell * 0.045))
        colour = shade(head.palette.pick(index), give(rng, 0.02))
        _bell(sheet, head, hung, size, -hand * (14 + give(rng, 8)), colour)
    return sheet.finished()


def _bell(sheet: Sheet, head: Head, at: Point, size: float, turn: float, colour: str) -> None:
    """The dark mouth, the bell over it with three lobes, and the green cap it hangs from."""
    inner = head.palette.heart if head.palette.heart_share else shade(colour, -0.1)
    sheet.cut([disc(0, size * 0.84, size * 0.4, size * 0.13).at(at.x, at.y, turn)], inner)
    sheet.layer([_skirt(size).at(at.x, at.y, turn)], colour, size * 0.035)
    fold = disc(-size * 0.1, size * 0.5, size * 0.022, size * 0.26).at(at.x, at.y, turn)
    sheet.cut([fold], shade(colour, -0.06), True)
    sheet.cut([disc(0, size * 0.03, size * 0.15, size * 0.08).at(at.x, at.y, turn)], head.green)


def _skirt(size: float) -> Outline:
    half = size * 0.5
    return Outline(
        Point(0, 0),
        (
            (Point(half * 0.85, 0), Point(half * 0.5, size * 0.6), Point(half, size * 0.9)),
            (Point(half * 0.75, size), Point(half * 0.5, size), Point(half * 0.36, size * 0.86)),
            (
                Point(half * 0.2, size * 1.02),
                Point(-half * 0.2, size * 1.02),
                Point(-half * 0.36, size * 0.86),
            ),
            (Point(-half * 0.5, size), Point(-half * 0.75, size), Point(-half, size * 0.9)),
            (Point(-half * 0.5, size * 0.6), Point(-half * 0.85, 0), Point(0, 0)),
        ),
    )


def _steps(count: int) -> list[float]:
    return [step / (count - 1) for step in range(count)]
