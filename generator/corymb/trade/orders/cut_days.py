"""What is cut on which day, for which orders, from what stands?

An order's stems are cut on its cutting day (`timed`). All orders of a cutting day are decided
together, against the walk less what was cut since it was taken; a stem that is essential to a
look has no stand-in, as in its season. What is `from the mix` comes last, from spare and from
what is left over of the cut (`from_mix`).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import cached_property
from math import ceil, gcd

from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.changes import LookLine
from corymb.trade.cut import CutPlan, CutProblem, Filled, Settings, StandInOption, Wanted, plan_cut
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.from_mix import Mixed, mixed
from corymb.trade.orders.timed import timed
from corymb.trade.orders.walked import Walked, walk_on
from corymb.trade.season.makeable import Makeable
from corymb.trade.swaps.reasons import reasons
from corymb.trade.swaps.standing_in import StandIn

LOOKED_AT = 8
"""So many stand-ins of a stem are weighed, the likest first."""


@dataclass(frozen=True)
class CutDay:
    """One cutting day: its orders, what is cut for them, and what was known of the beds."""

    day: date
    dues: tuple[Due, ...]
    walked: Walked
    problem: CutProblem
    plan: CutPlan
    mixed: tuple[Mixed, ...]
    """What is made from the mix, line by line."""

    @property
    def week(self) -> IsoWeek | None:
        """The week of the walk that was gone by; None where nothing was counted."""
        return self.walked.week

    def of(self, due: Due) -> tuple[Filled, ...]:
        """How the stems of one of its orders are met."""
        return tuple(each for each in self.plan.filled if each.order == due.id)

    @cached_property
    def stems(self) -> dict[str, dict[str, int]]:
        """Whole stems that go to each order, spare and stand-ins among them, by order and stem."""
        found: dict[str, Counter[str]] = {due.id: Counter() for due in self.dues}
        for each in self.plan.filled:
            for fill in (*each.fills, *each.spare):
                found[each.order][fill.stem] += fill.count
        return {order: dict(sorted(counts.items())) for order, counts in found.items()}

    def bought(self, due: Due) -> dict[str, int]:
        """Whole stems that are bought in for one of its orders, by stem."""
        counts: Counter[str] = Counter()
        for each in self.of(due):
            for fill in (*each.fills, *each.spare):
                counts[fill.stem] += fill.bought
        return {stem: count for stem, count in sorted(counts.items()) if count}


def cut_days(
    dues: Iterable[Due], studio: Studio, makeable: Makeable, settings: Settings | None = None
) -> tuple[CutDay, ...]:
    """The cutting days of some orders in turn; what is cut on one no longer stands on the next."""
    return tuple(each_cut_day(dues, studio, makeable, settings))


def each_cut_day(
    dues: Iterable[Due], studio: Studio, makeable: Makeable, settings: Settings | None = None
) -> Iterator[CutDay]:
    """The same, each as soon as it is decided."""
    by_day: dict[date, list[Due]] = {}
    for due in dues:
        by_day.setdefault(cutting_day(due, studio, makeable), []).append(due)
    walks: dict[IsoWeek | None, Walked] = {}
    for day, together in sorted(by_day.items()):
        week = walk_on(studio, day)
        walked = walks.setdefault(week, Walked(studio, makeable.beds, week))
        planned = cut_day(day, together, walked, makeable, settings)
        for cut in planned.plan.cuts:
            walked.cut[cut.stem] += cut.cut
        yield planned


def cutting_day(due: Due, studio: Studio, makeable: Makeable) -> date:
    """The day on which an order's stems are cut; the first of them where it takes several."""
    steps = timed(due, studio, makeable).timeline.steps
    return next((step.start.date() for step in steps if step.name == "cut"), due.day)


def cut_day(
    day: date,
    dues: Sequence[Due],
    walked: Walked,
    makeable: Makeable,
    settings: Settings | None = None,
) -> CutDay:
    """What is cut on a day for all its orders together."""
    needs = [need for due in dues for need in _needs(due)]
    problem = _problem(day, needs, walked, makeable)
    plan = plan_cut(problem, settings or Settings())
    left = Counter({cut.stem: cut.left for cut in plan.cuts})
    return CutDay(day, tuple(dues), walked, problem, plan, mixed(dues, plan, left))


@dataclass(frozen=True)
class _Need:
    """One line of a look, as often as an order wants it."""

    due: Due
    line: DueLine
    place: int
    count: int
    """Whole stems of one piece."""

    @property
    def look_line(self) -> LookLine:
        return self.line.piece.look.lines[self.place]

    @property
    def key(self) -> str:
        """`barn-supper/1/2/dahlia-shell`: order, line, place in the look, stem."""
        return f"{self.due.id}/{self.line.number}/{self.place + 1}/{self.look_line.stem}"

    def wanted(self) -> Wanted:
        """With its spare, in whole stems."""
        count = self.count * self.line.quantity
        spare = ceil(count * self.due.spare)
        look_line = self.look_line
        return Wanted(self.key, self.due.id, look_line.stem, count, spare, look_line.essential)


def _needs(due: Due) -> Iterable[_Need]:
    for line in due.lines:
        if not line.piece.from_the_mix:
            for place, count in enumerate(line.counts):
                yield _Need(due, line, place, count)


def _problem(day: date, needs: Sequence[_Need], walked: Walked, makeable: Makeable) -> CutProblem:
    options = [option for need in needs for option in _options(day, need, walked, makeable)]
    wanted = [need.wanted() for need in needs]
    asked = _asked(wanted, options)
    return CutProblem(
        [walked.standing(stem, day, asked[stem]) for stem in sorted(asked)], wanted, options
    )


def _asked(wanted: Iterable[Wanted], options: Iterable[StandInOption]) -> Counter[str]:
    """How many of each stem a day may want: for its own lines and for those it may stand in for."""
    asked: Counter[str] = Counter()
    counts = {each.key: each.count + each.spare for each in wanted}
    for each in wanted:
        asked[each.stem] += counts[each.key]
    for option in options:
        asked[option.stem] += option.stems_for(counts[option.wanted])
    return asked


def _options(day: date, need: _Need, walked: Walked, makeable: Makeable) -> Iterable[StandInOption]:
    """The likest stems that stand, for a stem that isn't essential."""
    piece, line = need.line.piece, need.look_line
    if line.essential:
        return
    style = walked.studio.house.styles[piece.recipe.style]
    ranked = makeable.stand_ins.beside(line, piece.look.lines, style)
    standing = (each for each in ranked if walked.may_cut(each.in_, day))
    for _, each in zip(range(LOOKED_AT), standing, strict=False):
        yield _option(need, each, walked)


def _option(need: _Need, each: StandIn, walked: Walked) -> StandInOption:
    common = gcd(each.out_count, each.in_count)
    return StandInOption(
        need.key,
        each.in_,
        each.out_count // common,
        each.in_count // common,
        each.colour_distance,
        reasons(each, walked.studio.stems),
    )


def missing(day: CutDay) -> Mapping[str, int]:
    """How many stems are missing on a cutting day, by stem."""
    counts: Counter[str] = Counter()
    for each in day.plan.filled:
        counts[each.stem] += each.short
    return {stem: count for stem, count in sorted(counts.items()) if count}
