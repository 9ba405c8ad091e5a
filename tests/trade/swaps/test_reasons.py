"""Why a stem stands in for another, in a florist's words."""

from __future__ import annotations

from typing import Any

import pytest

from corymb.studio.models import Stem
from corymb.studio.words import FORMS
from corymb.trade.swaps.beside import KIN_FORMS, Pair, facts_of, form_cost
from corymb.trade.swaps.reasons import new_hazards, reasons
from corymb.trade.swaps.standing_in import StandIn
from tests.trade.making import stem
from tests.trade.swaps.making import line


def swap(out: Stem, coming: Stem, count: int = 6) -> tuple[StandIn, dict[str, Stem]]:
    """What comes in, within the limits or far beyond them, and the stems that it is told with."""
    stems = {out.id: out, coming.id: coming}
    pair = Pair(facts_of(out.id, out), facts_of(coming.id, coming))
    return StandIn.of(pair, line(count, out.id)), stems


def told(count: int = 6, **keys: Any) -> tuple[str, ...]:
    """What is said of a stem that is the rose but for some keys, in place of so many roses."""
    return reasons(*swap(stem(), stem("other", **keys), count))


def test_the_same_in_all_has_three_reasons() -> None:
    assert told() == ("the same colour to the eye", "heads of the same size", "the same form")


COLOURS = {
    "the same to the eye": ("e9c3b4", "the same colour to the eye"),
    "nearly the same": ("f0d2c6", "nearly the same colour"),
    "a little paler": ("f3ddd2", "a little paler"),
    "a little darker": ("d3a392", "a little darker"),
    "plainly darker": ("b5646a", "darker"),
    "far darker": ("4a1f3d", "darker"),
}


@pytest.mark.parametrize(("hex_", "words"), COLOURS.values(), ids=COLOURS)
def test_the_colour_comes_first(hex_: str, words: str) -> None:
    assert told(colours=[f"{hex_} 100 %"])[0] == words


SPIKE = {"form": "spike", "head_length": "12 cm"}  # as a round head of 6 cm where 3 cm wide
HEADS: dict[str, tuple[int, dict[str, Any], str]] = {
    "the same size and number": (6, {"head": "6.2 cm"}, "heads of the same size"),
    "half as wide": (3, {"head": "3 cm"}, "heads half as wide, so 12 for 3"),
    "a third as wide": (3, {"head": "2 cm"}, "heads a third as wide, so 27 for 3"),
    "two thirds as wide": (4, {"head": "4 cm"}, "heads two thirds as wide, so 9 for 4"),
    "much smaller": (1, {"head": "1.5 cm"}, "much smaller heads, so 16 for 1"),
    "slightly smaller": (9, {"head": "5 cm"}, "slightly smaller heads, so 13 for 9"),
    "slightly larger": (8, {"head": "7 cm"}, "slightly larger heads, so 6 for 8"),
    "half as wide again": (9, {"head": "9 cm"}, "heads half as wide again, so 4 for 9"),
    "twice as wide": (8, {"head": "12 cm"}, "heads twice as wide, so 2 for 8"),
    "three times as wide": (9, {"head": "18 cm"}, "heads three times as wide, so 1 for 9"),
    "much larger": (16, {"head": "24 cm"}, "much larger heads, so 1 for 16"),
    "smaller, as many": (1, {"head": "5.2 cm"}, "slightly smaller heads"),
    "the same size, more on a stem": (
        6,
        {"heads_per_stem": "3"},
        "more heads on a stem, so 2 for 6",
    ),
    "smaller, and yet fewer stems": (
        6,
        {"head": "4.2 cm", "heads_per_stem": "4"},
        "heads two thirds as wide but more heads on a stem, so 3 for 6",
    ),
    "airier": (4, {"form": "umbel"}, "airier, so 9 for 4"),
    "larger and airier": (
        9,
        {"form": "umbel", "head": "7 cm"},
        "slightly larger heads but airier, so 15 for 9",
    ),
    "long, of the same area": (7, {**SPIKE, "head": "3 cm"}, "airier, so 10 for 7"),
    "long, of half the area": (
        7,
        {**SPIKE, "head": "1.5 cm"},
        "heads half as big, so 20 for 7",
    ),
    "sprays": (
        4,
        {"form": "leaf-spray", "head": "3 cm", "head_length": "24 cm"},
        "sprays twice as big",
    ),
}


@pytest.mark.parametrize(("count", "keys", "words"), HEADS.values(), ids=HEADS)
def test_heads_and_count_come_next(count: int, keys: dict[str, Any], words: str) -> None:
    assert told(count, **keys)[1] == words


def test_a_stem_may_bear_fewer_heads_or_be_fuller() -> None:
    spray = stem("spray", heads_per_stem="3")
    assert reasons(*swap(spray, stem("single"), 2))[1] == "fewer heads on a stem, so 6 for 2"
    umbel = stem("umbel", form="umbel")
    assert reasons(*swap(umbel, stem("full"), 9))[1] == "fuller, so 4 for 9"


def test_the_form_comes_third_by_its_name() -> None:
    assert told(form="daisy")[2] == "another form: daisy"
    assert told(form="leaf-spray", head_length="6 cm")[2] == "another form: leaf spray"


KEEPING = {
    "as long": ("5 days", None),
    "a day longer": ("6 days", "keeps a day longer"),
    "two days longer, by the shortest": ("7-20 days", "keeps two days longer"),
    "two days less": ("3-12 days", "keeps two days less"),
    "twelve days longer": ("17 days", "keeps 12 days longer"),
    "far longer": ("365 days", "keeps far longer"),
}


@pytest.mark.parametrize(("vase_life", "words"), KEEPING.values(), ids=KEEPING)
def test_how_long_it_keeps_comes_last_where_it_differs(vase_life: str, words: str | None) -> None:
    assert told(vase_life=vase_life)[3:] == ((words,) if words else ())


def test_what_keeps_far_less_long_is_said_so() -> None:
    dried = stem("dried", vase_life="365 days")
    assert reasons(*swap(dried, stem("fresh")))[3] == "keeps far less long"


def test_a_hazard_that_comes_in_with_a_swap_is_known() -> None:
    thorny = stem("thorny", hazards=["thorns"])
    other = stem("other", hazards=["thorns", "irritant sap", "poisonous to pets"])
    assert new_hazards(*swap(thorny, other)) == ("irritant sap", "poisonous to pets")
    assert new_hazards(*swap(other, thorny)) == ()


def test_every_form_has_its_kin() -> None:
    assert sorted(form for group in KIN_FORMS for form in group) == sorted(FORMS)
    assert form_cost("cup", "rosette") < form_cost("cup", "spike")
    assert form_cost("pod", "pod") == 0
