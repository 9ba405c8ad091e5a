"""How often does it come round? In plain words, or as a rule of RFC 5545."""

import re
from dataclasses import dataclass, field
from datetime import MAXYEAR, date, datetime

from dateutil.rrule import rrule, rrulestr

from corymb.studio.saying import or_list
from corymb.studio.suggest import did_you_mean, quoted
from corymb.studio.words import WEEKDAYS

CODES = dict(zip(WEEKDAYS, ("MO", "TU", "WE", "TH", "FR", "SA", "SU"), strict=True))
PLACES = {"first": 1, "second": 2, "third": 3, "fourth": 4, "last": -1}
MOST_TIMES = 4_000
"""Every day for ten years. House value, no source."""

WIDEST_GAP = 366
"""More days, weeks, months or years between two visits are no repeat. House value, no source."""

_THE_END = "UNTIL=21991231"
EXAMPLE = "‘weekly on Tuesday’, ‘every 2 weeks on Friday’ or ‘monthly on the first Monday’"

_DAYS = r"(?P<days>[a-z]+(?:(?:,| and|, and) [a-z]+)*)"
_PLAIN = re.compile(
    rf"(?:(?P<daily>daily|every day)|weekly on {_DAYS})|"
    rf"every (?P<each>[a-z]+(?:(?:,| and|, and) [a-z]+)*)|"
    r"(?:every (?P<gap>[0-9]+|two|three|four|second|other) weeks?|fortnightly) on (?P<gap_days>.+)|"
    r"monthly on the (?P<place>[a-z]+) (?P<place_day>[a-z]+)|"
    r"monthly on the (?P<month_day>[0-9]{1,2})(?:st|nd|rd|th)?"
)
_GAPS = {"two": 2, "second": 2, "other": 2, "three": 3, "four": 4}


@dataclass(frozen=True)
class Recurrence:
    """An RFC 5545 rule (without its start), and the words it was written in."""

    rule: str
    written: str = field(default="", compare=False)

    def __str__(self) -> str:
        return self.written or self.rule

    def starting(self, first: date) -> rrule:
        """Its days from a first one on, as a dateutil rule, to the last year of our dates."""
        ended = self.rule if re.search("UNTIL|COUNT", self.rule) else f"{self.rule};{_THE_END}"
        rule = rrulestr(ended, dtstart=datetime(first.year, first.month, first.day))
        assert isinstance(rule, rrule)
        return rule


def parse_recurrence(text: str) -> Recurrence:
    """Reads plain words or `FREQ=WEEKLY;BYDAY=TU`. Raises ValueError."""
    flat = " ".join(text.split())
    if re.match(r"(?:RRULE:)?\s*FREQ\s*=", flat, re.IGNORECASE):
        return _rule(flat.upper().removeprefix("RRULE:").replace(" ", ""), flat)
    found = _PLAIN.fullmatch(flat.casefold())
    if not found:
        raise ValueError(f"{quoted(flat)} doesn't say how often: write {EXAMPLE}.")
    parts = found.groupdict()
    if parts["daily"]:
        return Recurrence("FREQ=DAILY", "daily")
    if parts["place"]:
        return _monthly(parts["place"], parts["place_day"])
    if parts["month_day"]:
        return _month_day(int(parts["month_day"]))
    gap = parts["gap"] or ("2" if parts["gap_days"] else "1")
    return _weekly(int(_GAPS.get(gap, gap)), parts["days"] or parts["each"] or parts["gap_days"])


def _weekly(gap: int, days: str) -> Recurrence:
    if not 1 <= gap <= 52:
        raise ValueError(f"Every {gap} weeks can't be right: write between 1 and 52.")
    named = {_weekday(word) for word in re.split(r",? and |,\s*", days)}
    names = [day for day in WEEKDAYS if day in named]
    words = or_list(names).replace(" or ", " and ")
    codes = ",".join(CODES[name] for name in names)
    if gap == 1:
        return Recurrence(f"FREQ=WEEKLY;BYDAY={codes}", f"weekly on {words}")
    return Recurrence(f"FREQ=WEEKLY;INTERVAL={gap};BYDAY={codes}", f"every {gap} weeks on {words}")


def _monthly(place: str, day: str) -> Recurrence:
    if place not in PLACES:
        raise ValueError(
            f"{quoted(place)} is not which of them in the month: write {or_list(PLACES)}."
        )
    name = _weekday(day)
    return Recurrence(
        f"FREQ=MONTHLY;BYDAY={PLACES[place]}{CODES[name]}", f"monthly on the {place} {name}"
    )


def _month_day(day: int) -> Recurrence:
    if not 1 <= day <= 28:
        raise ValueError(f"Not every month has a day {day}: choose the 1st to the 28th.")
    return Recurrence(f"FREQ=MONTHLY;BYMONTHDAY={day}", f"monthly on the {day}")


def _weekday(word: str) -> str:
    start = word.strip().casefold()
    for name in WEEKDAYS:
        full = name.casefold()
        if start in (full, full + "s") or (len(start) >= 3 and full.startswith(start)):
            return name
    raise ValueError(
        f"{quoted(word)} is not a day of the week.{did_you_mean(word, WEEKDAYS)}"
        f" Write it like {EXAMPLE}."
    )


def _rule(rule: str, flat: str) -> Recurrence:
    """A rule as calendars exchange them (RFC 5545, 3.3.10), if it can be read."""
    if "DTSTART" in rule or "\n" in rule:
        raise ValueError(f"{quoted(flat)} holds a start: the start goes in `from`.")
    if not re.search(r"FREQ=(?:DAILY|WEEKLY|MONTHLY|YEARLY)(?:;|$)", rule):
        raise ValueError(f"{quoted(flat)}: FREQ is DAILY, WEEKLY, MONTHLY or YEARLY.")
    if re.search("BYMINUTE|BYSECOND", rule):
        raise ValueError(f"{quoted(flat)} names minutes: when it is wanted goes in `hours`.")
    _check_parts(rule, flat)
    try:
        comes = _comes_round(rule)
    except (ValueError, KeyError, TypeError, AttributeError, IndexError, OverflowError):
        raise ValueError(
            f"{quoted(flat)} is not a rule a calendar can read: write {EXAMPLE}."
        ) from None
    if not comes:
        raise ValueError(f"{quoted(flat)} never comes round: no year has such a day.")
    return Recurrence(rule)


def _check_parts(rule: str, flat: str) -> None:
    """What dateutil would take though RFC 5545 doesn't: a part twice, a count below nothing."""
    parts = [part.partition("=") for part in rule.split(";") if part]
    values = {name: value for name, _, value in parts}
    if len(values) < len(parts):
        raise ValueError(f"{quoted(flat)} says one thing twice: take one of the two out.")
    for name, most in (("INTERVAL", WIDEST_GAP), ("COUNT", MOST_TIMES)):
        value = values.get(name, "1")
        if not re.fullmatch("[0-9]{1,4}", value) or not 1 <= int(value) <= most:
            raise ValueError(f"{quoted(flat)}: {name} lies between 1 and {most}.")


def _comes_round(rule: str) -> bool:
    """Whether it does within 40 years, as the 29th of February on each day of the week does.

    They are the last that there are, for dateutil goes on looking until then. Raises what it
    raises where it can't read the rule.
    """
    rrulestr(rule, dtstart=datetime(2026, 1, 1))
    endless = re.sub("(^|;)(UNTIL|COUNT)=[^;]*", "", rule).removeprefix(";")
    return next(iter(rrulestr(endless, dtstart=datetime(MAXYEAR - 40, 1, 1))), None) is not None
