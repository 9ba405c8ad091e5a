"""In which part of the year? Windows by thirds of months, by days or by ISO weeks.

Seasons are spoken of in a plain year of 365 days: 29 February counts as the 28th. A third of a
month is the 1st to the 10th, the 11th to the 20th, the 21st to its end. In a plain year week 1
starts on 1 January, which is the middle of the days on which ISO 8601 lets it start (29 December
to 4 January); so week n is at most three days off in any real year. Week 52 runs to 31 December,
and a week 53 is that day alone.
"""

from dataclasses import dataclass, field
from datetime import date, timedelta

from corymb.studio.words import MONTHS

DAYS_IN_YEAR = 365
WEEKS_IN_YEAR = 52
_PLAIN = 2025
"""Any year without a 29 February would do."""


@dataclass(frozen=True, order=True)
class MonthDay:
    """A day of any year. 29 February is allowed, and counts as the 28th."""

    month: int
    day: int

    def __str__(self) -> str:
        return f"{self.day} {MONTHS[self.month - 1]}"

    @property
    def day_of_year(self) -> int:
        """Its day in a plain year, 1 to 365."""
        return day_of_year(date(2024, self.month, self.day))


@dataclass(frozen=True)
class Window:
    """From a first day to a last one, both included; it may run over the year's end."""

    first: MonthDay
    last: MonthDay
    written: str = field(default="", compare=False)
    """The canonical spelling of what was written, kept so that weeks print as weeks."""

    def __str__(self) -> str:
        if self.written:
            return self.written
        return str(self.first) if self.first == self.last else f"{self.first} - {self.last}"

    @property
    def over_new_year(self) -> bool:
        """Whether it starts in one year and ends in the next."""
        return self.last.day_of_year < self.first.day_of_year

    def days(self) -> frozenset[int]:
        """Its days of a plain year, 1 to 365."""
        first, last = self.first.day_of_year, self.last.day_of_year
        if not self.over_new_year:
            return frozenset(range(first, last + 1))
        return frozenset({*range(first, DAYS_IN_YEAR + 1), *range(1, last + 1)})

    def has(self, day: int) -> bool:
        """Whether a day of a plain year lies in it."""
        first, last = self.first.day_of_year, self.last.day_of_year
        return (day >= first or day <= last) if self.over_new_year else first <= day <= last


@dataclass(frozen=True)
class Season:
    """All windows of a stem, one for each flush."""

    windows: tuple[Window, ...]

    def __str__(self) -> str:
        return ", ".join(str(window) for window in self.windows)

    def has(self, day: int) -> bool:
        """Whether a day of a plain year (1 to 365) lies in any window."""
        return any(window.has(day) for window in self.windows)

    def days(self) -> frozenset[int]:
        """The days of a plain year, 1 to 365, that lie in any window."""
        return frozenset[int]().union(*(window.days() for window in self.windows))


def day_of_year(day: date) -> int:
    """A date's day in a plain year, 1 to 365: from 29 February on a leap year's days move up."""
    number = day.timetuple().tm_yday
    leap = day.year % 4 == 0 and (day.year % 100 != 0 or day.year % 400 == 0)
    return number - 1 if leap and number >= 60 else number


def month_day(day: int) -> MonthDay:
    """The day of a plain year by its number, 1 to 365. Raises ValueError outside."""
    if not 1 <= day <= DAYS_IN_YEAR:
        raise ValueError(f"A plain year has {DAYS_IN_YEAR} days; there is no day {day}.")
    found = date(_PLAIN, 1, 1) + timedelta(days=day - 1)
    return MonthDay(found.month, found.day)


def week_days(week: int) -> tuple[int, int]:
    """The first and last day of a week in a plain year. Raises ValueError outside 1 to 53."""
    if not 1 <= week <= 53:
        raise ValueError(f"There is no week {week}: the weeks run from W1 to W53.")
    last = DAYS_IN_YEAR if week >= WEEKS_IN_YEAR else 7 * week
    return 7 * week - 6, last
