"""When must what be done for an order on its day, how long does it take, and by how many?

Everything is reckoned from the looks as they will be in that week: with the swaps made, where a
look is made with swaps. Spare is cut with the rest. What leaves in buckets isn't made up; what is
from the mix isn't cut, but is made.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, time
from fractions import Fraction
from functools import cached_property, partial
from math import ceil
from typing import Literal

from corymb.studio.models import Stem
from corymb.studio.studio import Studio
from corymb.studio.values.time import ClockSpan
from corymb.trade.hours.habits import Habits
from corymb.trade.hours.keeping import Keeping, days_wanted
from corymb.trade.hours.learning import EXPERIENCED, HELPER, Hand, making_minutes
from corymb.trade.hours.people import Job, Share, people_needed, shared_out
from corymb.trade.hours.timeline import (
    FirstLight,
    Timeline,
    Use,
    Work,
    cut_begins,
    cutting_minutes,
    lasts_until,
    timeline,
)
from corymb.trade.light.first_light import first_light
from corymb.trade.light.sun import Site
from corymb.trade.looks import Look, sized
from corymb.trade.money.from_recipe import minutes_of
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.needs import spare_by_stem
from corymb.trade.season.makeable import Answer, Makeable
from corymb.trade.season.weeks import week_on
from corymb.trade.swaps.made import with_swaps

NO_HOURS = ClockSpan(time(10), time(18))
"""When flowers are looked at, where an order doesn't say. House value, no source."""


MOST_DAYS = 14
"""Flowers don't wait for work that takes longer. House value, no source."""


@dataclass(frozen=True)
class LineThen:
    """A line of an order as it can be made in the order's week."""

    line: DueLine
    answer: Answer

    @cached_property
    def look(self) -> Look:
        """The look with that week's swaps made; as it is where none is needed, or none helps."""
        look = self.line.piece.look
        return with_swaps(look, self.answer.swaps) if self.answer.swaps else look

    @property
    def stems(self) -> dict[str, int]:
        """Whole stems of one piece, by stem."""
        counts: dict[str, int] = {}
        scale = self.line.piece.recipe.sizes.get(self.line.piece.size)
        for line, count in zip(self.look.lines, sized(self.look, scale), strict=True):
            counts[line.stem] = counts.get(line.stem, 0) + count
        return counts


@dataclass(frozen=True)
class Timed:
    """An order's hours."""

    lines: tuple[LineThen, ...]
    timeline: Timeline
    hours: ClockSpan
    """The hours of use that it is reckoned back from."""
    stems: int
    """How many are cut for it, spare and all."""
    cut_minutes: int
    """Of one person."""
    jobs: tuple[Job, ...]
    """What is made up, the order's lines one by one."""
    minutes: int
    """Of making, for one practised hand."""
    helper_minutes: int
    """The same for a helper alone."""
    shares: tuple[Share, ...]
    """Who of the studio's people makes what."""
    people: int | None
    """The fewest who are done with making in a day; none where more don't help."""
    keeps_until: datetime
    """When its flowers have done their work: the end of use, or the next visit's hour."""
    too_much: bool
    """Whether it is more than a fortnight's work; the steps then are a fortnight's."""
    cut_at_in_heat: time | None
    """When the cut would begin on a hot day, where that is earlier."""

    @property
    def cut_from(self) -> datetime | None:
        """When its first stem is cut; none where nothing is."""
        return next((step.start for step in self.timeline.steps if step.name == "cut"), None)

    @property
    def days(self) -> int:
        """How many days its stems have to keep; 0 where nothing is cut."""
        return days_wanted(self.cut_from, self.keeps_until) if self.cut_from else 0


def line_then(line: DueLine, day: date, makeable: Makeable) -> LineThen:
    """A line with its look's answer for the week of a day."""
    return LineThen(line, makeable.answers(line.piece.look)[week_on(day) - 1])


