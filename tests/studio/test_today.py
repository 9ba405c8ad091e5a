"""The day of a build is the studio's own, wherever the computer stands."""

from __future__ import annotations

from datetime import datetime

import pytest

from corymb.studio.today import day_at


@pytest.mark.parametrize(
    ("moment", "zone", "day"),
    [
        # By the zones' own rules: IANA time zone database, offsets written in the ids.
        pytest.param("2026-10-10T22:59:59Z", "Europe/Dublin", "2026-10-10", id="summer, +1"),
        pytest.param("2026-10-10T23:00:00Z", "Europe/Dublin", "2026-10-11", id="midnight, +1"),
        pytest.param("2026-11-10T23:59:59Z", "Europe/Dublin", "2026-11-10", id="winter, +0"),
        pytest.param("2026-11-11T00:00:00Z", "Europe/Dublin", "2026-11-11", id="midnight, +0"),
        pytest.param("2026-10-10T11:00:00Z", "Pacific/Auckland", "2026-10-11", id="ahead, +13"),
        pytest.param("2026-10-10T10:59:00Z", "Pacific/Auckland", "2026-10-10", id="not yet, +13"),
        pytest.param("2026-10-11T06:59:00Z", "America/Los_Angeles", "2026-10-10", id="behind, -7"),
        pytest.param("2026-10-11T00:30:00+02:00", "Europe/Dublin", "2026-10-10", id="of +2's"),
        # Clocks go back from 02:00 to 01:00 on 25 October 2026: the day has 25 hours.
        pytest.param("2026-10-25T23:59:00Z", "Europe/Dublin", "2026-10-25", id="a long day's end"),
    ],
)
def test_a_moment_has_the_date_of_the_studios_own_clock(moment: str, zone: str, day: str) -> None:
    assert str(day_at(datetime.fromisoformat(moment), zone)) == day
