"""Variants and recipes based on others, worked out change by change."""

from __future__ import annotations

from typing import Any

import pytest

from corymb.trade.changes import ChangeError
from corymb.trade.looks import Look, looks_of
from tests.trade.making import recipe, variant


def lines(look: Look) -> list[str]:
    return [f"{line.count} {line.stem}, {line.role}" for line in look.lines]


def look_of(**changes: Any) -> Look:
    one = recipe(variants={"other": variant(**changes)})
    return looks_of(one, {})["other"]


CHANGES: dict[str, tuple[dict[str, Any], list[str]]] = {
    "a swap keeps the count and the role": (
        {"swap": ["rose -> peony"]},
        ["6 peony, light", "4 mint, depth", "2 poppy, accent"],
    ),
    "a swap of some, for more of another": (
        {"swap": ["2 rose -> 5 daisy"]},
        ["4 rose, light", "5 daisy, light", "4 mint, depth", "2 poppy, accent"],
    ),
    "a swap into another role": (
        {"swap": ["2 poppy -> 3 ivy, depth"]},
        ["6 rose, light", "4 mint, depth", "3 ivy, depth"],
    ),
    "a swap for what is there already joins its line": (
        {"swap": ["poppy -> mint, depth"]},
        ["6 rose, light", "6 mint, depth"],
    ),
    "a stem left out": ({"drop": ["mint"]}, ["6 rose, light", "2 poppy, accent"]),
    "two fewer": ({"drop": ["2 rose"]}, ["4 rose, light", "4 mint, depth", "2 poppy, accent"]),
    "a stem added": (
        {"add": ["3 ivy, depth"]},
        ["6 rose, light", "4 mint, depth", "2 poppy, accent", "3 ivy, depth"],
    ),
    "half of everything": (
        {"scale": "50 %"},
        ["3 rose, light", "2 mint, depth", "1 poppy, accent"],
    ),
    "more of one role": (
        {"scale": {"light": "150 %"}},
        ["9 rose, light", "4 mint, depth", "2 poppy, accent"],
    ),
    "all changes together, scaled last": (
        {"swap": ["poppy -> geum"], "add": ["2 ivy, depth"], "drop": ["2 mint"], "scale": "2"},
        ["12 rose, light", "4 mint, depth", "4 geum, accent", "4 ivy, depth"],
    ),
}


@pytest.mark.parametrize(("changes", "expected"), CHANGES.values(), ids=CHANGES)
def test_a_variant_is_its_parent_changed(changes: dict[str, Any], expected: list[str]) -> None:
    assert lines(look_of(**changes)) == expected


def test_without_a_count_all_of_a_stem_goes_from_every_line() -> None:
    two = ["6 rose, light", "2 rose, accent", "4 mint, depth"]
    variants = {"swapped": variant(swap=["rose -> peony"]), "dropped": variant(drop=["rose"])}
    looks = looks_of(recipe(stems=two, variants=variants), {})
    assert lines(looks["swapped"]) == ["6 peony, light", "2 peony, accent", "4 mint, depth"]
    assert lines(looks["dropped"]) == ["4 mint, depth"]


def test_a_variant_on_a_variant_starts_from_it() -> None:
    one = recipe(
        variants={
            "late": variant(swap=["poppy -> geum"]),
            "later": variant(builds_on="late", swap=["geum -> aster"]),
        }
    )
    later = looks_of(one, {})["later"]
    assert lines(later)[2] == "2 aster, accent"
    assert [line.stem for line in later.parent_lines] == ["rose", "mint", "geum"]


def test_a_recipe_based_on_another_starts_from_the_whole_of_it() -> None:
    base = recipe()
    second = recipe("second", based_on="gate-jar", stems=None, swap=["poppy -> geum"])
    third = recipe("third", based_on="second", stems=None, drop=["mint"])
    recipes = {"gate-jar": base, "second": second, "third": third}
    assert lines(looks_of(third, recipes)[""]) == ["6 rose, light", "2 geum, accent"]


def test_an_essential_stem_stays_essential_when_all_of_it_is_swapped() -> None:
    swapped = look_of(swap=["rose -> peony"]).lines[0]
    partly = look_of(swap=["2 rose -> 2 peony"]).lines
    assert swapped.essential
    assert [line.essential for line in partly[:2]] == [True, False]


SLIPS: dict[str, tuple[dict[str, Any], str, tuple[str | int, ...]]] = {
    "a drop of what isn't there": (
        {"drop": ["roses"]},
        "‘roses’ isn't in what this changes. Did you mean ‘rose’?",
        ("variants", "other", "drop", 0),
    ),
    "more dropped than there are": (
        {"drop": ["7 rose"]},
        "Only 6 of ‘rose’ are in what this changes: write 6 or fewer, or no number for all of it.",
        ("variants", "other", "drop", 0),
    ),
    "a variant on one that isn't there": (
        {"builds_on": "othr", "drop": ["mint"]},
        "This recipe has no variant called ‘othr’. Did you mean ‘other’?",
        ("variants", "other", "builds on"),
    ),
    "a variant on itself": (
        {"builds_on": "other", "drop": ["mint"]},
        "These variants build on each other: other → other.",
        ("variants", "other", "builds on"),
    ),
}


@pytest.mark.parametrize(("changes", "message", "path"), SLIPS.values(), ids=SLIPS)
def test_a_change_that_cannot_be_made_says_so_with_its_place(
    changes: dict[str, Any], message: str, path: tuple[str | int, ...]
) -> None:
    with pytest.raises(ChangeError) as raised:
        look_of(**changes)
    assert str(raised.value) == message
    assert raised.value.path == path
