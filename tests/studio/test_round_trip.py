"""What a value prints is read as the same value, for every kind and any value of it."""

from collections.abc import Callable
from datetime import date, time
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.values import lines
from corymb.studio.values.colour import (
    ColourPart,
    NamedColour,
    parse_colour_part,
    parse_named_colour,
)
from corymb.studio.values.dates import IsoWeek, parse_date, parse_iso_week, weeks_in
from corymb.studio.values.length import (
    Floor,
    Height,
    Length,
    LengthRange,
    parse_floor,
    parse_height,
    parse_length,
    parse_length_range,
)
from corymb.studio.values.money import PriceGuide, parse_money, parse_price_guide, print_money
from corymb.studio.values.number import plain
from corymb.studio.values.recurrence import parse_recurrence
from corymb.studio.values.season import MonthDay, Season, Window, month_day
from corymb.studio.values.season_text import LONGEST_WRAP, parse_season
from corymb.studio.values.share import Scale, Share, parse_scale, parse_share
from corymb.studio.values.text import parse_decimal, parse_number, parse_yes_no, print_yes_no
from corymb.studio.values.time import (
    ClockSpan,
    DayRange,
    Duration,
    parse_clock_span,
    parse_day_range,
    parse_duration,
)
from corymb.studio.values.volume import Volume, parse_volume
from corymb.studio.values.weight import Weight, parse_weight
from corymb.studio.words import MONTHS, ROLES, THIRDS, USES, WEEKDAYS


def four_decimals(least: float, most: float) -> st.SearchStrategy[float]:
    """Measures as they come out of reading: no finer than a ten-thousandth."""
    return st.integers(int(least * 10_000) or 1, int(most * 10_000)).map(lambda n: n / 10_000)


CM = four_decimals(0, 100_000)
FLOOR_CM = four_decimals(0, 1400)
IDS = st.from_regex(r"[a-z]{1,8}(-[a-z0-9]{1,6}){0,2}", fullmatch=True)
NAMES = st.from_regex(r"[a-z]{1,7}( [a-z]{1,7}){0,2}", fullmatch=True)
HEXES = st.integers(0, 0xFFFFFF).map(lambda n: f"#{n:06x}")
SHARES = st.integers(0, 10_000).map(lambda n: Decimal(n) / 10_000)
MONEY = st.integers(0, 10_000_000).map(lambda n: Decimal(n) / 10_000)
COUNTS = st.integers(1, 9_999)
SOME = st.none() | COUNTS
CLOCKS = st.times().map(lambda t: time(t.hour, t.minute))
WORDS = st.lists(IDS, max_size=2).map(tuple)


def ordered(values: st.SearchStrategy[Any]) -> st.SearchStrategy[list[Any]]:
    """Two values, the smaller first."""
    return st.lists(values, min_size=2, max_size=2).map(sorted)


def window(days: tuple[int, int]) -> Window:
    """A window between two days of the year."""
    return Window(month_day(days[0]), month_day(days[1]))


DAYS = st.integers(1, 365)
WINDOWS = (
    st.tuples(DAYS, DAYS)
    .map(window)
    .filter(lambda w: not w.over_new_year or len(w.days()) <= LONGEST_WRAP)
)

