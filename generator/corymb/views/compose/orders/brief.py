"""What must whoever cuts, makes or drives know of an order at six in the morning? For staff."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.language.locales import clock_words
from corymb.studio.studio import Studio
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.shown import timed_due
from corymb.views.compose.orders.when import day_and_hours, hours_words, work_span
from corymb.views.pieces import Fact


def brief_of(catalogue: Catalogue, due: Due) -> tuple[Fact, ...]:
    """Its hours, whom to ring, and what was written down of it."""
    client = due.order.client
    facts = (
        *_hours(catalogue, due),
        Fact(client.phone, _("Call")),
        Fact(due.order.notes, _("Notes")),
    )
    return tuple(fact for fact in facts if fact.value)


def walk_notes(studio: Studio, day: CutDay) -> str:
    """What was written down on the walk that a day's cut goes by."""
    walk = studio.walks.get(str(day.week)) if day.week else None
    return walk.notes if walk else ""


def _hours(catalogue: Catalogue, due: Due) -> Iterator[Fact]:
    collects = due.order.handover == "collection"
    for step in timed_due(catalogue, due).timeline.steps:
        if step.name == "hand over":
            yield Fact(
                day_and_hours(
                    step.start.date(),
                    clock_words(step.start) if collects else work_span(step.start, step.end),
                ),
                _("Fetched from") if collects else _("Leave, and set out by"),
            )
    if due.order.hours:
        yield Fact(hours_words(due.order.hours), _("In use"))
