"""Each count and time of a look is found where it stands in a recipe's file."""

from __future__ import annotations

from typing import Any

import pytest

from corymb.trade.written_places import Place, entries_of
from tests.trade.making import recipe, variant

Path = tuple[str | int, ...]
LATER = ("variants", "later")

FOUND: dict[str, tuple[dict[str, Any], str, list[tuple[Path | None, int]]]] = {
    "a line of the recipe": ({"drop": ["mint"]}, "rose", [(("stems", 0), 6)]),
    "a line that is scaled": ({"scale": "200 %"}, "rose", [(None, 12)]),
    "a swap of all for as many": ({"swap": ["rose -> lily"]}, "lily", [((*LATER, "swap", 0), 6)]),
    "a swap with its own count": ({"swap": ["rose -> 4 lily"]}, "lily", [((*LATER, "swap", 0), 4)]),
    "what is left of a swap": ({"swap": ["2 rose -> lily"]}, "rose", [(None, 4)]),
    "a swap for a stem that is there": ({"swap": ["poppy -> mint"]}, "mint", [(None, 6)]),
    "an added stem": ({"add": ["3 lily, accent"]}, "lily", [((*LATER, "add", 0), 3)]),
    "more of a stem": ({"add": ["1 rose, accent"]}, "rose", [(None, 7)]),
    "fewer of a stem": ({"drop": ["2 rose"]}, "rose", [(None, 4)]),
    "a stem that is left out": ({"drop": ["rose"]}, "rose", []),
    "one that goes and comes again": (
        {"drop": ["rose"], "add": ["3 rose, accent"]}, "rose", [((*LATER, "add", 0), 3)]
    ),
}  # fmt: skip


@pytest.mark.parametrize(("changes", "stem", "found"), FOUND.values(), ids=FOUND)
def test_a_variants_count_is_found_where_it_is_written(
    changes: dict[str, Any], stem: str, found: list[tuple[Path | None, int]]
) -> None:
    jar = recipe(variants={"later": variant(**changes)})
    entries = [
        entry
        for entry in entries_of({"gate-jar": jar})
        if entry.written.stem == stem and "gate-jar--later" in entry.written.looks
    ]
    told = [(entry.place.path if entry.place else None, entry.written.number) for entry in entries]
    assert told == found


def test_a_line_that_several_looks_go_by_is_one_place() -> None:
    urn = recipe("urn", based_on="gate-jar", stems=None, time="40 min", add=["1 lily, accent"])
    urn.in_style("standing-piece")
    recipes = {"gate-jar": recipe(variants={"later": variant(drop=["mint"])}), "urn": urn}
    by_place = {entry.place: entry.written for entry in entries_of(recipes)}
    roses = by_place[Place("gate-jar", ("stems", 0))]
    assert roses.looks == ("gate-jar", "gate-jar--later", "urn")
    assert by_place[Place("gate-jar", ("time",))].looks == ("gate-jar", "gate-jar--later")
    assert by_place[Place("urn", ("time",))].number == 40
    assert by_place[Place("urn", ("add", 0))].looks == ("urn",)


def test_a_place_knows_the_look_whose_own_part_it_stands_in() -> None:
    assert Place("gate-jar", ("stems", 0)).look == "gate-jar"
    assert Place("gate-jar", (*LATER, "swap", 0)).look == "gate-jar--later"
