"""Can a look be made in a week: as pictured, with swaps (which?), or not then (what blocks it)?

A week is judged by its Thursday, as its cell is (`weeks`). Where a stem doesn't stand, the best
stem that does may stand in for it (`swaps.standing_in`). Three rules keep a swapped piece the
recipe's own: an essential stem is changed only by a variant, by the studio's own hand; no stem
stands in twice, nor one that is in the look already, in whatever guise; and swaps take at most a
part of the visible area and a few of the lines, half and three unless the studio says otherwise.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import Literal

from corymb.ledger import AsAsked
from corymb.studio.models import Stem, Style
from corymb.studio.studio import Studio
from corymb.trade.colour.areas import line_shares
from corymb.trade.looks import Look
from corymb.trade.season.beds import Beds
from corymb.trade.season.sureness import sureness
from corymb.trade.season.weeks import WEEKS, thursday
from corymb.trade.swaps.limits import SwapLimits
from corymb.trade.swaps.matching import matched
from corymb.trade.swaps.standing_in import StandIn, StandIns

State = Literal["pictured", "swaps", "none"]
DAYS_IN_WEEK = 7


@dataclass(frozen=True)
class Answer:
    """Whether a look can be made in a week, and how."""

    week: int
    state: State
    chance: float
    """How likely every stem it needs stands: as likely as the least likely of them; 0 for none."""
    swaps: tuple[StandIn, ...] = ()
    blocks: tuple[str, ...] = ()
    """The stems, by id, that keep it from being made."""
    too_much: bool = False
    """Whether each of them has a stand-in, and only together they would change too much."""
    nearest: int | None = None
    """For `none`: the nearest week, round the year, in which it can be made; ties go forward.

    It knows of no today: it may lie before the week asked about, and so be over already.
    """

    @property
    def sure(self) -> str:
        """How sure it is, in a word: `not then` exactly where it can't be made."""
        return sureness(self.chance, held=self.state != "none")


class Makeable:
    """The weeks of a studio's looks. Each look is worked out once."""

    def __init__(
        self,
        beds: Beds,
        stems: Mapping[str, Stem],
        style_of: Mapping[str, Style],
        limits: SwapLimits,
    ) -> None:
        """`style_of` is by recipe."""
        self.beds = beds
        self._stems = stems
        self._style_of = style_of
        self._limits = limits
        self.stand_ins = StandIns(stems, limits)
        self._days: dict[str, int] = {}
        self._found: dict[str, tuple[Look, Style, tuple[Answer, ...]]] = {}

    @classmethod
    def of(cls, studio: Studio) -> Makeable:
        """From a studio as read."""
        styles = AsAsked(
            lambda: studio.recipes,
            lambda recipe_id: studio.recipes[recipe_id].style in studio.house.styles,
            lambda recipe_id: studio.house.styles[studio.recipes[recipe_id].style],
        )
        return cls(Beds.of(studio), studio.stems, styles, SwapLimits.of(studio.house))

    def answers(self, look: Look) -> tuple[Answer, ...]:
        """One answer for each of the 52 weeks."""
        style = self._style_of[look.recipe]
        known, in_style, answers = self._found.get(look.id, (None, None, ()))
        if known != look or in_style is not style:  # of the same name, but edited since
            answers = _with_nearest(_Asked(self, look).all_year())
            self._found[look.id] = look, style, answers
        return answers

    def weeks_pictured(self, look: Look) -> frozenset[int]:
        """The weeks in which it can be made as pictured."""
        return frozenset(a.week for a in self.answers(look) if a.state == "pictured")

    def days(self, stem_id: str) -> int:
        """The days of a plain year (1 to 365) on which a stem stands here, as bits of a number."""
        if stem_id not in self._days:
            self._days[stem_id] = sum(1 << day for day in self.beds.season(stem_id).days())
        return self._days[stem_id]

    def candidates(self, look: Look) -> list[list[tuple[int, StandIn]]]:
        """All that could ever stand in for each line, best first, with the days they stand.

        None for an essential line.
        """
        style, lines = self._style_of[look.recipe], look.lines
        return [
            [
                (self.days(each.in_), each)
                for each in (() if line.essential else self.stand_ins.beside(line, lines, style))
            ]
            for line in lines
        ]

    def shares(self, look: Look) -> list[float]:
        """Each line's share of the visible area."""
        return line_shares(look.lines, self._stems)

    def too_much(self, shares: Sequence[float]) -> bool:
        """Whether swaps of lines that take such shares would make another piece of it."""
        return len(shares) > self._limits.lines or sum(shares) > self._limits.most


