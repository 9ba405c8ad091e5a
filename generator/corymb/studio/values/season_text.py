"""How is a season written? `early July - mid October, September`, `W22 - W30`, `all year`."""

import re
from dataclasses import dataclass

from corymb.studio.suggest import did_you_mean, quoted
from corymb.studio.values.between import split_range
from corymb.studio.values.dates import days_in, month_of
from corymb.studio.values.season import (
    DAYS_IN_YEAR,
    MonthDay,
    Season,
    Window,
    month_day,
    week_days,
)
from corymb.studio.words import MONTHS, THIRDS

ALL_YEAR = "all year"
LEAP = 2024
"""Months are measured in a leap year, so that 29 February can be written."""

LONGEST_WRAP = 330
"""A window over the year's end longer than this has its ends the wrong way round."""

EXAMPLE = "‘early July - mid October’"
_THIRD_WORDS = {
    "early": "early", "beginning": "early", "start": "early", "begin": "early",
    "mid": "mid", "middle": "mid", "late": "late", "end": "late",
}  # fmt: skip
_WEEK = re.compile(r"(?:w|week |wk )\s*(?P<week>[0-9]{1,2})", re.IGNORECASE)
_NUMBER = re.compile(r"(?P<day>[0-9]{1,2})(?:st|nd|rd|th)?", re.IGNORECASE)
_ALL_YEAR = re.compile(
    r"(?:all|whole)[ -](?:the )?year(?:[ -]round)?|year[ -]round|all year.?round"
)


@dataclass(frozen=True)
class _End:
    """One end of a window: the days it can mean, and its canonical spelling."""

    first: MonthDay
    last: MonthDay
    spelling: str


def parse_season(text: str) -> Season:
    """Reads one window or several, set apart by commas. Raises ValueError."""
    flat = " ".join(text.split())
    pieces = [p for p in re.split(r"\s*[,;&]\s*|\s+and\s+", flat) if p]
    if not pieces:
        raise ValueError(f"There is no season here: write it like {EXAMPLE}.")
    return Season(tuple(parse_window(piece) for piece in pieces))


def parse_window(text: str) -> Window:
    """Reads one window: a span, a month, a third of one, a day or a week. Raises ValueError."""
    flat = _joined(" ".join(text.split()))
    if _ALL_YEAR.fullmatch(flat.casefold()):
        return Window(MonthDay(1, 1), MonthDay(12, 31), ALL_YEAR)
    ends = split_range(flat)
    if ends is None:
        only = _end(flat)
        return Window(only.first, only.last, only.spelling)
    first, last = (_end(end) for end in _completed(*ends))
    window = Window(first.first, last.last, f"{first.spelling} - {last.spelling}")
    if window.over_new_year and len(window.days()) > LONGEST_WRAP:
        raise ValueError(
            f"{quoted(flat)} runs backwards: it would last nearly all year. "
            f"Write ‘{last.spelling} - {first.spelling}’, or ‘{ALL_YEAR}’."
        )
    return window


def _joined(flat: str) -> str:
    """`mid-July` is `mid July`: this hyphen is not a dash between two ends."""
    return re.sub(r"\b(early|mid|late)-(?=[a-z]{3,}\b)(?!late\b|mid\b)", r"\1 ", flat, flags=re.I)


def _completed(first: str, last: str) -> tuple[str, str]:
    """`mid` in `mid - late July` is mid July, `4` in `4-12 July` 4 July, `W22-30` two weeks."""
    if _WEEK.fullmatch(first) and _NUMBER.fullmatch(last):
        return first, f"W{last}"
    if first.casefold() not in _THIRD_WORDS and not _NUMBER.fullmatch(first):
        return first, last
    if _WEEK.fullmatch(last):
        return f"W{first}", last
    month = re.search(r"[A-Za-z]{3,}\.?$", last)
    return (f"{first} {month[0]}" if month else first), last


def _end(text: str) -> _End:
    """A month, a third of one, a day or a week. Raises ValueError."""
    week = _WEEK.fullmatch(text)
    if week:
        return _week(int(week["week"]))
    words = [
        w for w in re.split(r"\s+", text.rstrip(".")) if w.casefold() not in ("the", "of", "in")
    ]
    if len(words) == 1:
        return _whole_month(words[0])
    if len(words) != 2:
        raise ValueError(_not_understood(text))
    for one, other in (words, reversed(words)):
        day = _NUMBER.fullmatch(one)
        if day:
            return _day(int(day["day"]), _month(other))
        if one.casefold() in _THIRD_WORDS:
            return _third(_THIRD_WORDS[one.casefold()], _month(other))
    raise ValueError(_not_understood(text))


def _week(week: int) -> _End:
    first, last = week_days(week)
    return _End(month_day(min(first, DAYS_IN_YEAR)), month_day(last), f"W{week:02d}")


def _whole_month(word: str) -> _End:
    if re.fullmatch(r"[0-9]+", word):
        raise ValueError(f"{quoted(word)} could be a day or a week: write ‘4 July’ or ‘W22’.")
    month = _month(word)
    return _End(MonthDay(month, 1), MonthDay(month, days_in(month, LEAP)), MONTHS[month - 1])


def _third(third: str, month: int) -> _End:
    first = 1 + 10 * THIRDS.index(third)
    last = days_in(month, LEAP) if third == "late" else first + 9
    return _End(MonthDay(month, first), MonthDay(month, last), f"{third} {MONTHS[month - 1]}")


def _day(day: int, month: int) -> _End:
    if not 1 <= day <= days_in(month, LEAP):
        raise ValueError(
            f"There is no {day} {MONTHS[month - 1]}: it has {days_in(month, LEAP)} days."
        )
    found = MonthDay(month, day)
    return _End(found, found, str(found))


def _month(word: str) -> int:
    try:
        return month_of(word)
    except ValueError as wrong:
        if "Did you mean" in str(wrong):
            raise
        raise ValueError(f"{wrong} Write a season like {EXAMPLE}.") from None


def _not_understood(text: str) -> str:
    if re.search(r"\b[0-9]{4}\b", text):
        return f"{quoted(text)} names a year: a season comes every year, so leave the year out."
    words = text.split()
    for word in words if not _THIRD_WORDS.keys() & {w.casefold() for w in words} else ():
        close = did_you_mean(word, THIRDS)
        if close:
            return f"{quoted(word)} is not a part of a month.{close}"
    return (
        f"{quoted(text)} is not a part of the year: write it like {EXAMPLE}, "
        "‘September’, ‘4 July’ or ‘W22’."
    )
