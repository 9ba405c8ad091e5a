"""How colours look in each light: what must hold whatever the numbers are."""

from __future__ import annotations

import pytest

from corymb.trade.colour.ciede2000 import difference, lab_of
from corymb.trade.light.lights import (
    CANDLE,
    COOL_LAMPS,
    DUSK,
    SCREEN,
    SHADE,
    UNDER_CANVAS,
    WARM_LAMPS,
    Light,
    low_sun,
    noon,
)
from corymb.trade.light.seen import INDICATIVE, seen

COLOURS = ("#f4efe6", "#e8c2b4", "#dc143c", "#5b2333", "#2f3a8f", "#5d7350", "#ffd700", "#b9a7d6")

DAYLIGHTS = {"noon, no glare": noon(20), "shade": SHADE, "canvas": UNDER_CANVAS}


@pytest.mark.parametrize("light", DAYLIGHTS.values(), ids=DAYLIGHTS)
def test_in_any_daylight_colours_look_nearly_as_they_are(light: Light) -> None:
    for hex_ in COLOURS:
        assert difference(hex_, seen(hex_, light)) < 4, hex_


def test_in_the_screen_s_own_light_a_colour_is_itself() -> None:
    own = Light("own", "its own", 6504, 1e6, full=True)
    assert own.viewing.luminance == SCREEN.luminance
    for hex_ in COLOURS:
        assert difference(hex_, seen(hex_, own)) < 0.6, hex_


WARMER = (COOL_LAMPS, WARM_LAMPS, CANDLE)


def test_the_warmer_the_light_the_warmer_a_white_looks() -> None:
    yellows = [lab_of(seen("#f4efe6", light))[2] for light in (SHADE, *WARMER)]
    assert yellows == sorted(yellows)
    assert yellows[-1] > yellows[0] + 10


def test_the_lower_the_sun_the_warmer_a_white_looks() -> None:
    yellows = [lab_of(seen("#f4efe6", low_sun(height)))[2] for height in (12, 6, 3)]
    assert yellows == sorted(yellows)


def test_by_candle_reds_come_forward_and_blues_go_back() -> None:
    for hex_, forward in (("#dc143c", True), ("#2f3a8f", False), ("#4a63c0", False)):
        change = lab_of(seen(hex_, CANDLE))[0] - lab_of(hex_)[0]
        assert (change > 0) == forward, hex_


def test_by_candle_a_blue_loses_nearly_half_of_its_blue() -> None:
    by_day, by_candle = lab_of("#4a63c0")[2], lab_of(seen("#4a63c0", CANDLE))[2]
    assert by_day < -50
    assert 0.4 * by_day > by_candle > 0.6 * by_day


def test_at_dusk_white_turns_blue() -> None:
    assert lab_of(seen("#ffffff", DUSK))[1] < -2


def test_the_higher_the_sun_the_more_of_the_dark_it_veils() -> None:
    darks = [lab_of(seen("#3f1d33", noon(height)))[0] for height in (20, 25, 40, 60, 85)]
    assert darks[0] == darks[1]
    assert darks[1] < darks[2] < darks[3] == darks[4]


def test_what_is_shown_says_that_it_is_indicative() -> None:
    assert INDICATIVE.startswith("Indicative")
