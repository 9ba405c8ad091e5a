"""How are numbers, prices, weeks and dates said in a sentence?"""

from __future__ import annotations

import re
from datetime import date, timedelta
from decimal import ROUND_HALF_UP, Decimal
from functools import lru_cache

from babel import Locale
from babel.numbers import format_currency, format_decimal, get_currency_precision

from corymb.language import gettext as _
from corymb.language import pgettext
from corymb.language.locales import and_list, month_in_date, month_of_year
from corymb.studio.models import StudioFile
from corymb.studio.values.money import PriceGuide
from corymb.trade.season.weeks import COMMON_YEAR, WEEKS, runs_of, thursday


def locale_of(house: StudioFile) -> str:
    """The studio's language as Babel writes it."""
    return house.language.replace("-", "_")


def money(amount: Decimal, house: StudioFile) -> str:
    """An amount in the studio's money, halves rounded up: `€28`, `€1.20`."""
    return _money(str(amount), house.money.currency, locale_of(house))


@lru_cache(maxsize=16384)
def _money(figures: str, currency: str, locale: str) -> str:
    """The same amounts stand on many pages, and writing one is slow."""
    amount = Decimal(figures)
    whole = amount == amount.to_integral_value()
    digits = 0 if whole else max(2, get_currency_precision(currency))
    return format_currency(
        amount.quantize(Decimal(1).scaleb(-digits), ROUND_HALF_UP),
        currency,
        format=_with_decimals(locale, digits),
        locale=locale,
        currency_digits=False,
    )


def to_the_cent(amount: Decimal, house: StudioFile) -> str:
    """An amount in a column of amounts, with all its decimals: `€28.00`, `€1.20`."""
    currency = house.money.currency
    rounded = amount.quantize(Decimal(1).scaleb(-get_currency_precision(currency)), ROUND_HALF_UP)
    return _to_the_cent(str(rounded), currency, locale_of(house))


@lru_cache(maxsize=16384)
def _to_the_cent(figures: str, currency: str, locale: str) -> str:
    return format_currency(Decimal(figures), currency, locale=locale)


def percent(share: Decimal, house: StudioFile) -> str:
    """A share to at most one decimal: `13.5 %`, `58 %`."""
    whole = (share * 100).quantize(Decimal("0.1"), ROUND_HALF_UP)
    return percent_words(number(whole.normalize(), house))


def percent_words(figures: str | int) -> str:
    """`33 %`, of a number that is written already."""
    return _("{number} %").format(number=figures)


def _with_decimals(locale: str, digits: int) -> str:
    """The country's own pattern for money, with so many decimals."""
    pattern = Locale.parse(locale).currency_formats["standard"].pattern
    return re.sub(r"\.0+", f".{'0' * digits}" if digits else "", pattern)


def price_guide(guide: PriceGuide | None, house: StudioFile) -> str:
    """A guide price as a client reads it: `from €28`; empty when there is none."""
    if guide is None:
        return ""
    price = money(guide.amount, house)
    return _("from {price}").format(price=price) if guide.from_ else price


def number(value: float | Decimal, house: StudioFile) -> str:
    """A number with the separators of the studio's language."""
    return _number(str(value), locale_of(house))


@lru_cache(maxsize=16384)
def _number(figures: str, locale: str) -> str:
    return format_decimal(Decimal(figures), locale=locale)


def month_and_year(day: date) -> str:
    """`September 2025`."""
    return month_of_year(day)


def sentence(text: str) -> str:
    """With a capital at its head and a full stop at its foot."""
    text = text.strip()
    if not text:
        return ""
    return text[0].upper() + text[1:] + ("" if text[-1] in ".!?。" else ".")


def third_of(week: int) -> str:
    """The part of the month a week falls in, in a plain year: `late July`."""
    return third_of_day(middle_of(week))


def third_of_day(day: date) -> str:
    """The part of the month a day falls in: `late July`."""
    return third_words(_third(day), day.month)


def _third(day: date) -> int:
    return min((day.day - 1) // 10, 2)


def middle_of(week: int) -> date:
    """The day that decides for a week of a plain year."""
    return date(COMMON_YEAR, 1, 1) + timedelta(days=thursday(week) - 1)


def third_words(third: int, month: int) -> str:
    """The first, second or last part (0 to 2) of a month (1 to 12): `early July`."""
    # L10N: {month} has the form that it has within a date: in Polish `lipca`.
    thirds = _("early {month}"), _("mid {month}"), _("late {month}")
    return thirds[third].format(month=month_in_date(month))


def span_words(first: date, last: date) -> str:
    """`early July to mid October`; within one month as `part_of_month`."""
    if part := part_of_month(first, last):
        return part
    start, end = third_of_day(first), third_of_day(last)
    return pgettext("parts of the year", "{first} to {last}").format(first=start, last=end)


def part_of_month(first: date, last: date) -> str:
    """`late July`, or `mid to late May` with its month said once; '' for more than one month."""
    thirds = _third(first), _third(last)
    if first.month != last.month or thirds[0] > thirds[1]:
        return ""
    if thirds[0] == thirds[1]:
        return third_of_day(first)
    # L10N: {month} has the form that it has within a date: in Polish `lipca`.
    within = {
        (0, 1): _("early to mid {month}"),
        (0, 2): _("early to late {month}"),
        (1, 2): _("mid to late {month}"),
    }
    return within[thirds].format(month=month_in_date(first.month))


def all_year() -> str:
    """Every week of the year."""
    return _("all year")


def spans_of(weeks: frozenset[int]) -> str:
    """The weeks in words: `early July to mid October, late November`; all year; or empty."""
    if len(weeks) == len(WEEKS):
        return all_year()
    spans = []
    for first, last in runs_of(weeks):
        spans.append(span_words(middle_of(first), middle_of(last)))
    return and_list(dict.fromkeys(spans))
