"""What an arrangement's page has of other lights, and how true its colour band is to areas."""

from __future__ import annotations

from collections import defaultdict

import pytest

from corymb.trade.colour.areas import colour_areas
from corymb.trade.light.lights import CANDLE, low_sun
from corymb.trade.light.seen import INDICATIVE, seen
from corymb.trade.looks import Look
from corymb.views.compose.bands import band_of
from corymb.views.compose.light_switch import band_in, light_switch
from tests.views.making import catalogue_of, demo

CATALOGUE = catalogue_of(demo(), "staff")
LOOKS = [look for looks in CATALOGUE.looks.values() for look in looks.values()]
LIGHTS = {"low-sun": low_sun(), "candle": CANDLE}


@pytest.mark.parametrize("look", LOOKS, ids=lambda look: look.id)
def test_the_band_gives_each_colour_the_width_of_its_area(look: Look) -> None:
    areas: dict[tuple[str, str], float] = defaultdict(float)
    for area in colour_areas(look.lines, demo().stems):
        areas[area.role, area.hex] += 100 * area.share
    widths: dict[tuple[str, str], float] = defaultdict(float)
    for part in band_of(CATALOGUE, look):
        for patch in part.patches:
            widths[part.role, patch.hex] += patch.percent
    assert widths == pytest.approx(areas, abs=0.02)
    assert sum(widths.values()) == pytest.approx(100, abs=0.2)


def test_the_page_can_be_switched_to_low_sun_and_candle_and_says_it_is_indicative() -> None:
    switch = light_switch(CATALOGUE, LOOKS[0])
    assert [light.id for light in switch.lights] == ["noon", "low-sun", "candle"]
    assert [light.name for light in switch.lights] == ["Noon", "Low sun", "Candle"]
    assert switch.note == INDICATIVE


@pytest.mark.parametrize("look", LOOKS[:12], ids=lambda look: look.id)
def test_each_light_has_a_colour_for_every_patch_in_its_order(look: Look) -> None:
    by_day = [patch.hex for part in band_of(CATALOGUE, look) for patch in part.patches]
    noon, *others = light_switch(CATALOGUE, look).lights
    assert list(noon.colours) == by_day
    for light in others:
        assert list(light.colours) == [seen(hex_, LIGHTS[light.id]) for hex_ in by_day]


def test_light_changes_the_colours_of_a_band_and_nothing_else() -> None:
    band = band_of(CATALOGUE, LOOKS[0])
    lit = band_in(band, CANDLE)
    for part, other in zip(band, lit, strict=True):
        assert (part.role, part.percent) == (other.role, other.percent)
        for patch, its in zip(part.patches, other.patches, strict=True):
            assert (patch.name, patch.percent) == (its.name, its.percent)
            assert patch.hex != its.hex
