"""What the page of a week shows, and its calendar for other programs. For staff alone."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from corymb.views.pieces import Link


@dataclass(frozen=True)
class TaskView:
    """Something to do for an order on a day."""

    order: Link
    hours: str  # '06:30 to 08:22'
    note: str
    paper: Link | None  # that goes with it: bench sheets, load sheet


@dataclass(frozen=True)
class DayView:
    """A day of the week: what is cut, made, handed over, and in use."""

    id: str  # '2026-09-17', an anchor
    name: str  # 'Thursday 17 September'
    today: bool
    cut: tuple[TaskView, ...]
    make: tuple[TaskView, ...]
    go: tuple[TaskView, ...]
    due: tuple[TaskView, ...]
    order_in: tuple[str, ...]  # what has to be ordered in by the end of the day
    papers: tuple[Link, ...]

    @property
    def free(self) -> bool:
        """Whether there is nothing to do."""
        return not (self.order_in or self.cut or self.make or self.go or self.due)


@dataclass(frozen=True)
class WeekView:
    """A week of the calendar, a day a row."""

    title: str  # 'Week 38'
    when: str  # '14 to 20 September 2026'
    now: bool  # whether it is the week of the build
    before: Link | None
    after: Link | None
    this_week: Link
    calendar: Link | None  # for calendar programs; none where nothing is to be done
    days: tuple[DayView, ...]


@dataclass(frozen=True)
class EventView:
    """Something to do, for a calendar program."""

    uid: str  # the same at every build
    words: str  # 'Cut: Barn supper'
    start: datetime
    end: datetime
    note: str
    busy: bool  # whether someone is taken up by it; flowers in use need nobody


@dataclass(frozen=True)
class CalendarView:
    """A week for calendar programs. Of clients it says no more than the orders' names do."""

    path: str
    name: str  # 'Teasel & Rook, week 38'
    stamp: datetime  # the day of the build
    events: tuple[EventView, ...]
