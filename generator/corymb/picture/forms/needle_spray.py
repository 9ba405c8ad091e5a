"""Fir, pine, yew: a twig that branches to both sides, all of it fringed with needles."""

import math
from itertools import pairwise

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, curve_up, eyed, strip
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, polyline
from corymb.picture.seed import give

NEEDLE = 0.3  # long, in half widths of the spray
THICK = 0.13  # from one needle to the next, likewise
SLANT = 52.0  # degrees from the shoot
APART = 0.85  # from one pair of side shoots to the next, likewise
TAPER = (0.55, 0.75, 0.9)  # the last needles, from the tip back
SPREAD = (58.0, 40.0)  # how far those at the foot and at the tip lean aside


def draw(head: Head) -> Drawn:
    """The lower shoots first, then the twig's own needles to its tip, each with its paler backs."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    needle = r * NEEDLE
    axis = curve_up(head.length - needle * 0.6, give(rng, 0.1) * r)
    twig = shade(head.green, -0.03)
    sheet.line(strip([axis(t) for t in (0, 0.4, 0.75, 1)]), twig, max(1.2, r * 0.06))
    pairs = max(2, round(head.length / (r * APART)))
    for pair in range(pairs):
        t = 0.08 + 0.78 * pair / pairs
        for side in (-1, 1):
            foot = axis(t + (0.06 if side > 0 else 0.0))
            lean = side * (SPREAD[0] + (SPREAD[1] - SPREAD[0]) * t + give(rng, 5))
            reach = (r * _wide(t) - needle * 0.5) / math.sin(math.radians(abs(lean)))
            end = foot.towards(lean, reach)
            bend = foot.between(end, 0.5).towards(lean + 90, -side * reach * 0.05)
            _fringe(sheet, head, [foot, bend, end], needle, pair * 2 + (side > 0))
    _fringe(sheet, head, [axis(0.08 + 0.92 * n / 4) for n in range(5)], needle, 1)
    return sheet.finished()


def _wide(t: float) -> float:
    """How far a shoot reaches aside that leaves the twig at a part of its length."""
    return 1.0 if t < 0.3 else 1 - 0.75 * (t - 0.3)


def _fringe(sheet: Sheet, head: Head, course: list[Point], needle: float, index: int) -> None:
    """One shoot: its needles, and on them a narrower comb of the last colour."""
    light = (0.015, -0.015)[index % 2] + give(head.rng, 0.01)
    colour = shade(eyed(head.palette).pick(index), light)
    sheet.cut([_comb(course, needle, head.radius * THICK)], colour)
    share = head.palette.heart_share
    if share:
        inner = _comb(course, needle * min(0.7, share * 1.4), head.radius * THICK)
        sheet.cut([inner], shade(head.palette.heart, light * 0.5), True)


def _comb(course: list[Point], needle: float, step: float) -> Outline:
    """Teeth up the one side and down the other, the last a needle at the tip."""
    spots = _steps(course, step)
    sides: list[list[Point]] = []
    for way in (-1, 1):
        edge = []
        for index, (here, after) in enumerate(pairwise(spots)):
            left = len(spots) - 2 - index
            long = needle * (TAPER[left] if left < len(TAPER) else 1.0)
            edge += [here, here.towards(here.angle_to(after) + way * SLANT, long)]
        sides.append(edge)
    tip = spots[-1].towards(spots[-2].angle_to(spots[-1]), needle * 0.6)
    return polyline([*sides[0], tip, *reversed(sides[1])], True)


def _steps(course: list[Point], step: float) -> list[Point]:
    """Points along the course, about so far from each other."""
    spots = [course[0]]
    for start, end in pairwise(course):
        count = max(1, round(start.distance(end) / step))
        spots += [start.between(end, (n + 1) / count) for n in range(count)]
    return spots
