"""What is cut on which day, for which orders, from what stands?

An order's stems are cut on its cutting day (`timed`). All orders of a cutting day are decided
together, against the walk less what was cut since it was taken; a stem that is essential to a
look has no stand-in, as in its season. A cut of several mornings is one list, on the first. What
is `from the mix` comes last, from spare and from what is left over of the cut (`from_mix`).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property
from itertools import islice

from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.cut import CutPlan, CutProblem, Filled, Settings, Wanted, plan_cut
from corymb.trade.orders.due import Due
from corymb.trade.orders.from_mix import Mixed, mixed
from corymb.trade.orders.needs import Need, needs_of, options_for, standing_options
from corymb.trade.orders.timed import timed
from corymb.trade.orders.walked import Walked, walk_on
from corymb.trade.season.makeable import Makeable

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
    mornings: Mapping[str, tuple[date, ...]] = field(default_factory=dict)
    """The days that each order's cut takes, by order."""

    def cut_on(self, due: Due) -> tuple[date, ...]:
        """The mornings on which one of its orders is cut."""
        return self.mornings.get(due.id) or (self.day,)

    @property
    def days(self) -> tuple[date, ...]:
        """All mornings that its list is for."""
        return tuple(sorted({day for due in self.dues for day in self.cut_on(due)}))

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
    mornings: dict[str, tuple[date, ...]] = {}
    for due in dues:
        mornings[due.id] = cutting_days(due, studio, makeable)
        by_day.setdefault(mornings[due.id][0], []).append(due)
    walks: dict[IsoWeek | None, Walked] = {}
    for day, together in sorted(by_day.items()):
        week = walk_on(studio, day)
        walked = walks.setdefault(week, Walked(studio, makeable.beds, week))
        planned = cut_day(day, together, walked, makeable, settings, mornings)
        for cut in planned.plan.cuts:
            walked.cut[cut.stem] += cut.cut
        yield planned


def cutting_day(due: Due, studio: Studio, makeable: Makeable) -> date:
    """The day on which an order's stems are cut; the first of them where it takes several."""
    return cutting_days(due, studio, makeable)[0]


def cutting_days(due: Due, studio: Studio, makeable: Makeable) -> tuple[date, ...]:
    """The mornings that an order's cut takes; its own day where nothing is cut."""
    steps = timed(due, studio, makeable).timeline.steps
    return tuple(step.start.date() for step in steps if step.name == "cut") or (due.day,)


def cut_day(
    day: date,
    dues: Sequence[Due],
    walked: Walked,
    makeable: Makeable,
    settings: Settings | None = None,
    mornings: Mapping[str, tuple[date, ...]] | None = None,
) -> CutDay:
    """What is cut on a day for all its orders together."""
    problem = _problem(day, [need for due in dues for need in needs_of(due)], walked, makeable)
    plan = plan_cut(problem, settings or Settings())
    left = Counter({cut.stem: cut.left for cut in plan.cuts})
    mixes = mixed(dues, plan, left, lambda need: options_for(need, walked, makeable))
    return CutDay(day, tuple(dues), walked, problem, plan, mixes, dict(mornings or {}))


def _problem(day: date, needs: Sequence[Need], walked: Walked, makeable: Makeable) -> CutProblem:
    options = [
        option
        for need in needs
        for option in islice(standing_options(need, day, walked, makeable), LOOKED_AT)
    ]
    wanted = [need.wanted() for need in needs]
    asked = _asked(wanted)
    stems = sorted({*asked, *(option.stem for option in options)})
    return CutProblem([walked.standing(stem, day, asked[stem]) for stem in stems], wanted, options)


def _asked(wanted: Iterable[Wanted]) -> Counter[str]:
    """How many of each stem the lines of a day ask for themselves, with their spare."""
    asked: Counter[str] = Counter()
    for each in wanted:
        asked[each.stem] += each.count + each.spare
    return asked
