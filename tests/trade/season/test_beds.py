"""What stands in the beds is the book's, brought here, with the log blended in."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

import pytest

from corymb.studio.load import read_studio
from corymb.studio.models import CutLog
from corymb.trade.season.beds import Beds
from corymb.trade.season.hopkins import Shift
from tests.trade.making import stem

NORTH = Shift(8)


def logs(*years: str) -> dict[str, CutLog]:
    return {
        str(2001 + n): CutLog.model_validate({"cuts": {"rose": year}})
        for n, year in enumerate(years)
    }


def beds(book: str, *years: str, shift: Shift | None = None, **keys: str) -> Beds:
    return Beds({"rose": stem(in_season=book, **keys)}, logs(*years), shift)


# By hand: 8 days later in May and June, 8 earlier in autumn; then n years of log weigh
# n / (n + 2). "early July - mid October" as it is written where nothing changes it.
SEASONS = {
    "as written": (beds("early July - mid October"), "early July - mid October"),
    "moved": (beds("1 May - 20 October", shift=NORTH), "9 May - 12 October"),
    "logged": (beds("early May - late June", "4 May - 30 June"), "2 May - 30 June"),
    "moved and logged": (
        beds("1 May - 20 October", "15 May - 12 October", shift=NORTH), "11 May - 12 October",
    ),
    "one flush logged, the other as written": (
        beds("early May - late June, late September", "4 May - 30 June"),
        "2 May - 30 June, late September",
    ),
    "a flush of its own": (
        beds("early May", "1 May - 10 May, 3 October - 9 October", "1 - 10 May, 7 - 11 October"),
        "1 May - 10 May, 5 October - 10 October",
    ),
    "all year, whatever was logged": (
        beds("all year", "4 May - 30 June", shift=Shift(8, half_year=True)), "all year",
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", SEASONS)
def test_the_season_here_is_the_book_moved_and_the_log_blended_in(name: str) -> None:
    found, season = SEASONS[name]
    assert str(found.season("rose")) == season


# By hand. The best days keep their place between the edges of the flush they belong to.
BEST = {
    "as written": (beds("May - July", at_best="early June"), "early June"),
    "moved": (beds("1 May - 20 June", at_best="1 June", shift=NORTH), "9 June"),
    # May is 30 days from first to last; the log takes it to 1 to 16 May: half as long.
    "carried with the log": (
        beds("May", "1 May - 1 May", "1 May - 1 May", at_best="11 May - 21 May"),
        "6 May - 11 May",
    ),
    "clipped to the flush": (
        beds("1 May - 20 June", at_best="20 April - 10 May", shift=NORTH), "9 May - 18 May",
    ),
    "of the second flush": (
        beds("May, September", "May, 5 September - 30 September", at_best="1 September"),
        "2 September",
    ),
    "in none of its flushes": (
        # 30 June is 31.5 days before the turn of summer, x exp(-8 x 2 / 63) = 24.4: 7 July.
        beds("May", at_best="June", shift=NORTH), "9 June - 7 July",
    ),
    "of what stands all year": (
        beds("all year", at_best="1 May - 10 October", shift=NORTH), "9 May - 2 October",
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", BEST)
def test_the_best_days_go_with_their_flush(name: str) -> None:
    found, best = BEST[name]
    assert str(found.at_best("rose")) == best


def test_a_stem_without_best_days_has_none_here_either() -> None:
    assert beds("May", shift=NORTH).at_best("rose") is None


def test_several_flushes_miss_a_day_only_together() -> None:
    found = beds("1 June - 30 June, 2 July - 31 July")
    first, second = (flush.chance(182) for flush in found.flushes("rose"))
    assert found.chance("rose", 182) == pytest.approx(1 - (1 - first) * (1 - second))


def test_a_flush_of_every_other_year_stays_one_beside_a_flush_of_every_year() -> None:
    found = beds("June", *["June, 1 July - 20 July"] * 2)
    assert found.chance("rose", 190) == pytest.approx(0.5, abs=0.05)


def test_what_stands_all_year_is_certain_on_every_day() -> None:
    found = beds("all year", shift=Shift(20))
    assert {found.chance("rose", day) for day in range(1, 366)} == {1.0}
    assert found.flushes("rose") == ()


@pytest.mark.parametrize(
    ("day", "chance"),
    [(200, 1), (1, 0), (152, 0.5), (273, 0.5)],
    ids=["well within it", "far from it", "its first day", "its last"],
)
def test_a_day_of_a_season_is_as_likely_as_its_edges_let_it(day: int, chance: float) -> None:
    assert beds("1 June - 30 September").chance("rose", day) == pytest.approx(chance, abs=1e-3)


@pytest.mark.parametrize(
    ("week", "sure"), [(2, "touch and go"), (25, "sure"), (45, "not then")], ids=str
)
def test_a_week_that_the_windows_hold_is_never_called_not_then(week: int, sure: str) -> None:
    # Ten days in January that came in half the years, their edges six days either way.
    found = beds("June", *["June, 5 January - 14 January"] * 2)
    assert found.chance("rose", 11) < 0.35
    assert found.sure("rose", week) == sure


def test_years_of_log_are_those_that_speak_of_the_stem() -> None:
    found = Beds(
        {"rose": stem(in_season="May"), "mint": stem("mint", in_season="May")},
        logs("May", "4 May - 20 May"),
    )
    assert (found.years("rose"), found.years("mint")) == (2, 0)


def test_the_weeks_are_those_of_the_season_here() -> None:
    # 9 May to 12 October is day 129 to 285; Thursdays of weeks 19 (130) to 41 (284).
    assert beds("1 May - 20 October", shift=NORTH).weeks("rose") == set(range(19, 42))


DEMO = Path(__file__).parents[3] / "content"

# By hand. Dunmallow lies 1.1 degrees north of the book's dates and 20 m below: 4.4 - 0.66 = 3.74
# days, and the years 2024 and 2025 weigh a half.
DEMO_SEASONS: Mapping[str, str] = {
    # The book's 11 May and 10 June come to 14.74 May and 13.74 June; logged on average on
    # 12.5 May and 5.5 June: 13.62 May and 9.62 June.
    "peony-wine": "14 May - 10 June",
    # 1 September and 31 October come to 28.47 August and 27.26 October; logged on average on
    # 4 September and 22 October: 31.73 August and 24.63 October.
    "michaelmas-daisy-lilac": "1 September - 25 October",
    # No log: the book's 21 May and 20 June, and 3.74 days.
    "peony-blush": "25 May - 24 June",
    "ivy-trail": "all year",
}


def test_the_demo_garden_has_its_own_seasons() -> None:
    studio, _ = read_studio(DEMO)
    assert studio is not None
    found = Beds.of(studio)
    assert found.shift.days == pytest.approx(3.7438, abs=1e-4)
    assert {known: str(found.season(known)) for known in DEMO_SEASONS} == DEMO_SEASONS


STRETCHED = Shift(36, stretched=True)


@pytest.mark.parametrize(
    ("years", "book", "word"),
    [(0, "May - July", "likely"), (1, "May - July", "likely"), (0, "all year", "likely"),
     (2, "May - July", "sure")],
    ids=["the book", "one year of log", "all year", "the log counts for half"],
)  # fmt: skip
def test_where_the_law_is_out_of_its_depth_nothing_is_sure_but_by_the_log(
    years: int, book: str, word: str
) -> None:
    assert beds(book, *["10 May - 30 July"] * years, shift=STRETCHED).sure("rose", 25) == word
