"""A small studio whose book dates hold good as they are, for what is asked of a whole year."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from corymb.studio.load import read_studio
from corymb.studio.models import Recipe, Stem, StudioFile
from corymb.studio.studio import Studio
from corymb.trade.looks import Look, looks_of
from tests import conftest
from tests.trade.making import style


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
