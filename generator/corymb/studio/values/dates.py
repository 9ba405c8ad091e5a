"""On which day, in which week?"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from corymb.studio.saying import or_list
from corymb.studio.suggest import did_you_mean, quoted
from corymb.studio.words import MONTHS, WEEKDAYS

YEARS = range(1900, 2200)
"""The years a studio's file can speak of; outside them a digit has slipped."""

_ISO = re.compile(r"(?P<year>[0-9]{4})-(?P<month>[0-9]{1,2})-(?P<day>[0-9]{1,2})")
_DAY_FIRST = re.compile(
    r"(?:(?P<weekday>[a-z]+),? )?(?P<day>[0-9]{1,2})(?:st|nd|rd|th)?(?: of)? "
    r"(?P<month>[a-z]+)\.?,? (?P<year>[0-9]{4})",
    re.IGNORECASE,
)
_MONTH_FIRST = re.compile(
    r"(?:(?P<weekday>[a-z]+),? )?(?P<month>[a-z]+)\.? (?P<day>[0-9]{1,2})(?:st|nd|rd|th)?,? "
    r"(?P<year>[0-9]{4})",
    re.IGNORECASE,
)
_SLASHED = re.compile(r"(?P<a>[0-9]{1,2})[/.](?P<b>[0-9]{1,2})[/.](?P<year>[0-9]{4})")
_WEEK = re.compile(r"(?P<year>[0-9]{4})-?\s?W(?P<week>[0-9]{1,2})", re.IGNORECASE)


@dataclass(frozen=True, order=True)
class IsoWeek:
    """A week of the ISO 8601 calendar: from Monday; week 1 holds the year's first Thursday."""

    year: int
    week: int

    def __str__(self) -> str:
        return f"{self.year:04d}-W{self.week:02d}"

    @classmethod
    def of(cls, day: date) -> "IsoWeek":
        """The week a day lies in."""
        year, week, _ = day.isocalendar()
        return cls(year, week)

    def monday(self) -> date:
        """Its first day."""
        return date.fromisocalendar(self.year, self.week, 1)

    def sunday(self) -> date:
        """Its last day."""
        return date.fromisocalendar(self.year, self.week, 7)

    def plus(self, weeks: int) -> "IsoWeek":
        """The week so many weeks later (or, below nothing, earlier)."""
        return IsoWeek.of(self.monday() + timedelta(weeks=weeks))

    def until(self, last: "IsoWeek") -> Iterator["IsoWeek"]:
        """This week and those after it, up to and with the last."""
        week = self
        while week <= last:
            yield week
            week = week.plus(1)


def weeks_in(year: int) -> int:
    """How many ISO weeks a year has: 28 December always lies in the last one (ISO 8601)."""
    return date(year, 12, 28).isocalendar().week


def parse_date(text: str) -> date:
    """Reads `2026-09-19`, `19 September 2026`, `Saturday 19 Sept 2026`. Raises ValueError."""
    flat = " ".join(text.split())
    found = _ISO.fullmatch(flat) or _DAY_FIRST.fullmatch(flat) or _MONTH_FIRST.fullmatch(flat)
    if not found:
        raise ValueError(_not_a_date(flat))
    parts = found.groupdict()
    month = int(parts["month"]) if parts["month"].isdigit() else month_of(parts["month"])
    day = _checked(int(parts["year"]), month, int(parts["day"]), flat)
    if parts.get("weekday"):
        _check_weekday(parts["weekday"], day)
    return day


def parse_iso_week(text: str) -> IsoWeek:
    """Reads `2026-W38`. Raises ValueError: another form, or a week the year hasn't got."""
    flat = " ".join(text.split())
    found = _WEEK.fullmatch(flat)
    if not found:
        raise ValueError(f"{quoted(flat)} is not a week: write it like ‘2026-W38’.")
    year, week = int(found["year"]), int(found["week"])
    if year not in YEARS:
        raise ValueError(f"{quoted(flat)}: the year {year} can't be right.")
    if week == 53 and weeks_in(year) == 52:
        raise ValueError(
            f"{year} has 52 weeks; a 53rd comes only in some years, "
            f"the nearest being {or_list(_long_years(year))}."
        )
    if not 1 <= week <= 53:
        raise ValueError(f"{quoted(flat)}: the weeks of {year} run from W01 to W{weeks_in(year)}.")
    return IsoWeek(year, week)


def month_of(word: str) -> int:
    """The month from 1 that a name or its beginning (`Sept`) means. Raises ValueError."""
    start = word.rstrip(".").casefold()
    fits = [n for n, name in enumerate(MONTHS, 1) if name.casefold().startswith(start)]
    if len(fits) == 1 and len(start) >= 3:
        return fits[0]
    meant = or_list(quoted(MONTHS[n - 1]) for n in fits) if fits and start else ""
    hint = f" Did you mean {meant}?" if meant else did_you_mean(word, MONTHS)
    raise ValueError(f"{quoted(word)} is not a month.{hint}")


def days_in(month: int, year: int) -> int:
    """How many days a month has."""
    after = date(year + month // 12, month % 12 + 1, 1)
    return (after - timedelta(days=1)).day


def _checked(year: int, month: int, day: int, flat: str) -> date:
    if year not in YEARS:
        raise ValueError(f"{quoted(flat)}: the year {year} can't be right.")
    if not 1 <= month <= 12:
        raise ValueError(f"{quoted(flat)}: there is no month {month}; write year-month-day.")
    if not 1 <= day <= days_in(month, year):
        raise ValueError(
            f"{quoted(flat)}: {MONTHS[month - 1]} {year} has {days_in(month, year)} days."
        )
    return date(year, month, day)


def _check_weekday(word: str, day: date) -> None:
    right = WEEKDAYS[day.weekday()]
    start = word.casefold()
    if len(start) >= 3 and right.casefold().startswith(start):
        return
    if any(name.casefold().startswith(start) for name in WEEKDAYS):
        raise ValueError(f"{day.day} {MONTHS[day.month - 1]} {day.year} is a {right}, not {word}.")
    raise ValueError(f"{quoted(word)} is not a day of the week.{did_you_mean(word, WEEKDAYS)}")


def _not_a_date(flat: str) -> str:
    found = _SLASHED.fullmatch(flat)
    if found:
        pairs = [(found["a"], found["b"]), (found["b"], found["a"])]
        whole = [
            f"{found['year']}-{int(month):02d}-{int(day):02d}"
            for day, month in dict.fromkeys(pairs)
            if 1 <= int(month) <= 12
        ]
        if whole:
            return f"{quoted(flat)} can be misread: write {or_list(whole)}."
    return f"{quoted(flat)} is not a date: write it like ‘2026-09-19’ or ‘19 September 2026’."


def _long_years(near: int) -> list[str]:
    """The last year before and the first year after with 53 weeks."""
    before = next(y for y in range(near, near - 10, -1) if weeks_in(y) == 53)
    after = next(y for y in range(near, near + 10) if weeks_in(y) == 53)
    return [str(before), str(after)]
