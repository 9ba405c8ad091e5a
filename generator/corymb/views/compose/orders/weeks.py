"""Which weeks have pages, and what do they show?

Every week in which something is ordered in, cut, made, handed over or in use, and the week of the
build with its neighbours in any case.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date, timedelta

from corymb.language import gettext as _
from corymb.studio.values.dates import IsoWeek
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cuts import has_papers
from corymb.views.compose.orders.cutting import cut_link
from corymb.views.compose.orders.ordering import order_by, order_words
from corymb.views.compose.orders.tasks import Task, by_week, tasks_of
from corymb.views.compose.orders.when import weekday_and_day, work_span
from corymb.views.compose.week_words import week_span
from corymb.views.pieces import Link
from corymb.views.week import DayView, TaskView, WeekView


def weeks_shown(catalogue: Catalogue) -> dict[IsoWeek, Sequence[Task]]:
    """The weeks that have pages, the first of them first, with what is to be done."""
    tasks: Mapping[IsoWeek, Sequence[Task]] = by_week(tasks_of(catalogue))
    now = IsoWeek.of(catalogue.today)
    buying = (each.day for each in catalogue.cut_days if any(map(each.bought, each.dues)))
    weeks = {*tasks, *(IsoWeek.of(order_by(day)) for day in buying), now.plus(-1), now, now.plus(1)}
    return {week: tasks.get(week, ()) for week in sorted(weeks)}


def week_views(catalogue: Catalogue) -> Iterator[tuple[IsoWeek, WeekView]]:
    """Every week that has a page, with its neighbours that have one."""
    shown = weeks_shown(catalogue)
    weeks = list(shown)
    for place, week in enumerate(weeks):
        before = weeks[place - 1] if place else None
        after = weeks[place + 1] if place + 1 < len(weeks) else None
        yield week, week_view(catalogue, week, shown[week], before, after)


def week_view(
    catalogue: Catalogue,
    week: IsoWeek,
    tasks: Sequence[Task],
    before: IsoWeek | None = None,
    after: IsoWeek | None = None,
) -> WeekView:
    """A week, a day a row."""
    now = IsoWeek.of(catalogue.today)
    days = [week.monday() + timedelta(days=n) for n in range(7)]
    calendar = Link(_("For your calendar"), addresses.of_week_calendar(str(week)))
    return WeekView(
        title=_("Week {week}").format(week=week.week),
        when=week_span(week),
        now=week == now,
        before=_link(before),
        after=_link(after),
        this_week=Link(_("This week"), addresses.of_week(str(now))),
        calendar=calendar if tasks else None,
        days=tuple(_day(catalogue, day, [t for t in tasks if t.day == day]) for day in days),
    )


def _link(week: IsoWeek | None) -> Link | None:
    if week is None:
        return None
    return Link(_("Week {week}").format(week=week.week), addresses.of_week(str(week)))


def _day(catalogue: Catalogue, day: date, tasks: Sequence[Task]) -> DayView:
    return DayView(
        id=day.isoformat(),
        name=weekday_and_day(day),
        today=day == catalogue.today,
        cut=_named(catalogue, tasks, "cut"),
        make=_named(catalogue, tasks, "make"),
        go=_named(catalogue, tasks, "hand over"),
        due=_named(catalogue, tasks, "use"),
        order_in=tuple(
            words
            for each in catalogue.cut_days
            if order_by(each.day) == day
            if (words := order_words(catalogue, each, each.dues))
        ),
        papers=tuple(cut_link(each) for each in catalogue.cut_days if each.day == day),
    )


def _named(catalogue: Catalogue, tasks: Sequence[Task], name: str) -> tuple[TaskView, ...]:
    return tuple(
        TaskView(
            Link(task.due.name, addresses.of_due(task.due.id)),
            work_span(task.step.start, task.step.end),
            task.step.note,
            _paper(catalogue, task),
        )
        for task in tasks
        if task.step.name == name
    )


def _paper(catalogue: Catalogue, task: Task) -> Link | None:
    """The paper to have in hand; a cut list is a whole day's, and stands below the day."""
    if not has_papers(catalogue, task.due):
        return None
    papers = {
        "make": Link(_("Bench sheets"), addresses.of_bench(task.due.id)),
        "hand over": Link(_("Load sheet"), addresses.of_load(task.due.id)),
    }
    return papers.get(task.step.name)
