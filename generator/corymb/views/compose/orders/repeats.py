"""How is it said how often a standing order comes round?"""

from __future__ import annotations

from collections.abc import Iterable

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import and_list, weekday_name
from corymb.studio.values.recurrence import CODES, PLACES, Recurrence

WEEKDAY_CODES = tuple(CODES.values())


def repeats_words(repeats: Recurrence) -> str:
    """`weekly on Tuesday`; a rule that was written as calendars write it, as it is."""
    if not repeats.written:
        return repeats.rule
    rule = dict(part.split("=") for part in repeats.rule.split(";"))
    if rule["FREQ"] == "DAILY":
        return _("daily")
    if rule["FREQ"] == "WEEKLY":
        return _weekly(int(rule.get("INTERVAL", "1")), rule["BYDAY"].split(","))
    if "BYMONTHDAY" in rule:
        return _("monthly on the {day}").format(day=rule["BYMONTHDAY"])
    return _monthly(int(rule["BYDAY"][:-2]), rule["BYDAY"][-2:])


def _weekly(weeks: int, codes: Iterable[str]) -> str:
    days = and_list(_weekday(code) for code in codes)
    if weeks == 1:
        return _("weekly on {days}").format(days=days)
    told = ngettext("every {number} week on {days}", "every {number} weeks on {days}", weeks)
    return told.format(number=weeks, days=days)


def _monthly(place: int, code: str) -> str:
    told = {
        PLACES["first"]: _("monthly on the first {day}"),
        PLACES["second"]: _("monthly on the second {day}"),
        PLACES["third"]: _("monthly on the third {day}"),
        PLACES["fourth"]: _("monthly on the fourth {day}"),
        PLACES["last"]: _("monthly on the last {day}"),
    }
    return told[place].format(day=_weekday(code))


def _weekday(code: str) -> str:
    return weekday_name(WEEKDAY_CODES.index(code))