@dataclass(frozen=True)
class _Way:
    """How a look is made for weeks on end: of which stems, or what keeps it from that."""

    state: State
    stems: tuple[str, ...] = ()
    swaps: tuple[StandIn, ...] = ()
    blocks: tuple[str, ...] = ()
    too_much: bool = False


class _Asked:
    """One look, asked about day after day."""

    def __init__(self, makeable: Makeable, look: Look) -> None:
        self._makeable = makeable
        self._look = look
        self._stems = tuple(line.stem for line in look.lines)
        self._days = [makeable.days(stem) for stem in self._stems]

    @cached_property
    def _candidates(self) -> list[list[tuple[int, StandIn]]]:
        return self._makeable.candidates(self._look)

    @cached_property
    def _shares(self) -> list[float]:
        return self._makeable.shares(self._look)

    def all_year(self) -> list[Answer]:
        """The answer for each week. The way to make it lasts until something comes or goes."""
        answers, way = list[Answer](), None
        for week in WEEKS:
            day = thursday(week)
            if way is None or self._turns >> day & 1:
                way = self._way(day)
            chance = 0.0 if way.state == "none" else self._chance(way.stems, day)
            answers.append(Answer(week, way.state, chance, way.swaps, way.blocks, way.too_much))
        return answers

    @cached_property
    def _turns(self) -> int:
        """The days on which not all is as it was a week before, as bits of a number."""
        turns = 0
        for days in (*self._days, *(days for line in self._candidates for days, _ in line)):
            turns |= days ^ days << DAYS_IN_WEEK
        return turns

    def _way(self, day: int) -> _Way:
        """How it is made on a day of a plain year."""
        missing = [i for i, days in enumerate(self._days) if not days >> day & 1]
        if not missing:
            return _Way("pictured", self._stems)
        missing.sort(key=lambda i: (-self._shares[i], i))
        taken = matched({i: self._standing(i, day) for i in missing})
        blocks = [i for i in missing if i not in taken]
        if blocks:
            return _Way("none", blocks=self._ids(blocks))
        if self._makeable.too_much([self._shares[i] for i in missing]):
            return _Way("none", blocks=self._ids(missing), too_much=True)
        swaps = tuple(taken[i] for i in sorted(taken))
        kept = [stem for i, stem in enumerate(self._stems) if i not in taken]
        return _Way("swaps", (*kept, *(swap.in_ for swap in swaps)), swaps)

    def _standing(self, line: int, day: int) -> list[StandIn]:
        return [each for days, each in self._candidates[line] if days >> day & 1]

    def _chance(self, stems: Iterable[str], day: int) -> float:
        """Early and late years are early and late for all, so the chances aren't multiplied."""
        return min((self._makeable.beds.chance(stem, day) for stem in stems), default=0.0)

    def _ids(self, lines: Iterable[int]) -> tuple[str, ...]:
        return tuple(dict.fromkeys(self._look.lines[i].stem for i in lines))


def _with_nearest(answers: Sequence[Answer]) -> tuple[Answer, ...]:
    can = [answer.week for answer in answers if answer.state != "none"]
    return tuple(
        answer if answer.state != "none" else _pointing(answer, nearest(answer.week, can))
        for answer in answers
    )


def _pointing(answer: Answer, week: int | None) -> Answer:
    return Answer(answer.week, "none", 0.0, (), answer.blocks, answer.too_much, week)


def nearest(week: int, weeks: Sequence[int]) -> int | None:
    """The week of `weeks` that is nearest round the year; of two alike the one to come."""
    return _nearest_to(tuple(weeks)).get(week)


@lru_cache(maxsize=4096)
def _nearest_to(weeks: tuple[int, ...]) -> dict[int, int]:
    """The nearest to each week of the year; the looks of a recipe share most of theirs."""
    year = len(WEEKS)
    found = {}
    for week in WEEKS if weeks else ():
        ahead = [((other - week) % year, other) for other in weeks]
        found[week] = min((min(gap, year - gap), gap > year - gap, other) for gap, other in ahead)[
            2
        ]
    return found
