"""When must each thing happen, so that the flowers are ready at the hour of use?

Reckoned back: the hour of use, handing over, making (the day before), conditioning (as long as
the slowest stem asks, and overnight in any case), and the cut, early in the day but not in the
dark. All steps are moments in the studio's time zone.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from functools import partial
from typing import Literal

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import day_and_month
from corymb.trade.hours.clock import later, moment
from corymb.trade.hours.habits import HABITS, Habits
from corymb.trade.hours.keeping import Flag, Keeping, too_short_lived
from corymb.trade.hours.sessions import Day, Span, sessions_until

FirstLight = Callable[[date], time | None]
"""From when it is light on a day; None where a day has no dawn."""

Name = Literal["cut", "condition", "make", "hand over", "use"]


@dataclass(frozen=True)
class Use:
    """When flowers are looked at, by the clock of the place; an end before the start is next day.

    A standing piece has to last until `next_visit`.
    """

    day: date
    start: time
    end: time
    zone: str
    handover: Literal["collection", "delivery"]
    next_visit: date | None = None


@dataclass(frozen=True)
class Work:
    """What there is to do: minutes for one pair of hands, or for all when they share it."""

    stems: tuple[Keeping, ...]
    cut_minutes: int
    make_minutes: int

    @property
    def slowest(self) -> Keeping | None:
        """The stem that stands in water the longest before it is used; none where all are dried."""
        return max(
            (stem for stem in self.stems if stem.condition_hours),
            key=lambda stem: stem.condition_hours,
            default=None,
        )


@dataclass(frozen=True)
class Step:
    """One step from moment to moment, with a word for whoever reads it."""

    name: Name
    start: datetime
    end: datetime
    note: str = ""


@dataclass(frozen=True)
class Timeline:
    """All steps, the first of them first, and what won't do."""

    steps: tuple[Step, ...]
    flags: tuple[Flag, ...]

    @property
    def holds(self) -> bool:
        """Whether it can be done so."""
        return not self.flags


def cutting_minutes(stems: int, habits: Habits = HABITS) -> int:
    """How many whole minutes one person cuts so many stems, rounded up."""
    return -(-60 * stems // habits.stems_an_hour)


def timeline(
    use: Use,
    work: Work,
    habits: Habits = HABITS,
    first_light: FirstLight | None = None,
    today: date | None = None,
) -> Timeline:
    """The steps up to the use. Raises ValueError when a day's work is not above 0."""
    used = _use(use)
    given = _hand_over(use, used, habits)
    made = _make(given.start, work, habits, use.zone)
    cut = _cut(made[0].start if made else given.start, work, habits, first_light, use.zone)
    wet = _condition(cut[-1].end, (*made, given)[0].start, work.slowest) if cut else ()
    steps = (*cut, *wet, *made, given, used)
    flags = too_short_lived(work.stems, cut[0].start, lasts_until(use)) if cut else ()
    return Timeline(steps, (*_too_late(steps[0], today), *flags))


def lasts_until(use: Use) -> datetime:
    """The moment up to which every stem has to last: the end of use, or the next visit."""
    end = _use(use).end
    if use.next_visit is None:
        return end
    return max(end, moment(use.next_visit, use.start, use.zone))


def _use(use: Use) -> Step:
    last = use.day + timedelta(days=1) if use.end <= use.start else use.day
    return Step("use", moment(use.day, use.start, use.zone), moment(last, use.end, use.zone))


def _hand_over(use: Use, used: Step, habits: Habits) -> Step:
    collected = use.handover == "collection"
    before = habits.before_collection if collected else habits.before_delivery
    note = _("The client collects.") if collected else _("Drive and set out.")
    return Step("hand over", later(used.start, -before), used.start, note)


def _make(by: datetime, work: Work, habits: Habits, zone: str) -> tuple[Step, ...]:
    last = by.date() - timedelta(days=habits.make_days_before)
    day = Day(lambda __: habits.make_at, int(60 * habits.make_hours), zone)
    return _steps("make", sessions_until(by, last, work.make_minutes, day))


def _cut(
    ready: datetime, work: Work, habits: Habits, first_light: FirstLight | None, zone: str
) -> tuple[Step, ...]:
    """The cut, over early enough for the slowest stem, and on the day before at the latest."""
    hours = work.slowest.condition_hours if work.slowest else 0
    over = later(ready, -timedelta(hours=hours))
    begins = partial(cut_begins, habits=habits, first_light=first_light)
    day = Day(begins, int(60 * habits.cut_hours), zone)
    day_before = ready.date() - timedelta(days=1)
    minutes = max(work.cut_minutes, 1 if work.slowest else 0)  # even a few take a moment
    return _steps("cut", sessions_until(over, day_before, minutes, day))


def cut_begins(
    on: date,
    habits: Habits = HABITS,
    first_light: FirstLight | None = None,
    hot: bool = False,
) -> time:
    """The hour at which the cut of a day begins: the studio's own, or when it gets light."""
    wanted = habits.cut_at_in_heat if hot else habits.cut_at
    light = first_light(on) if first_light else None
    return max(wanted, light) if light else wanted


def _condition(start: datetime, end: datetime, slowest: Keeping | None) -> tuple[Step, ...]:
    if slowest is None:
        return ()
    told = ngettext(
        "{stem} needs {number} hour, the longest of all. They stand overnight.",
        "{stem} needs {number} hours, the longest of all. They stand overnight.",
        slowest.condition_hours,
    )
    note = told.format(stem=slowest.name, number=slowest.condition_hours)
    return (Step("condition", start, end, note),)


def _too_late(first: Step, today: date | None) -> tuple[Flag, ...]:
    if today is None or first.start.date() >= today:
        return ()
    told = {
        "cut": _("To be ready in time, cutting begins on {day}, and that is past."),
        "make": _("To be ready in time, making begins on {day}, and that is past."),
    }
    otherwise = _("To be ready in time, handing over begins on {day}, and that is past.")
    words = told.get(first.name, otherwise).format(day=day_and_month(first.start))
    return (Flag("too late", "", words),)


def _steps(name: Name, spans: tuple[Span, ...]) -> tuple[Step, ...]:
    told = _("Day {number} of {all}.") if len(spans) > 1 else ""
    return tuple(
        Step(name, *span, told.format(number=number, all=len(spans)))
        for number, span in enumerate(spans, 1)
    )
