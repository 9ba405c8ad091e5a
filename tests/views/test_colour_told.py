"""What staff read of an arrangement's colours."""

from __future__ import annotations

from dataclasses import fields
from datetime import date

import pytest

from corymb.trade.changes import LookLine
from corymb.trade.colour.mixture import mixture
from corymb.trade.looks import Look
from corymb.views.compose.colour_told import colour_view
from corymb.views.recipe import ClientRecipe
from tests.views.making import catalogue_of, demo

WEEK_20, WEEK_38 = date(2026, 5, 13), date(2026, 9, 16)
CATALOGUE = catalogue_of(demo(), "staff", WEEK_38)
JAR = CATALOGUE.looks["hedgerow-jar"][""]


def look_of(*lines: tuple[str, int, str]) -> Look:
    """A look of the jar's recipe with lines of its own."""
    made = tuple(LookLine(stem, count, role, None, False, "") for stem, count, role in lines)
    return Look("hedgerow-jar", "", made, made)


def test_shares_are_those_of_the_recipe_and_those_of_the_colours() -> None:
    mix = mixture(JAR.lines, demo().stems)
    shares = colour_view(CATALOGUE, JAR).shares
    assert [part.role for part in shares] == ["depth", "light", "accent"]
    for part in shares:
        assert part.written == pytest.approx(100 * mix.roles[part.role], abs=0.05)
        assert part.plays == pytest.approx(100 * mix.parts[part.role], abs=0.05)


@pytest.mark.parametrize(
    ("lines", "starts"),
    [
        ([("cosmos-white", 9, "light")], "Flat: "),
        ([("scabious-plum", 9, "depth")], "Sombre: "),
    ],
    ids=["white alone", "plum alone"],
)
def test_a_finding_is_told_in_words_with_what_would_mend_it(
    lines: list[tuple[str, int, str]], starts: str
) -> None:
    findings = colour_view(CATALOGUE, look_of(*lines)).findings
    told = next(finding for finding in findings if finding.words.startswith(starts))
    assert told.advice
    assert all(words.startswith(("Add ", "Leave out ")) for words in told.advice)


def test_what_would_mend_it_is_of_the_week_of_the_build() -> None:
    spring = catalogue_of(demo(), "staff", WEEK_20)
    look = look_of(("scabious-plum", 9, "depth"))
    then, now = colour_view(spring, look), colour_view(CATALOGUE, look)
    assert (then.week, now.week) == ("week 20", "week 38")
    assert [f.words for f in then.findings] == [f.words for f in now.findings]
    assert [f.advice for f in then.findings] != [f.advice for f in now.findings]


def test_a_light_stem_that_is_dark_is_told_with_the_work_it_does() -> None:
    look = look_of(("cosmos-white", 9, "depth"), ("scabious-plum", 9, "light"))
    roles = colour_view(CATALOGUE, look).roles
    assert [words.rpartition(" It does ")[2] for words in roles] == [
        "the work of light.",
        "the work of depth.",
    ]


def test_a_look_without_stems_is_told_nothing_of() -> None:
    view = colour_view(CATALOGUE, look_of())
    assert not view.shares and not view.findings and not view.roles


def test_clients_have_no_field_for_findings() -> None:
    assert "colour" not in {field.name for field in fields(ClientRecipe)}