def timed(
    due: Due,
    studio: Studio,
    makeable: Makeable,
    today: date | None = None,
    cut: int | None = None,
) -> Timed:
    """The hours of an order on its day; with `today`, it says what is too late already.

    `cut` is how many stems are cut for it, where that is planned; the mornings of its cut stay
    those that it was planned for.
    """
    lines = tuple(line_then(line, due.day, makeable) for line in due.lines)
    work, habits = studio.house.work, Habits.of(studio.house.work)
    jobs = tuple(_jobs(lines, studio))
    crew = [EXPERIENCED, *[HELPER] * (work.people - 1)]
    shares = shared_out(jobs, crew)
    most_cutting, most_making = (
        int(60 * hours * MOST_DAYS) for hours in (work.cut_hours, work.hours_a_day)
    )
    making = max(share.minutes for share in shares)
    hours = due.order.hours or NO_HOURS
    use = _use(due, hours, studio)
    light = partial(first_light, Site.of(studio.house.place))

    def steps_for(stems: int) -> Timeline:
        minutes = min(_together(stems, studio), most_cutting)
        doing = Work(keeping(lines, studio), minutes, min(making, most_making))
        return timeline(use, doing, habits, light, today)

    wished = _to_cut(lines, due.spare)
    stems = wished if cut is None else cut
    reckoned, then = steps_for(wished), steps_for(stems)
    chosen = then if _mornings(then) == _mornings(reckoned) else reckoned
    return Timed(
        lines=lines,
        timeline=chosen,
        hours=hours,
        stems=stems,
        cut_minutes=cutting_minutes(stems, habits),
        jobs=jobs,
        minutes=_alone(jobs, EXPERIENCED),
        helper_minutes=_alone(jobs, HELPER),
        shares=shares,
        people=people_needed(jobs, 60 * habits.make_hours),
        keeps_until=lasts_until(use),
        too_much=_together(wished, studio) > most_cutting or making > most_making,
        cut_at_in_heat=_in_heat(chosen, habits, light),
    )


def _together(stems: int, studio: Studio) -> int:
    """Minutes of the cut when all of the studio's people share it."""
    work = studio.house.work
    return ceil(cutting_minutes(stems, Habits.of(work)) / work.people)


def _mornings(steps: Timeline) -> list[date]:
    return [step.start.date() for step in steps.steps if step.name == "cut"]


def _in_heat(steps: Timeline, habits: Habits, light: FirstLight) -> time | None:
    cut = next((step.start for step in steps.steps if step.name == "cut"), None)
    if cut is None:
        return None
    begins = cut_begins(cut.date(), habits, light, hot=True)
    return begins if begins < cut.time() else None


def keeping(lines: Iterable[LineThen], studio: Studio) -> tuple[Keeping, ...]:
    """What time must know of every stem of an order, each once."""
    stems = dict.fromkeys(stem for line in lines for stem in line.stems)
    return tuple(_keeping(studio.stems[stem]) for stem in stems)


def _keeping(stem: Stem) -> Keeping:
    hours = min(stem.conditioning.hours, 24 * MOST_DAYS)
    return Keeping(stem.id, stem.name, hours, stem.vase_life.fewest)


def _use(due: Due, hours: ClockSpan, studio: Studio) -> Use:
    zone = studio.house.place.time_zone
    collected = due.order.handover == "collection"
    handover: Literal["collection", "delivery"] = "collection" if collected else "delivery"
    return Use(due.day, hours.start, hours.end, zone, handover, due.next_visit)


def _jobs(lines: Iterable[LineThen], studio: Studio) -> Iterable[Job]:
    for each in lines:
        piece = each.line.piece
        if not piece.in_buckets:
            minutes = float(minutes_of(piece, studio.recipes))
            yield Job(f"{each.line.number}", minutes, each.line.quantity)


def _to_cut(lines: Iterable[LineThen], share: Fraction) -> int:
    """All stems that are cut: of each kind the spare too, in whole stems."""
    wanted: dict[str, int] = {}
    for each in lines:
        if not each.line.piece.from_the_mix:
            for stem, count in each.stems.items():
                wanted[stem] = wanted.get(stem, 0) + count * each.line.quantity
    return sum(wanted.values()) + sum(spare_by_stem(wanted, share).values())


def _alone(jobs: Iterable[Job], hand: Hand) -> int:
    return sum(making_minutes(job.recipe_minutes, job.pieces, hand) for job in jobs)
