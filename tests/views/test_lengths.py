"""Lengths are shown in centimetres, or in inches where the studio says so."""

from __future__ import annotations

from dataclasses import replace

import pytest

from corymb.studio.models import StudioFile
from corymb.studio.values.length import parse_length, parse_length_range
from corymb.views.compose.lengths import length_words, lengths_words
from corymb.views.compose.recipes import recipe_view
from corymb.views.compose.stems import stem_view
from tests.views.making import catalogue_of, demo


def house_in(unit: str) -> StudioFile:
    return demo().house.model_copy(update={"lengths_in": unit})


# Inches: the length by 2.54, to the half below twelve and whole from there on.
@pytest.mark.parametrize(
    ("written", "in_cm", "in_inches"),
    [
        ("9 cm", "9 cm", "3½ in"),  # 3.54
        ("20 cm", "20 cm", "8 in"),  # 7.87
        ("21 cm", "21 cm", "8½ in"),  # 8.27
        ("30 cm", "30 cm", "12 in"),  # 11.81
        ("90 cm", "90 cm", "35 in"),  # 35.43
        ("1.2 m", "120 cm", "47 in"),  # 47.24
        ("1200 cm", "1200 cm", "472 in"),
        ("8 in", "20.3 cm", "8 in"),
        ("1 cm", "1 cm", "½ in"),  # 0.39
        ("2 mm", "0.2 cm", "½ in"),  # 0.08, and never none
    ],
)
def test_a_length_is_shown_as_the_studio_shows_lengths(
    written: str, in_cm: str, in_inches: str
) -> None:
    length = parse_length(written)
    assert length_words(length, house_in("cm")) == length_words(length.cm, house_in("cm")) == in_cm
    assert length_words(length, house_in("inches")) == in_inches


@pytest.mark.parametrize(
    ("written", "in_cm", "in_inches"),
    [
        ("60-90 cm", "60-90 cm", "24-35 in"),
        ("75 cm", "75 cm", "30 in"),
        ("30-40 in", "76.2-101.6 cm", "30-40 in"),
        ("60-61 cm", "60-61 cm", "24 in"),  # 23.6 and 24.0
    ],
)
def test_a_range_of_lengths_names_its_unit_once(written: str, in_cm: str, in_inches: str) -> None:
    lengths = parse_length_range(written)
    assert lengths_words(lengths, house_in("cm")) == in_cm
    assert lengths_words(lengths, house_in("inches")) == in_inches


def test_a_studio_that_shows_inches_shows_no_centimetre_to_a_client() -> None:
    studio = replace(demo(), house=house_in("inches"))
    catalogue = catalogue_of(studio)
    recipe = recipe_view(catalogue, catalogue.looks["hedgerow-jar"][""])
    stem = stem_view(catalogue, catalogue.stem("dahlia-shell"))
    # 22 cm across and 26 high, in a jar of 9 by 12; the flower 9 cm, its stem 60 to 90.
    assert [fact.value for fact in recipe.facts[1:3]] == ["8½ in", "10 in"]
    assert recipe.vessel.endswith("3½ in across, 4½ in high")
    assert [fact.value for fact in stem.facts[:2]] == ["3½ in", "24-35 in"]
    assert [size.across.endswith(" in") for size in recipe.sizes] == [True] * len(recipe.sizes)
