"""A small studio whose book dates hold good as they are, for what is asked of a whole year."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from corymb.studio.load import read_studio
from corymb.studio.models import Recipe, Stem, StudioFile, Style
from corymb.studio.studio import Studio
from corymb.trade.looks import Look, looks_of
from tests import conftest

POSY = {
    "name": "Posy",
    "plural": "Posies",
    "about": "Small and rounded.",
    "place": "table with food",
    "stem length": "12-30 cm",
    "heaviest stem": "30 g",
    "excludes": ["poisonous if eaten"],
}


def style(known_as: str = "posy") -> Style:
    """A style for a table with food."""
    return Style.model_validate(POSY).with_id(known_as)


@cache
def _demo_house() -> StudioFile:
    read, _ = read_studio(conftest.STUDIO)
    assert read
    return read.house


def small_studio(*things: Stem | Recipe) -> Studio:
    """A studio of posies with these stems and recipes, at the place of its book dates."""
    house = _demo_house()
    at_home = {"reference_place": house.place, "styles": {"posy": style()}}
    return Studio(
        Path("content"),
        house.model_copy(update=at_home),
        stems={each.id: each for each in things if isinstance(each, Stem)},
        recipes={each.id: each for each in things if isinstance(each, Recipe)},
    )


def all_looks(studio: Studio) -> dict[str, dict[str, Look]]:
    """The looks of every recipe, by recipe and variant."""
    return {known_as: looks_of(each, studio.recipes) for known_as, each in studio.recipes.items()}
