"""What goes into a week's calendar for other programs?

A calendar is copied to phones and shared more freely than the staff's site, so it holds the
names you gave the orders, the days' hours and the word beside them: no other word of a client, no
address or number, no place, no notes and no money. An order called after its client says so here.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import UTC, datetime, time
from uuid import NAMESPACE_URL, uuid5

from corymb.language import gettext as _
from corymb.studio.values.dates import IsoWeek
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.tasks import Task, by_week, tasks_of
from corymb.views.compose.orders.timeline import step_name
from corymb.views.compose.orders.when import five_after, five_before
from corymb.views.week import CalendarView, EventView


def calendars(catalogue: Catalogue) -> Iterator[CalendarView]:
    """One for every week in which there is something to do; none for clients."""
    for week, tasks in by_week(tasks_of(catalogue)).items():
        yield calendar_view(catalogue, week, tasks)


def calendar_view(catalogue: Catalogue, week: IsoWeek, tasks: Sequence[Task]) -> CalendarView:
    """A week's events. The stamp is of the build's day, so that the same day makes the same."""
    house = catalogue.studio.house
    return CalendarView(
        path=addresses.of_week_calendar(str(week)),
        name=_("{studio}, week {week}").format(studio=house.name, week=week.week),
        stamp=datetime.combine(catalogue.today, time(0), UTC),
        events=tuple(_event(house.name, task) for task in tasks),
    )


def _event(studio: str, task: Task) -> EventView:
    """Known by order, step and number: where the hours change, a calendar changes its entry."""
    known_as = f"{studio}/{task.due.id}/{task.step.name}/{task.number}"
    return EventView(
        uid=str(uuid5(NAMESPACE_URL, known_as)),
        words=f"{step_name(task.step.name)}: {task.due.name}",
        start=five_before(task.step.start),
        end=five_after(task.step.end),
        note=task.step.note,
        busy=task.step.name != "use",
    )
