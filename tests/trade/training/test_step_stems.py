"""Does a step show the stems that it speaks of, and no others?"""

from __future__ import annotations

import pytest

from corymb.trade.training.step_stems import stems_in

DAHLIAS = {"shell": "Dahlia, shell", "garnet": "Dahlia, garnet"}
ROSES = {"rose": "Rose, cream", "hips": "Rose hips"}
SCABIOUS = {"white": "Scabious, white", "plum": "Scabious, plum"}


@pytest.mark.parametrize(
    ("step", "stems", "found"),
    [
        ("Add the dahlias by turns.", DAHLIAS, ("shell", "garnet")),
        ("Drop the garnet dahlias in lower.", DAHLIAS, ("garnet",)),
        ("Put a shell dahlia in front, the garnet ones behind.", DAHLIAS, ("shell", "garnet")),
        ("Turn the jar once round.", DAHLIAS, ()),
        ("Set both scabious between them.", SCABIOUS, ("white", "plum")),
        ("Start with two cream roses.", ROSES, ("rose",)),
        ("Let the rose hips hang.", ROSES, ("hips",)),
        ("Lay the mint across the spout.", {"mint": "Apple mint", "dill": "Dill"}, ("mint",)),
        ("Two dogwood at the back.", {"dogwood": "Dogwood stems, red"}, ("dogwood",)),
        ("No bush stands higher.", {"smoke": "Smoke bush"}, ()),
    ],
    ids=[
        "a plant in all its colours",
        "a colour of it",
        "two colours, one without its plant",
        "no plant",
        "both by the plant's name",
        "roses, and not their hips",
        "hips, and not the roses",
        "by the last word of its name",
        "without the part that is cut",
        "a word that means something else",
    ],
)
def test_a_step_speaks_of(step: str, stems: dict[str, str], found: tuple[str, ...]) -> None:
    assert stems_in(step, stems) == found
