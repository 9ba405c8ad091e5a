"""What a light takes from a mix, and what it is told to be made good with."""

from __future__ import annotations

import pytest

from corymb.trade.colour.areas import ColourArea
from corymb.trade.light.lights import CANDLE, SHADE, SHOWN, WARM_LAMPS, Light, noon
from corymb.trade.light.lost import lost_in


def mix(**shares: float) -> list[ColourArea]:
    """Colours by name with their shares."""
    return [ColourArea("stem", "depth", name, HEX[name], share) for name, share in shares.items()]


HEX = {
    "white": "#fbfaf2",
    "cream": "#f3e6c0",
    "plum": "#3f1d33",
    "navy": "#1f2a55",
    "crimson": "#b01e3c",
    "silver": "#c9d1d0",
    "blush": "#ecd3c6",
    "sage": "#8c9a76",
}

MIXES: dict[str, tuple[list[ColourArea], Light, tuple[str, ...], str]] = {
    "plum by candle": (mix(plum=0.5, white=0.5), CANDLE, ("plum",), "light"),
    "plum and navy by candle": (
        mix(plum=0.3, navy=0.4, white=0.3),
        CANDLE,
        ("navy", "plum"),
        "light",
    ),
    "plum by lamps": (mix(plum=0.5, white=0.5), WARM_LAMPS, (), ""),
    "plum in the shade": (mix(plum=0.5, white=0.5), SHADE, (), ""),
    "crimson by candle": (mix(crimson=0.5, sage=0.5), CANDLE, (), ""),
    "whites under a high sun": (mix(white=0.7, sage=0.3), noon(60), (), "depth"),
    "whites under a low sun": (mix(white=0.7, sage=0.3), noon(15), (), ""),
    "a speck of plum by candle": (mix(plum=0.02, white=0.98), CANDLE, (), ""),
}


@pytest.mark.parametrize(("areas", "light", "sunk", "end"), MIXES.values(), ids=MIXES)
def test_dark_ones_sink_in_dim_light_and_pale_ones_bleach_in_hard_light(
    areas: list[ColourArea], light: Light, sunk: tuple[str, ...], end: str
) -> None:
    told = lost_in(areas, light)
    assert (told.sunk, told.strengthen) == (sunk, end)


def test_colours_that_candlelight_makes_one_are_named_as_a_pair() -> None:
    told = lost_in(mix(silver=0.5, blush=0.5), CANDLE)
    (pair,) = told.pairs
    assert {pair.one, pair.other} == {"silver", "blush"}
    assert pair.by_day > 10 > 7 > pair.in_light


def test_colours_that_are_one_by_day_are_not_told_to_run_together() -> None:
    near = [*mix(white=0.5), ColourArea("other", "light", "ivory", "#faf8ec", 0.5)]
    assert lost_in(near, CANDLE).pairs == ()


WORDS = {
    "sinking": (
        mix(plum=0.5, white=0.5),
        CANDLE,
        "Plum sinks. Strengthen the light end: whites, creams and pale tints carry it.",
    ),
    "running together": (
        mix(silver=0.6, blush=0.4),
        CANDLE,
        "Silver and blush run together. Strengthen the depth: a few dark stems hold its shape.",
    ),
    "bleached": (
        mix(white=0.7, sage=0.3),
        noon(60),
        "This light bleaches it. Strengthen the depth: a few dark stems hold its shape.",
    ),
    "nothing": (mix(plum=0.5, white=0.5), SHADE, "Nothing gets lost."),
}


@pytest.mark.parametrize(("areas", "light", "words"), WORDS.values(), ids=WORDS)
def test_what_is_lost_is_told_in_a_florist_s_words(
    areas: list[ColourArea], light: Light, words: str
) -> None:
    assert lost_in(areas, light).words == words


@pytest.mark.parametrize("light", SHOWN, ids=lambda light: light.kind)
def test_an_empty_mix_loses_nothing(light: Light) -> None:
    told = lost_in([], light)
    assert (told.pairs, told.sunk) == ((), ())


def test_the_order_of_colours_makes_no_difference() -> None:
    areas = mix(plum=0.3, navy=0.3, white=0.2, silver=0.1, blush=0.1)
    assert lost_in(areas, CANDLE) == lost_in(areas[::-1], CANDLE)


OF_STEMS = [
    ColourArea("cosmos", "light", "white", "#fbfaf2", 0.2),
    ColourArea("cosmos", "light", "yellow eye", "#dcae3c", 0.05),
    ColourArea("rose", "light", "cream", "#f3e6c0", 0.3),
    ColourArea("phlox", "light", "white", "#fbfaf2", 0.05),
    ColourArea("scabious", "depth", "plum", "#3f1d33", 0.4),
]
CALLED = {"cosmos": "white cosmos", "rose": "cream rose", "scabious": "plum scabious"}


def test_it_is_strengthened_by_the_largest_of_its_own_stems_that_do_so() -> None:
    told = lost_in(OF_STEMS, CANDLE, CALLED | {"phlox": "white phlox"})
    assert told.bearers == ("rose", "cosmos", "phlox")
    assert told.words.endswith("Strengthen the light end: more cream rose and white cosmos.")


def test_where_none_of_its_own_does_it_is_told_what_would() -> None:
    pale = [area for area in OF_STEMS if area.stem != "scabious"]
    told = lost_in(pale, noon(60), CALLED)
    assert told.bearers == ()
    assert told.words.endswith("Strengthen the depth: a few dark stems hold its shape.")
