"""What happens to a value: another's, nothing, far too much, the wrong kind of thing."""

from __future__ import annotations

import re
from collections.abc import Callable
from random import Random

OfValues = Callable[[str, Random], str]
"""A line with a slip in its value or its key."""

VALUE = re.compile(r"(?P<before>\s*(?:- )?(?:[^:#\n]*:\s+|- ))(?P<value>\S.*)")
KEY = re.compile(r"(?P<before>\s*(?:- )?)(?P<key>[^:#\n]+)(?P<after>:(?:\s.*)?)")
NUMBER = re.compile(r"\d+(?:\.\d+)?")
DATE = re.compile(r"\b(19|20)(\d\d)(?=-)")
ID = re.compile(r"[a-z]+(?:-[a-z]+)+")

PLAIN = (
    *("0", "-1", "1", "1e9", "1000000000", "999999999999999999999999", "0.0000001", "-0", "nan"),
    *("inf", "true", "no", "null", "~", "''", '""', "[]", "{}", "[1, 2, 3]", "{a: 1}", "[[[]]]"),
    *("0 %", "100 %", "101 %", "1000000 %", "-5 %", "0 cm", "1000000 km", "0 g", "0 min", "0-0"),
    *("9-1", "2026-02-30", "0001-01-01", "9999-12-31", "1000-01-01", "29 February", "W53", "W00"),
    *("00:00-00:00", "24:00", "23:59-00:01", "all year", "daily", "yes", "x", "a" * 3000, "ffffff"),
    *("../../../etc/hosts", "/dev/null", "<script>alert(1)</script>", "{{ 7 * 7 }}", "%s", "."),
    *("FREQ=SECONDLY", "FREQ=DAILY;COUNT=99999999", "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30"),
)


def _with_value(line: str, value: str) -> str:
    found = VALUE.fullmatch(line)
    return found["before"] + value if found else line + value


def _change(pattern: re.Pattern[str], line: str, random: Random, new: Callable[[str], str]) -> str:
    """The line with one of the places that `pattern` finds made new."""
    places = list(pattern.finditer(line))
    if not places:
        return _with_value(line, random.choice(PLAIN))
    place = random.choice(places)
    return line[: place.start()] + new(place[0]) + line[place.end() :]


def _other_year(year: str, random: Random) -> str:
    return str(int(year) + random.choice((-1000, -100, -10, -1, 1, 10, 100, 1000)))


def _misspelt(line: str, random: Random) -> str:
    found = KEY.fullmatch(line)
    if not found:
        return line[1:]
    key = found["key"]
    at = random.randrange(len(key))
    return found["before"] + key[:at] + key[at + 1 :] + found["after"]


OF_VALUES: dict[str, OfValues] = {
    "quite another value": lambda line, random: _with_value(line, random.choice(PLAIN)),
    "no value": lambda line, _: _with_value(line, ""),
    "a key misspelt": _misspelt,
    "another year": lambda line, random: _change(
        DATE, line, random, lambda year: _other_year(year, random)
    ),
    "a number times a thousand": lambda line, random: _change(
        NUMBER, line, random, lambda number: f"{float(number) * 1000:g}"
    ),
    "a number by a hair": lambda line, random: _change(
        NUMBER, line, random, lambda number: f"{float(number) + random.choice((-1, 1)):g}"
    ),
    "a huge number": lambda line, random: _change(
        NUMBER, line, random, lambda number: number + "0" * random.choice((3, 6, 9, 30))
    ),
    "a number of nothing": lambda line, random: _change(NUMBER, line, random, lambda _: "0"),
    "a number below nothing": lambda line, random: _change(
        NUMBER, line, random, lambda number: f"-{number}"
    ),
    "a share over the whole": lambda line, random: _change(
        NUMBER, line, random, lambda number: f"{number} %"
    ),
    "an id cut short": lambda line, random: _change(
        ID, line, random, lambda known_as: known_as.rpartition("-")[0]
    ),
}
