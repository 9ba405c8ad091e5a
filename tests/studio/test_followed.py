"""A studio that is edited is followed in all its parts."""

from __future__ import annotations

from dataclasses import fields, replace
from pathlib import Path

import pytest

import corymb
from corymb.ledger import Ledger
from corymb.studio.followed import SHELVES, become, followed
from corymb.studio.load import read_studio
from corymb.studio.studio import Studio

STARTER = Path(corymb.__file__).parent / "starter" / "content"
OF_ITSELF = {"folder", "ledger", "known_as"}
BESIDE = {
    "house": lambda studio: studio.house.model_copy(update={"name": "Another"}),
    "heard_of": lambda studio: {"recipe": frozenset({"lost"})},
    "stems_are_lost": lambda studio: True,
}


@pytest.fixture(scope="module")
def starter() -> Studio:
    studio, _ = read_studio(STARTER)
    assert studio is not None
    return studio


def test_each_part_of_a_studio_is_on_a_shelf_or_has_all_worked_out_anew() -> None:
    assert {part.name for part in fields(Studio)} == {*SHELVES, *BESIDE, *OF_ITSELF}


@pytest.mark.parametrize("part", BESIDE)
def test_what_no_shelf_holds_has_all_worked_out_anew(part: str, starter: Studio) -> None:
    own = followed(starter, Ledger(follows=True))
    assert become(own, starter)
    assert not become(own, replace(starter, **{part: BESIDE[part](starter)}))


def test_what_is_gone_from_the_files_is_gone_from_its_shelf(starter: Studio) -> None:
    own = followed(starter, Ledger(follows=True))
    kept = dict(list(starter.recipes.items())[1:])
    assert become(own, replace(starter, recipes=kept))
    assert dict(own.recipes) == kept != starter.recipes
