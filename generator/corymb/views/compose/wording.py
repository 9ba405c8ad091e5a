"""How are numbers, prices, weeks and dates said in a sentence?"""

from __future__ import annotations

import re
from datetime import date, timedelta
from decimal import ROUND_HALF_UP, Decimal

from babel import Locale
from babel.dates import format_date
from babel.numbers import format_currency, format_decimal, get_currency_precision

from corymb.studio.models import StudioFile
from corymb.studio.saying import and_list
from corymb.studio.values.money import PriceGuide
from corymb.studio.values.season import Season
from corymb.studio.words import MONTHS, THIRDS
from corymb.trade.season.weeks import COMMON_YEAR, WEEKS, runs_of, thursday


def locale_of(house: StudioFile) -> str:
    """The studio's language as Babel writes it."""
    return house.language.replace("-", "_")


def money(amount: Decimal, house: StudioFile) -> str:
    """An amount in the studio's money, halves rounded up: `€28`, `€1.20`."""
    currency, locale = house.money.currency, locale_of(house)
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
    digits = get_currency_precision(house.money.currency)
    return format_currency(
        amount.quantize(Decimal(1).scaleb(-digits), ROUND_HALF_UP),
        house.money.currency,
        locale=locale_of(house),
    )


def percent(share: Decimal, house: StudioFile) -> str:
    """A share to at most one decimal: `13.5 %`, `58 %`."""
    whole = (share * 100).quantize(Decimal("0.1"), ROUND_HALF_UP)
    return f"{number(whole.normalize(), house)} %"


def _with_decimals(locale: str, digits: int) -> str:
    """The country's own pattern for money, with so many decimals."""
    pattern = Locale.parse(locale).currency_formats["standard"].pattern
    return re.sub(r"\.0+", f".{'0' * digits}" if digits else "", pattern)


def price_guide(guide: PriceGuide | None, house: StudioFile) -> str:
    """A guide price as a client reads it: `from €28`; empty when there is none."""
    if guide is None:
        return ""
    return f"{'from ' if guide.from_ else ''}{money(guide.amount, house)}"


def number(value: float | Decimal, house: StudioFile) -> str:
    """A number with the separators of the studio's language."""
    return format_decimal(value, locale=locale_of(house))


def month_and_year(day: date, house: StudioFile) -> str:
    """`September 2025`."""
    return format_date(day, "LLLL y", locale=locale_of(house))


def sentence(text: str) -> str:
    """With a capital at its head and a full stop at its foot."""
    text = text.strip()
    if not text:
        return ""
    return text[0].upper() + text[1:] + ("" if text[-1] in ".!?" else ".")


def third_of(week: int) -> str:
    """The part of the month a week falls in, in a plain year: `late July`."""
    return third_of_day(date(COMMON_YEAR, 1, 1) + timedelta(days=thursday(week) - 1))


def third_of_day(day: date) -> str:
    """The part of the month a day falls in: `late July`."""
    third = THIRDS[min((day.day - 1) // 10, 2)]
    return f"{third} {MONTHS[day.month - 1]}"


def window_words(season: Season) -> str:
    """A season as it was written, with the dash that print uses: `early July – mid October`."""
    return str(season).replace(" - ", " – ")


def span_words(first: str, last: str) -> str:
    """`early July to mid October`, or `late July` for two that are called the same."""
    return first if first == last else f"{first} to {last}"


def spans_of(weeks: frozenset[int]) -> str:
    """The weeks in words: `early July to mid October, late November`; all year; or empty."""
    if len(weeks) == len(WEEKS):
        return "all year"
    spans = []
    for first, last in runs_of(weeks):
        spans.append(span_words(third_of(first), third_of(last)))
    return and_list(dict.fromkeys(spans))
