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
LATER, EARLIER = "later in spring, earlier in autumn.", "earlier in spring, later in autumn."
MOVED = {
    "two degrees north": (
        {"latitude": 52}, f"up to 8 days for somewhere, 2 degrees further north: {LATER}",
    ),
    "a degree south": (
        {"latitude": 49}, f"up to 4 days for somewhere, 1 degree further south: {EARLIER}",
    ),
    "uphill": (
        {"latitude": 50, "height": 244}, f"up to 8 days for somewhere, 244 m higher: {LATER}",
    ),
    "in the south": (
        {"latitude": -50}, "half a year, to the other half of the world for somewhere.",
    ),
}  # fmt: skip


def note(**place: Any) -> tuple[str, ...]:
    studio = small_studio(stem())
    update = {"reference_place": at(50), "place": at(**place)}
    house = studio.house.model_copy(update=update)
    return season_note(catalogue_of(Studio(studio.folder, house, stems=studio.stems), "staff"))


@pytest.mark.parametrize(("place", "said"), MOVED.values(), ids=MOVED)
def test_the_law_is_named_with_its_days_and_its_limits(place: dict[str, Any], said: str) -> None:
    moved, limits, _ = note(**place)
    assert moved == f"{LAW}they are moved by {said}"
    assert limits == LIMITS


@pytest.mark.parametrize("longitude", [0, 10])
def test_the_law_is_quoted_with_longitude_where_that_is_counted(longitude: float) -> None:
    studio = small_studio(stem())
    update = {
        "reference_place": at(45, longitude=-100),
        "place": at(45, longitude=-100 + longitude),
    }
    house = studio.house.model_copy(update=update)
    told, *_ = season_note(catalogue_of(Studio(studio.folder, house, stems=studio.stems), "staff"))
    assert ("five degrees of longitude or 400 feet" in told) == bool(longitude)
    # 4 days for each 5 degrees.
    assert ("up to 8 days for somewhere, 10 degrees further east" in told) == bool(longitude)


def test_where_the_law_is_stretched_the_note_carries_the_advice() -> None:
    _, limits, _ = note(latitude=59)
    assert limits.startswith("The law is out of its depth here: it isn't meant for the tropics, ")


@pytest.mark.parametrize("latitude", [50, 50.05])
def test_the_dates_of_the_garden_itself_need_no_law(latitude: float) -> None:
    moved, log = note(latitude=latitude)
    assert moved.endswith("and hold good in somewhere as they are.")
    assert log.startswith("No log of first and last cuts speaks of these stems yet.")
    assert "33 % in its first, 50 % in its second." in log  # n / (n + 2)


def test_the_log_is_told_by_its_years_its_stems_and_what_it_moved_most() -> None:
    _, _, log = season_note(catalogue_of(demo(), "staff"))
    spoken_of = {each for year in demo().logs.values() for each in year.cuts}
    assert f"The log of 2024 and 2025 speaks of {len(spoken_of)} stems." in log
    assert "It moved the first cut of " in log
