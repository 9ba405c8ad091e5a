"""How a plant is called in a sentence."""

from __future__ import annotations

import pytest

from corymb.views.compose.plants import names_of, plant_words
from tests.trade.making import stem
from tests.views.making import catalogue_of, demo

WORDS = {
    "Cosmos, white": "white cosmos",
    "Holly, red-berried": "red-berried holly",
    "Garden rose, dusty pink": "dusty pink garden rose",
    "Ivy, in berry": "ivy in berry",
    "Blackberry, in green fruit": "blackberry in green fruit",
    "Iceland poppy, apricot": "apricot Iceland poppy",
    "St John's wort berries, coral": "coral St John's wort berries",
    "Sweet William, wine": "wine sweet William",
    "Lady's mantle": "lady's mantle",
    "Tulip, Rector": "Tulip, Rector",
}


@pytest.mark.parametrize("name", WORDS)
def test_what_follows_the_comma_is_said_before_the_plant(name: str) -> None:
    assert plant_words(stem("plant", name=name)) == WORDS[name]


@pytest.mark.parametrize(
    ("count", "words"),
    [
        (0, ""),
        (1, "shell dahlia"),
        (2, "shell dahlia and white cosmos"),
        (4, "shell dahlia, white cosmos, wine burnet and violet tall verbena"),
        (5, "shell dahlia, white cosmos, wine burnet and 2 more"),
    ],
)
def test_many_plants_are_named_in_part_and_the_rest_counted(count: int, words: str) -> None:
    stems = ["dahlia-shell", "cosmos-white", "burnet-wine", "tall-verbena", "zinnia-coral"]
    assert names_of(catalogue_of(demo()), stems[:count]) == words
