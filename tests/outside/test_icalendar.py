"""The weeks' calendars against RFC 5545, by rules of the standard and by reading them back.

Sections in brackets are of RFC 5545; `name` is of RFC 7986, 5.1. The clock change is the tz
database's: in Europe/London summer time ended on 26 October 2025 at 01:00 universal time.
"""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest
from icalendar import Calendar

from corymb.site.calendars import written
from corymb.views.week import CalendarView, EventView

LONDON = ZoneInfo("Europe/London")
STAMP = datetime(2026, 9, 16, tzinfo=UTC)
AT_SEVEN = datetime(2026, 9, 17, 7, tzinfo=LONDON)


def event(words: str = "Cut: Supper", note: str = "", start: datetime = AT_SEVEN) -> EventView:
    end = start.replace(hour=start.hour + 2)
    return EventView("0f7a-1", words, start, end, note, busy=True)


def calendar(*events: EventView, name: str = "Teasel & Rook, week 38") -> CalendarView:
    return CalendarView("weeks/2026-W38.ics", name, STAMP, events)


def lines(*events: EventView) -> list[str]:
    """Its lines, unfolded (3.1)."""
    return written(calendar(*events)).decode().replace("\r\n ", "").split("\r\n")


# F-5: seven o'clock by London's clock, before and after the change of the clocks (3.3.5, form 2).
@pytest.mark.parametrize(("day", "moment"), [(25, "20251025T060000Z"), (26, "20251026T070000Z")])
def test_an_hour_of_the_clock_is_the_right_moment_on_both_sides_of_a_change(
    day: int, moment: str
) -> None:
    at = datetime(2025, 10, day, 7, tzinfo=LONDON)
    assert f"DTSTART:{moment}" in lines(event(start=at))


# F-6: text is escaped (3.3.11).
ESCAPED = {
    "comma": ("The Lantern House, hall", r"The Lantern House\, hall"),
    "semicolon": ("urn; bowl", r"urn\; bowl"),
    "backslash": ("up\\down", r"up\\down"),
    "line break": ("one\ntwo", r"one\ntwo"),
    "colon, as it is": ("Cut: Supper", "Cut: Supper"),
    "quotation marks, as they are": ('a "posy"', 'a "posy"'),
}


@pytest.mark.parametrize(("words", "escaped"), ESCAPED.values(), ids=ESCAPED)
def test_words_are_escaped(words: str, escaped: str) -> None:
    assert f"SUMMARY:{escaped}" in lines(event(words))
    assert f"\r\nNAME:{escaped}\r\n".encode() in written(calendar(name=words))


LONG = {
    "sixty accented letters": "é" * 60,
    "letters of three octets": "玫" * 90,
    "letters of four octets": "𝄞" * 50,
    "plain words": "hydrangea " * 20,
}


# F-6: folding (3.1): 75 octets at most without the break, no letter cut in two, CR LF throughout.
@pytest.mark.parametrize("words", LONG.values(), ids=LONG)
def test_long_lines_are_folded_between_letters(words: str) -> None:
    text = written(calendar(event(words, note=words)))
    assert text.endswith(b"\r\n")
    assert b"\n" not in text.replace(b"\r\n", b"") and b"\r" not in text.replace(b"\r\n", b"")
    folded = text.removesuffix(b"\r\n").split(b"\r\n")
    assert max(map(len, folded)) <= 75
    assert any(line.startswith(b" ") for line in folded)
    assert all(line.decode() for line in folded)


@pytest.mark.parametrize("words", [*LONG.values(), *(words for words, _ in ESCAPED.values())])
def test_what_is_read_back_is_what_was_written(words: str) -> None:
    read = Calendar.from_ical(written(calendar(event(words, note=words))))
    (found,) = read.walk("VEVENT")
    assert str(found["summary"]) == str(found["description"]) == words.rstrip("\n")
    assert found.decoded("dtstart") == AT_SEVEN
    assert found.decoded("dtstart").tzinfo is not None


# 3.6 and 3.6.1: what a calendar and an event must have, once; and an end after its start.
def test_all_that_must_be_there_is_there_once() -> None:
    found = lines(event())
    for key in ("VERSION:2.0", "PRODID:", "UID:", "DTSTAMP:20260916T000000Z", "DTSTART:", "DTEND:"):
        assert len([line for line in found if line.startswith(key)]) == 1, key
    assert found[0] == "BEGIN:VCALENDAR" and found[-2:] == ["END:VCALENDAR", ""]


def test_every_moment_is_written_in_universal_time_so_that_no_zone_must_be_known() -> None:
    moments = [line for line in lines(event()) if line.startswith("DT")]
    assert len(moments) == 3
    assert all(re.fullmatch(r"[A-Z]+:[0-9]{8}T[0-9]{6}Z", line) for line in moments)
    assert not any("TZID" in line for line in lines(event()))


def test_an_event_without_a_note_has_no_description() -> None:
    assert not any(line.startswith("DESCRIPTION") for line in lines(event()))


# 3.8.2.7: OPAQUE takes up its time, TRANSPARENT leaves it free.
@pytest.mark.parametrize(("busy", "shown"), [(True, "OPAQUE"), (False, "TRANSPARENT")])
def test_what_takes_up_nobodys_time_leaves_it_free(busy: bool, shown: str) -> None:
    free = replace(event(), busy=busy)
    (read,) = Calendar.from_ical(written(calendar(free))).walk("VEVENT")
    assert read.get("TRANSP", "OPAQUE") == shown
