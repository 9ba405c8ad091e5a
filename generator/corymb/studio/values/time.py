"""How long does it take, how many days does it last, between which hours?"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import time
from decimal import Decimal
from types import MappingProxyType

from corymb.studio.suggest import quoted
from corymb.studio.values.between import split_range
from corymb.studio.values.number import plain, read_decimal, read_measure

MINUTES: Mapping[str, Decimal] = MappingProxyType({
    "min": Decimal(1), "h": Decimal(60), "mins": Decimal(1), "minutes": Decimal(1),
    "minute": Decimal(1), "hours": Decimal(60), "hour": Decimal(60), "hrs": Decimal(60),
    "hr": Decimal(60),
})  # fmt: skip
"""Minutes in a unit; a bare `m` is left out, since it is a metre everywhere else."""

DAYS: Mapping[str, Decimal] = MappingProxyType({
    "days": Decimal(1), "weeks": Decimal(7), "day": Decimal(1), "week": Decimal(7),
})  # fmt: skip

_HOURS_AND_MINUTES = re.compile(
    r"(?P<hours>[0-9]+)\s*(?:h|hrs?|hours?)\s*(?:and\s+)?(?P<minutes>[0-9]+)\s*(?:m|min|mins|minutes?)?",
    re.IGNORECASE,
)
_CLOCK = re.compile(r"(?P<hour>[0-9]{1,2})[:.](?P<minute>[0-9]{2})")
_AM_PM = re.compile(
    r"(?P<hour>[0-9]{1,2})(?:[:.](?P<minute>[0-9]{2}))?\s*(?P<half>[ap])\.?m\.?", re.I
)


@dataclass(frozen=True, order=True)
class Duration:
    """A length of time in whole minutes."""

    minutes: int

    def __str__(self) -> str:
        hours, minutes = divmod(self.minutes, 60)
        parts = [f"{hours} h"] if hours else []
        return " ".join([*parts, f"{minutes} min"] if minutes or not hours else parts)


@dataclass(frozen=True, order=True)
class DayRange:
    """From the fewest days to the most; both alike for a single number."""

    fewest: int
    most: int

    def __str__(self) -> str:
        if self.fewest == self.most:
            return f"{self.most} day{'s' if self.most != 1 else ''}"
        return f"{self.fewest}-{self.most} days"


@dataclass(frozen=True)
class ClockSpan:
    """From one time of day to another; an end before the start is on the next day."""

    start: time
    end: time

    def __str__(self) -> str:
        return f"{print_clock(self.start)}-{print_clock(self.end)}"

    @property
    def overnight(self) -> bool:
        """Whether it ends on the day after it starts."""
        return self.end < self.start

    @property
    def minutes(self) -> int:
        """How long it lasts."""
        start, end = (t.hour * 60 + t.minute for t in (self.start, self.end))
        return (end - start) % (24 * 60)


def parse_duration(text: str) -> Duration:
    """Reads `45 min`, `1 h 30 min`, `1.5 hours`, `8 h`. Raises ValueError."""
    flat = " ".join(text.split())
    both = _HOURS_AND_MINUTES.fullmatch(flat)
    if both and len(both["hours"]) <= 5:
        if len(both["minutes"]) > 2 or int(both["minutes"]) > 59:
            raise ValueError(f"{quoted(flat)} has more than 59 minutes beside its hours.")
        minutes = Decimal(int(both["hours"]) * 60 + int(both["minutes"]))
    else:
        minutes = read_measure(flat, MINUTES, "a length of time", "45 min")
    if minutes <= 0:
        raise ValueError(f"{quoted(flat)} is no time at all: write it like ‘45 min’.")
    if minutes > 60_000:
        raise ValueError(f"{quoted(flat)} is more than a thousand hours: is the unit right?")
    if minutes % 1:
        raise ValueError(
            f"{quoted(flat)} comes to {plain(round(minutes, 2))} minutes: "
            f"write whole minutes, like ‘{Duration(max(1, round(minutes)))}’."
        )
    return Duration(int(minutes))


def parse_day_range(text: str) -> DayRange:
    """Reads `5-7 days`, `1 week`, `1 to 2 weeks`, `10 days`. Raises ValueError."""
    flat = " ".join(text.split())
    ends = split_range(flat)
    if ends is None:
        days = _days(flat, flat)
        return DayRange(days, days)
    first, last = ends
    unit = re.sub(r"^[^a-zA-Z]*", "", last)
    if not unit:
        raise ValueError(f"{quoted(flat)} has no unit: write {quoted(f'{flat} days')}.")
    most = _days(last, flat)
    fewest = _days(first if re.search(r"[a-zA-Z]", first) else f"{first} {unit}", flat)
    if fewest > most:
        raise ValueError(f"{quoted(flat)} runs backwards: put the fewer days first.")
    return DayRange(fewest, most)


def parse_clock_span(text: str) -> ClockSpan:
    """Reads `17:30-23:00`, `22:00 to 2:00` (into the next day). Raises ValueError."""
    flat = " ".join(text.split())
    ends = split_range(flat)
    if ends is None:
        raise ValueError(f"{quoted(flat)} should say from when to when, like ‘17:30-23:00’.")
    span = ClockSpan(parse_clock(ends[0]), parse_clock(ends[1]))
    if span.start == span.end:
        raise ValueError(f"{quoted(flat)} starts and ends at the same time.")
    return span


def parse_clock(text: str) -> time:
    """Reads a time of day on the 24-hour clock, `17:30`; `24:00` is midnight. Raises ValueError."""
    flat = text.strip()
    found = _CLOCK.fullmatch(flat)
    if not found:
        raise ValueError(f"{quoted(flat)} is not a time of day: write it like {_in_24(flat)}.")
    hour, minute = int(found["hour"]), int(found["minute"])
    if (hour, minute) == (24, 0):
        return time(0, 0)
    if hour > 23 or minute > 59:
        raise ValueError(f"{quoted(flat)} is not a time of day: the day ends at 23:59.")
    return time(hour, minute)


def print_clock(clock: time) -> str:
    """A time of day as it is written: `06:30`."""
    return f"{clock:%H:%M}"


def _in_24(text: str) -> str:
    """What a time written another way would be: `5 pm` is ‘17:00’."""
    found = _AM_PM.fullmatch(text)
    if found and 1 <= int(found["hour"]) <= 12:
        hour = int(found["hour"]) % 12 + (12 if found["half"].casefold() == "p" else 0)
        return f"‘{hour:02d}:{found['minute'] or '00'}’"
    if re.fullmatch(r"[0-9]{1,2}", text) and int(text) < 24:
        return f"‘{int(text):02d}:00’"
    if re.fullmatch(r"[01][0-9][0-5][0-9]|2[0-3][0-5][0-9]", text):
        return f"‘{text[:2]}:{text[2:]}’"
    return "‘17:30’"


def _days(text: str, whole: str) -> int:
    if not re.search(r"[a-zA-Z]", text):
        read_decimal(text, "a number of days", "5-7 days")
        raise ValueError(f"{quoted(whole)} has no unit: write {quoted(f'{whole} days')}.")
    days = read_measure(text, DAYS, "a number of days", "5-7 days")
    if days % 1 or not 1 <= days <= 730:
        raise ValueError(f"{quoted(whole)} should be whole days, one or more, like ‘5-7 days’.")
    return int(days)
