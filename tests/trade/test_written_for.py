"""Whose words a look is made by, and which plants have gone since they were written."""

from __future__ import annotations

import pytest

from corymb.trade.step_notes import Gone
from corymb.trade.written_for import gone_since, stages_of, written
from tests.trade.making import recipe, variant

PLANTS = {
    "rose": "Rose",
    "rose-red": "Rose",
    "mint": "Mint",
    "poppy": "Poppy",
    "ivy": "Ivy",
    "fern": "Fern",
    "geum": "Geum",
}
GATE = recipe(
    variants={
        "swapped": variant(swap=["poppy -> ivy"]),
        "twice": variant(builds_on="swapped", swap=["ivy -> fern"]),
        "dropped": variant(drop=["mint"]),
        "red": variant(swap=["rose -> rose-red"]),
        "fewer": variant(drop=["2 rose"]),
        "in-part": variant(swap=["2 rose -> 2 fern, light"]),
        "then-all": variant(builds_on="in-part", swap=["rose -> geum"]),
        "joined": variant(swap=["poppy -> mint, depth"]),
        "own": variant(swap=["poppy -> ivy"], method=["Ivy first."]),
        "on-own": variant(builds_on="own", swap=["ivy -> fern"]),
    }
)
BASED = recipe("based", based_on="gate-jar", stems=None, swap=["mint -> geum"])
RENEWED = recipe("renewed", based_on="gate-jar", stems=None, drop=["mint"], method=["Anew."])
RECIPES = {one.id: one for one in (GATE, BASED, RENEWED)}
FILL, IVY = ["Fill the jar."], ["Ivy first."]

LOOKS = {
    "the recipe itself": ("gate-jar", "", FILL, ()),
    "a plant swapped": ("gate-jar", "swapped", FILL, (Gone("Poppy", ("Ivy",)),)),
    "swapped again further on": ("gate-jar", "twice", FILL, (Gone("Poppy", ("Fern",)),)),
    "a plant left out": ("gate-jar", "dropped", FILL, (Gone("Mint"),)),
    "another colour of a plant": ("gate-jar", "red", FILL, ()),
    "fewer of a plant": ("gate-jar", "fewer", FILL, ()),
    "a plant of which a part was swapped before": (
        "gate-jar",
        "then-all",
        FILL,
        (Gone("Rose", ("Geum",)),),
    ),
    "a plant swapped for one that was there": (
        "gate-jar",
        "joined",
        FILL,
        (Gone("Poppy", ("Mint",)),),
    ),
    "words of its own": ("gate-jar", "own", IVY, ()),
    "the words of the variant it builds on": ("gate-jar", "on-own", IVY, (Gone("Ivy", ("Fern",)),)),
    "the words of the recipe it is based on": ("based", "", FILL, (Gone("Mint", ("Geum",)),)),
    "a recipe based on another with words of its own": ("renewed", "", ["Anew."], ()),
}


@pytest.mark.parametrize(("known_as", "variant_id", "method", "gone"), LOOKS.values(), ids=LOOKS)
def test_a_look_knows_its_words_and_what_has_gone_since(
    known_as: str, variant_id: str, method: list[str], gone: tuple[Gone, ...]
) -> None:
    stages = stages_of(RECIPES[known_as], variant_id, RECIPES)
    told, at = written(stages, "method")
    assert told == method
    assert gone_since(stages, at, PLANTS) == gone
