"""How is a week written for calendar programs? (RFC 5545, by the icalendar library)

Moments stand in universal time, which every program shows by the clock of its own place, and
which needs no table of clock changes beside it.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC

from icalendar import Calendar, Event, vText

from corymb.views.week import CalendarView, EventView

MADE_BY = "-//Corymb//Week of a studio//EN"


def calendar_files(calendars: Iterable[CalendarView]) -> dict[str, bytes]:
    """The calendars by their addresses."""
    return {calendar.path: written(calendar) for calendar in calendars}


def written(calendar: CalendarView) -> bytes:
    """A calendar's text: lines of 75 octets at most, each ending in CR LF."""
    whole = Calendar()
    whole.add("prodid", MADE_BY)
    whole.add("version", "2.0")
    whole.add("name", vText(calendar.name))  # the library knows RFC 5545, not 7986
    for each in calendar.events:
        whole.add_component(_event(calendar, each))
    text: bytes = whole.to_ical()
    return text


def _event(calendar: CalendarView, each: EventView) -> Event:
    event = Event()
    event.add("uid", each.uid)
    event.add("dtstamp", calendar.stamp)
    event.add("dtstart", each.start.astimezone(UTC))
    event.add("dtend", each.end.astimezone(UTC))
    event.add("summary", each.words)
    event.add("transp", "OPAQUE" if each.busy else "TRANSPARENT")
    if each.note:
        event.add("description", each.note)
    return event
