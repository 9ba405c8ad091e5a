"""From when it is light enough to cut: the same hour as any almanac's civil dawn."""

from __future__ import annotations

from datetime import date, time

import pytest

from corymb.trade.light.first_light import first_light
from corymb.trade.light.sun import Site

DUBLIN = Site(53.35, -6.26, "Europe/Dublin")
NORTH = Site(69.65, 18.96, "Europe/Oslo")
SOUTH = Site(-43.53, 172.64, "Pacific/Auckland")

# Civil dawn of almanacs, from memory to a few minutes, up to the next quarter: Dublin 22 December
# 07:57 and 21 June 04:12, Christchurch 21 June 07:31.
DAWNS = {
    "midwinter": (DUBLIN, "2026-12-22", time(8)),
    "midsummer": (DUBLIN, "2026-06-21", time(4, 15)),
    "the south's midwinter": (SOUTH, "2026-06-21", time(7, 45)),
    "light all night": (NORTH, "2026-06-21", None),
}


@pytest.mark.parametrize(("site", "day", "dawn"), DAWNS.values(), ids=DAWNS)
def test_it_is_light_from_civil_dawn_to_the_next_quarter(
    site: Site, day: str, dawn: time | None
) -> None:
    assert first_light(site, date.fromisoformat(day)) == dawn
