"""How is a season from a file said? With the ends that were written, in the reader's language."""

from __future__ import annotations

import re
from datetime import date

from corymb.language import gettext as _
from corymb.language import pgettext
from corymb.language.locales import day_and_month, month_names
from corymb.studio.values.season import Season, Window
from corymb.studio.values.season_text import ALL_YEAR
from corymb.studio.words import MONTHS, THIRDS
from corymb.views.compose.wording import all_year, third_words

PLAIN_YEAR = 2024  # a leap year, so that every day of the year is in it


def window_words(season: Season) -> str:
    """`early July – mid October`, `week 22 – week 30`; several by commas, as they are written."""
    return ", ".join(_window(window) for window in season.windows)


def _window(window: Window) -> str:
    written = str(window)
    if written == ALL_YEAR:
        return all_year()
    ends = [_end(end) for end in written.split(" - ")]
    if len(ends) == 1:
        return ends[0]
    # L10N: the two ends of a season, with the dash that print uses.
    return _("{first} – {last}").format(first=ends[0], last=ends[1])


def _end(written: str) -> str:
    """`W22`, `July`, `early July`, `4 July`."""
    if re.fullmatch(r"W\d+", written):
        # L10N: a week by its number, as a season's end: W22.
        return pgettext("season", "W{week}").format(week=written[1:])
    *before, month = written.split()
    number = MONTHS.index(month) + 1
    if not before:
        return month_names()[number - 1]
    if before[0] in THIRDS:
        return third_words(THIRDS.index(before[0]), number)
    return day_and_month(date(PLAIN_YEAR, number, int(before[0])))
