"""What must whoever cuts, makes or drives know of an order at six in the morning? For staff."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.studio.studio import Studio
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.shown import timed_due
from corymb.views.compose.orders.when import hours_words, weekday_and_day, work_span
from corymb.views.pieces import Fact


def brief_of(catalogue: Catalogue, due: Due) -> tuple[Fact, ...]:
    """Its hours, whom to ring, and what was written down of it."""
    client = due.order.client
    facts = (*_hours(catalogue, due), Fact(client.phone, "Call"), Fact(due.order.notes, "Notes"))
    return tuple(fact for fact in facts if fact.value)


def walk_notes(studio: Studio, day: CutDay) -> str:
    """What was written down on the walk that a day's cut goes by."""
    walk = studio.walks.get(str(day.week)) if day.week else None
    return walk.notes if walk else ""


def _hours(catalogue: Catalogue, due: Due) -> Iterator[Fact]:
    collects = due.order.handover == "collection"
    for step in timed_due(catalogue, due).timeline.steps:
        if step.name == "hand over":
            on = weekday_and_day(step.start.date())
            hours = f"{step.start:%H:%M}" if collects else work_span(step.start, step.end)
            yield Fact(f"{on}, {hours}", "Fetched from" if collects else "Leave, and set out by")
    if due.order.hours:
        yield Fact(hours_words(due.order.hours), "In use")