KINDS: list[Any] = [
    pytest.param(CM.map(Length), parse_length, str, id="length"),
    pytest.param(ordered(CM).map(lambda p: LengthRange(*p)), parse_length_range, str, id="range"),
    pytest.param(ordered(FLOOR_CM).map(lambda p: Floor(p[1], p[0])), parse_floor, str, id="floor"),
    pytest.param(
        st.integers(-5_000_000, 60_000_000).map(lambda n: Height(n / 10_000)),
        parse_height,
        str,
        id="height",
    ),
    pytest.param(four_decimals(0, 1_000_000).map(Weight), parse_weight, str, id="weight"),
    pytest.param(
        st.integers(1, 10_000_000_000).map(lambda n: Volume(n / 1_000_000)),
        parse_volume,
        str,
        id="volume",
    ),
    pytest.param(st.integers(1, 60_000).map(Duration), parse_duration, str, id="duration"),
    pytest.param(
        ordered(st.integers(1, 730)).map(lambda p: DayRange(*p)), parse_day_range, str, id="days"
    ),
    pytest.param(
        st.tuples(CLOCKS, CLOCKS).filter(lambda p: p[0] != p[1]).map(lambda p: ClockSpan(*p)),
        parse_clock_span,
        str,
        id="hours",
    ),
    pytest.param(
        st.lists(WINDOWS, min_size=1, max_size=3).map(lambda w: Season(tuple(w))),
        parse_season,
        str,
        id="season",
    ),
    pytest.param(st.dates(date(1900, 1, 1), date(2199, 12, 31)), parse_date, str, id="date"),
    pytest.param(
        st.tuples(st.integers(1900, 2199), st.integers(1, 53))
        .filter(lambda p: p[1] <= weeks_in(p[0]))
        .map(lambda p: IsoWeek(*p)),
        parse_iso_week,
        str,
        id="week",
    ),
    pytest.param(SHARES.map(Share), parse_share, str, id="share"),
    pytest.param(
        st.integers(1, 200_000).map(lambda n: Scale(Decimal(n) / 10_000)),
        parse_scale,
        str,
        id="scale",
    ),
    pytest.param(MONEY, parse_money, print_money, id="money"),
    pytest.param(
        st.builds(PriceGuide, MONEY, st.booleans()), parse_price_guide, str, id="price guide"
    ),
    pytest.param(
        st.builds(ColourPart, st.just("") | NAMES, HEXES, st.none() | SHARES),
        parse_colour_part,
        str,
        id="colour part",
    ),
    pytest.param(st.builds(NamedColour, NAMES, HEXES), parse_named_colour, str, id="named colour"),
    pytest.param(st.booleans(), parse_yes_no, print_yes_no, id="yes or no"),
    pytest.param(
        st.integers(-(10**8), 10**8).map(lambda n: n / 1000), parse_number, plain, id="number"
    ),
    pytest.param(st.decimals(-(10**6), 10**6, places=3), parse_decimal, plain, id="decimal"),
    pytest.param(
        st.builds(
            lines.RecipeLineText,
            COUNTS,
            IDS,
            st.none() | st.sampled_from(ROLES),
            st.none() | st.sampled_from(USES),
            st.booleans(),
        ),
        lines.parse_recipe_line,
        str,
        id="recipe line",
    ),
    pytest.param(
        st.builds(lines.SwapText, IDS, IDS, SOME, SOME, st.none() | st.sampled_from(ROLES)).filter(
            lambda s: (s.out, s.out_count) != (s.into, s.into_count)
        ),
        lines.parse_swap,
        str,
        id="swap",
    ),
    pytest.param(st.builds(lines.DropText, IDS, SOME), lines.parse_drop, str, id="drop"),
    pytest.param(
        st.builds(lines.OrderLineText, COUNTS, IDS, WORDS, st.booleans(), st.booleans()),
        lines.parse_order_line,
        str,
        id="order line",
    ),
    pytest.param(
        st.builds(
            lines.SundryText,
            st.integers(1, 99_999).map(lambda n: Decimal(n) / 100),
            st.from_regex(r"[a-z]{4,8}( [a-z]{1,8})?", fullmatch=True),
            MONEY,
            st.sampled_from(("", "m", "kg", "ml")),
        ),
        lines.parse_sundry,
        str,
        id="sundry",
    ),
    pytest.param(
        st.builds(lines.LinkItemText, IDS, WORDS), lines.parse_link_item, str, id="link item"
    ),
]


@pytest.mark.parametrize(("values", "parse", "write"), KINDS)
def test_what_is_printed_is_read_as_the_same(
    values: st.SearchStrategy[Any], parse: Callable[[str], Any], write: Callable[[Any], str]
) -> None:
    @given(values)
    def read_again(value: Any) -> None:
        text = write(value)
        assert parse(text) == value
        assert write(parse(text)) == text

    read_again()


ENDS = st.one_of(
    st.sampled_from(MONTHS),
    st.builds("{} {}".format, st.sampled_from(THIRDS), st.sampled_from(MONTHS)),
    st.builds("{} {}".format, st.integers(1, 28), st.sampled_from(MONTHS)),
    st.integers(1, 53).map(lambda week: f"W{week:02d}"),
)


@given(st.lists(ENDS, min_size=1, max_size=4))
def test_a_season_of_single_pieces_prints_as_it_was_written(pieces: list[str]) -> None:
    assert str(parse_season(", ".join(pieces))) == ", ".join(pieces)


@given(ENDS, ENDS, st.sampled_from([" - ", "-", " – ", " to ", " until "]))
def test_a_season_between_two_pieces_prints_in_one_spelling(
    first: str, last: str, dash: str
) -> None:
    try:
        season = parse_season(f"{first}{dash}{last}")
    except ValueError as wrong:
        assert "runs backwards" in str(wrong)
        return
    assert str(season) == f"{first} - {last}"
    assert parse_season(str(season)) == season
    assert season.windows[0].first == parse_season(first).windows[0].first
    assert season.windows[0].last == parse_season(last).windows[0].last


@given(st.sets(st.sampled_from(WEEKDAYS), min_size=1), st.integers(1, 52))
def test_a_weekly_recurrence_prints_as_it_is_read(days: set[str], gap: int) -> None:
    text = f"every {gap} weeks on {', '.join(sorted(days))}"
    read = parse_recurrence(text)
    again = parse_recurrence(str(read))
    assert again == read
    assert str(again) == str(read)


@given(st.sampled_from(KINDS), st.text(max_size=24))
def test_any_text_is_read_or_answered_with_a_sentence(kind: Any, text: str) -> None:
    parse = kind.values[1]
    try:
        parse(text)
    except ValueError as wrong:
        assert str(wrong)[-1] in ".?"
        assert str(wrong)[0].isupper() or str(wrong)[0] in "‘" or str(wrong)[0].isdigit()


def test_a_leap_day_prints_as_itself() -> None:
    season = Season((Window(MonthDay(2, 29), MonthDay(3, 1)),))
    assert parse_season(str(season)) == season
