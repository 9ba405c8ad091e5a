"""Does every stem keep until the flowers have done their work?

Vase life counts from the cut, since the stem drinks and ages from then on, and by its shortest
number of days: what may last isn't promised.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from math import ceil
from typing import Literal

from corymb.language import ngettext
from corymb.language.locales import clock_words, day_and_month


@dataclass(frozen=True)
class Keeping:
    """What time must know of a stem: how long it is conditioned, and how long it keeps at least."""

    stem: str
    name: str
    condition_hours: int
    fewest_days: int


@dataclass(frozen=True)
class Flag:
    """Something that won't do, and what to do about it; with the stem where it is one's."""

    kind: Literal["vase life", "too late"]
    stem: str
    words: str


def days_wanted(cut: datetime, until: datetime) -> int:
    """How many days a stem has to keep, a part of one counted whole.

    By the clock: a night on which the clocks change is a night.
    """
    clock = until.replace(tzinfo=None) - cut.replace(tzinfo=None)
    return ceil(clock / timedelta(days=1))


def too_short_lived(stems: Iterable[Keeping], cut: datetime, until: datetime) -> tuple[Flag, ...]:
    """A flag for each stem that, cut then, doesn't surely keep until then."""
    needed = days_wanted(cut, until)
    return tuple(
        Flag("vase life", stem.stem, _words(stem, needed, cut, until))
        for stem in stems
        if stem.fewest_days < needed
    )


def _words(stem: Keeping, needed: int, cut: datetime, until: datetime) -> str:
    told = ngettext(
        "{stem} keeps {number} day at least, and is wanted for {needed}, from the cut on {cut} to "
        "{until} at {hour}: take a stem that keeps longer, cut it later, or change it in between.",
        "{stem} keeps {number} days at least, and is wanted for {needed}, from the cut on {cut} to "
        "{until} at {hour}: take a stem that keeps longer, cut it later, or change it in between.",
        stem.fewest_days,
    )
    return told.format(
        stem=stem.name,
        number=stem.fewest_days,
        needed=needed,
        cut=day_and_month(cut),
        until=day_and_month(until),
        hour=clock_words(until),
    )
