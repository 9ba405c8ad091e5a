"""Secrets that can be found again, one for each kind of value that a studio's file holds.

Words for texts, and odd numbers wherever a number goes, whatever its unit. `found_secrets.py`
looks for them.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Any

from corymb.studio.values import (
    colour,
    dates,
    length,
    money,
    place,
    recurrence,
    share,
    stem_counts,
    text,
    work,
)
from corymb.studio.values import season_text as seasons
from corymb.studio.values import time as times
from corymb.studio.values import volume as volumes
from corymb.studio.values import weight as weights
from corymb.studio.values.friendly import Choice, Friendly


@dataclass
class Secrets:
    """Hands out secrets, and remembers them with the place of each."""

    planted: dict[str, str] = field(default_factory=dict)
    _texts: dict[str, str] = field(default_factory=dict)
    _counter: Iterator[int] = field(default_factory=lambda: itertools.count(1))

    def text(self, where: str, instead_of: str = "") -> str:
        """Words; the same for the same text, so that a thing still goes by its name."""
        if known := self._texts.get(instead_of):
            self.planted[known] += f"; {where}"
            return known
        secret = f"zq{next(self._counter):05d}hush"
        if instead_of:
            self._texts[instead_of] = secret
        return self._kept(secret, where)

    def named(self, secret: str, where: str) -> None:
        """Note a secret that stands in a name already."""
        self.planted.setdefault(secret, where)

    def number(self, where: str, places: int = 0, short: bool = False) -> str:
        """Nine figures (eight when `short`), some of them after the point; the last is no 0."""
        number = (41_273_903 if short else 412_739_003) + 13 * next(self._counter)
        number += number % 10 == 0
        figures = self._kept(str(number), where)
        whole = round(number / 10**places)
        if places and whole > 10**6:  # as a page rounds it
            self._kept(str(whole), f"{where}, rounded")
        return f"{figures[:-places]}.{figures[-places:]}" if places else figures

    def count(self, where: str) -> str:
        """A whole number as large as one may be: five figures, found where they stand alone."""
        return self._kept(str(81_000 + 13 * next(self._counter)), where)

    def day(self, where: str) -> str:
        """A day that is not soon; those asked for later come later."""
        day = date(2101, 1, 1) + timedelta(days=next(self._counter))
        return self._kept(day.isoformat(), where)

    def minutes(self, where: str) -> str:
        """A length of time, as it will be printed."""
        return self._kept(str(times.Duration(40_000 + next(self._counter))), where)

    def hours_of_day(self, where: str) -> str:
        """From when to when."""
        hour, minute = divmod(next(self._counter) % 600, 60)
        return self._kept(f"{hour:02d}:{minute:02d}-23:59", where)

    def _kept(self, secret: str, where: str) -> str:
        self.planted[secret] = where
        return secret


Maker = Callable[[Secrets, str, str], str]


def numbered(pattern: str, *places: int, short: bool = False) -> Maker:
    """A maker of values with secret numbers in them, `places` figures after each one's point."""

    def make(secrets: Secrets, where: str, _: str) -> str:
        return pattern.format(*(secrets.number(where, each, short) for each in places))

    return make


MAKERS: dict[Callable[[str], Any], Maker] = {
    text.parse_text: lambda secrets, where, was: secrets.text(where, was),
    text.parse_email: lambda secrets, where, was: f"{secrets.text(where, was)}@private.example",
    text.parse_whole: lambda secrets, where, _: secrets.count(where),
    text.parse_count: lambda secrets, where, _: secrets.count(where),
    text.parse_number: numbered("{}", 4),
    text.parse_decimal: numbered("{}", 4),
    money.parse_money: numbered("{}", 2),
    money.parse_price_guide: numbered("from {}", 2),
    length.parse_length: numbered("{} cm", 4),
    length.parse_length_range: numbered("{} cm - {} cm", 4, 4),
    length.parse_height: numbered("{} m", 4, short=True),
    weights.parse_weight: numbered("{} g", 4),
    volumes.parse_volume: numbered("{} L", 5),
    share.parse_share: numbered("{} %", 7),
    share.parse_scale: numbered("{} %", 7),
    place.parse_latitude: numbered("{}", 7),
    place.parse_longitude: numbered("{}", 7),
    dates.parse_date: lambda secrets, where, _: secrets.day(where),
    times.parse_duration: lambda secrets, where, _: secrets.minutes(where),
    times.parse_clock_span: lambda secrets, where, _: secrets.hours_of_day(where),
}
"""How a secret is made, by what reads the value."""

HOLDS_NONE: dict[Callable[[str], Any], str] = {
    text.parse_id: "leads to another thing, and has to lead there still",
    text.parse_yes_no: "one of two words",
    seasons.parse_season: "days of the year, like any other stem's",
    times.parse_day_range: "whole days, two years at most",
    length.parse_floor: "a few metres",
    length.parse_piece_length: "a few metres at most",
    share.parse_mark_up: "a few times the cost",
    times.parse_clock: "a time of day, like any other",
    stem_counts.parse_stems: "some hundreds, or a slip",
    stem_counts.parse_heads: "some hundreds, or a slip",
    work.parse_pieces: "some dozens, or a slip",
    work.parse_people: "a dozen at most",
    work.parse_hours_of_work: "hours of a day",
    work.parse_days_before: "a few days",
    recurrence.parse_recurrence: "a rule of the calendar",
    colour.parse_hex: "six figures, like any other colour's",
    colour.parse_colour_part: "a colour",
    colour.parse_named_colour: "a colour",
    place.parse_time_zone: "one of a list",
    place.parse_currency: "one of a list",
    place.parse_language: "one of a list",
}
"""What no secret can stand in for, and why. A choice of words is left alone, too."""


def secret_for(reader: Friendly | Choice, secrets: Secrets, where: str, written: str) -> str:
    """A secret of a value's kind; the value itself where its kind can hold none."""
    if isinstance(reader, Choice) or reader.parse in HOLDS_NONE:
        return written
    return MAKERS[reader.parse](secrets, where, written)
