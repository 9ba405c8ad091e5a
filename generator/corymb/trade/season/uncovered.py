"""In which weeks can no recipe of a style be made, and what would mend that?

For each such spell: the recipe that comes nearest, by the fewest stems it lacks and then by the
least of its visible area, and for each of those the swap that comes nearest (`swaps.beyond`), so
that the studio knows what to grow or which variant to write.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from corymb.studio.studio import Studio
from corymb.trade.changes import LookLine
from corymb.trade.looks import Look
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.weeks import WEEKS, runs_of
from corymb.trade.swaps.beyond import Beyond, Nearest, Place
from corymb.trade.swaps.limits import SwapLimits

Looks = Mapping[str, Mapping[str, Look]]
"""By recipe and by variant; the recipe's own under ''."""


@dataclass(frozen=True)
class Lack:
    """A stem that keeps a look from being made, and what comes nearest to it."""

    stem: str
    essential: bool
    """Only a variant, by the studio's own hand, may change it."""
    nearest: Nearest | None


@dataclass(frozen=True)
class Spell:
    """Weeks on end, as cells, in which no recipe of a style can be made."""

    style: str
    weeks: tuple[int, ...]
    look: Look
    """The look that comes nearest."""
    lacks: tuple[Lack, ...]


def uncovered(studio: Studio, looks: Looks, makeable: Makeable, start: int) -> tuple[Spell, ...]:
    """The spells of every style that has recipes, from the cell `start` on."""
    beyond = Beyond(studio.stems, SwapLimits.of(studio.house))
    found = []
    for style in studio.styles:
        own = _looks_of(studio, looks, style)
        can = {a.week for look in own for a in makeable.answers(look) if a.state != "none"}
        for weeks in spells(can, start) if own else ():
            found.append(_spell(studio, makeable, beyond, style, weeks, own))
    return tuple(found)


def spells(can: set[int], start: int) -> tuple[tuple[int, ...], ...]:
    """The runs of cells that aren't in `can`, round the year; the first goes on at `start`.

    One that begins before `start` is given whole.
    """
    without = [week for week in WEEKS if week not in can]
    if len(without) == len(WEEKS):
        return (_cells(start, start - 1),)
    runs = [_cells(first, last) for first, last in runs_of(without)]
    return tuple(sorted(runs, key=lambda run: 0 if start in run else (run[0] - start) % len(WEEKS)))


def _cells(first: int, last: int) -> tuple[int, ...]:
    """From one cell to another, round the year."""
    return tuple(_cell(first + n) for n in range((last - first) % len(WEEKS) + 1))


def _cell(number: int) -> int:
    return (number - 1) % len(WEEKS) + 1


def _looks_of(studio: Studio, looks: Looks, style: str) -> list[Look]:
    return [
        look
        for recipe, variants in looks.items()
        if studio.recipes[recipe].style == style
        for look in variants.values()
    ]


def _spell(
    studio: Studio,
    makeable: Makeable,
    beyond: Beyond,
    style: str,
    weeks: tuple[int, ...],
    looks: Sequence[Look],
) -> Spell:
    """One spell, and what would mend it."""
    look = min(looks, key=lambda each: _lacking(makeable, each, weeks))
    stands = {stem: len(makeable.beds.weeks(stem).intersection(weeks)) for stem in studio.stems}
    taken = {line.stem for line in look.lines}
    lacks = []
    for line in _lacks(look, _blocks(makeable, look, weeks)):
        near = beyond.nearest(Place(line, studio.house.styles[style], stands, len(weeks), taken))
        if near:
            taken.add(near.swap.in_)
        lacks.append(Lack(line.stem, line.essential, near))
    return Spell(style, weeks, look, tuple(lacks))


def _lacking(makeable: Makeable, look: Look, weeks: Sequence[int]) -> tuple[int, float]:
    """How many stems a look lacks in these weeks, and how much of what is seen they are."""
    blocks = _blocks(makeable, look, weeks)
    shares = zip(look.lines, makeable.shares(look), strict=True)
    return len(blocks), sum(share for line, share in shares if line.stem in blocks)


def _blocks(makeable: Makeable, look: Look, weeks: Sequence[int]) -> frozenset[str]:
    """The stems that keep a look from being made in any of these weeks."""
    answers = makeable.answers(look)
    return frozenset(stem for week in weeks for stem in answers[week - 1].blocks)


def _lacks(look: Look, blocks: frozenset[str]) -> Iterator[LookLine]:
    """The lines of these stems, those of one stem taken together."""
    for stem in dict.fromkeys(line.stem for line in look.lines if line.stem in blocks):
        lines = [line for line in look.lines if line.stem == stem]
        essential = any(line.essential for line in lines)
        count = sum(line.count for line in lines)
        yield replace(lines[0], count=count, essential=essential)
