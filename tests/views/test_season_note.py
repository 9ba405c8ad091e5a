"""What is said of where the dates of the year come from."""

from __future__ import annotations

from typing import Any

import pytest

from corymb.studio.studio import Studio
from corymb.views.compose.season_note import LIMITS, season_note
from tests.trade.making import stem
from tests.trade.season.places import at
from tests.trade.season.studio import small_studio
from tests.views.making import catalogue_of, demo

LAW = (
    "The dates in the stems’ files are those of somewhere. By the bioclimatic law of A. D. Hopkins "
    "(1918: four days for a degree of latitude or 400 feet of height) "
)
# Book at 50 degrees; 4 days a degree, and 4 for 121.92 m.
MOVED = {
    "two degrees north": ({"latitude": 52}, "8 days later in spring and earlier in autumn."),
    "a degree south": ({"latitude": 49}, "has them 4 days earlier in spring and later in autumn."),
    "a quarter of a degree": ({"latitude": 50.25}, "has them 1 day later in spring and earlier in"),
    "next door": ({"latitude": 50.05}, "has them within a day."),
    "uphill": ({"latitude": 50, "height": 244}, "has them 8 days later in spring"),
    "in the south": ({"latitude": -50}, "lies half a year away, and has them within a day."),
}  # fmt: skip


def note(**place: Any) -> tuple[str, ...]:
    studio = small_studio(stem())
    update = {"reference_place": at(50), "place": at(**place)}
    house = studio.house.model_copy(update=update)
    return season_note(catalogue_of(Studio(studio.folder, house, stems=studio.stems), "staff"))


@pytest.mark.parametrize(("place", "said"), MOVED.values(), ids=MOVED)
def test_the_law_is_named_with_its_days_and_its_limits(place: dict[str, Any], said: str) -> None:
    moved, limits, _ = note(**place)
    assert moved.startswith(f"{LAW}somewhere ") and said in moved
    assert limits == LIMITS


def test_the_dates_of_the_garden_itself_need_no_law() -> None:
    moved, log = note(latitude=50)
    assert moved.endswith("and hold good in somewhere as they are.")
    assert log.startswith("No log of first and last cuts speaks of these stems yet.")
    assert "33 % in its first, 50 % in its second." in log  # n / (n + 2)


def test_the_log_is_told_by_its_years_its_stems_and_what_it_moved_most() -> None:
    _, _, log = season_note(catalogue_of(demo(), "staff"))
    spoken_of = {each for year in demo().logs.values() for each in year.cuts}
    assert f"The log of 2024 and 2025 speaks of {len(spoken_of)} stems." in log
    assert "It moved the first cut of " in log
