"""The word for a colour against the names that were agreed on for colours long ago.

Source: K. L. Kelly, D. B. Judd, Color: Universal Language and Dictionary of Names, National Bureau
of Standards Special Publication 440, 1976: the middles of the named regions, in sRGB as another
library has them (Color::Library). Only names of one colour are taken. Our families are wider: what
is dark of red or purple may be plum, what is pale may be grey.
"""

from __future__ import annotations

import pytest

from corymb.trade.colour.words import colour_word

CENTROIDS = {
    "blue": {
        "deep blue": "#00416a",
        "light blue": "#70a3cc",
        "pale blue": "#91a3b0",
        "strong blue": "#0067a5",
        "very pale blue": "#bcd4e6",
        "vivid blue": "#00a1c2",
    },
    "brown": {
        "dark brown": "#422518",
        "deep brown": "#593319",
        "light brown": "#a67b5b",
    },
    "green": {
        "brilliant green": "#3eb489",
        "moderate green": "#3b7861",
        "pale green": "#8da399",
        "strong green": "#007959",
        "very dark green": "#1c352d",
        "very pale green": "#c7e6d7",
    },
    "grey": {
        "dark grey": "#555555",
        "light grey": "#b9b8b5",
        "medium grey": "#848482",
    },
    "orange": {
        "deep orange": "#be6516",
        "light orange": "#fab57f",
        "moderate orange": "#d99058",
        "vivid orange": "#f38400",
    },
    "pink": {
        "dark pink": "#c08081",
        "deep pink": "#e4717a",
        "light pink": "#f9ccca",
        "moderate pink": "#dea5a4",
    },
    "purple": {
        "brilliant purple": "#d399e6",
        "dark purple": "#563c5c",
        "dark violet": "#2f2140",
        "deep purple": "#602f6b",
        "light violet": "#8c82b6",
        "pale purple": "#aa98a9",
        "strong purple": "#875692",
        "strong violet": "#604e97",
        "very light purple": "#d5badb",
        "very light violet": "#dcd0ff",
        "vivid purple": "#9a4eae",
    },
    "red": {
        "dark red": "#722f37",
        "deep red": "#841b2d",
        "moderate red": "#ab4e52",
        "vivid red": "#be0032",
    },
    "yellow": {
        "brilliant yellow": "#fada5e",
        "deep yellow": "#af8d13",
        "light yellow": "#f8de7e",
        "moderate yellow": "#c9ae5d",
        "pale yellow": "#f3e5ab",
        "vivid yellow": "#f3c300",
    },
}
MAY_BE = {"dark": "plum", "deep": "plum", "pale": "grey"}

NAMED = {name: (hex_, family) for family, its in CENTROIDS.items() for name, hex_ in its.items()}


@pytest.mark.parametrize(("name", "hex_", "family"), [(n, *told) for n, told in NAMED.items()])
def test_a_colour_with_an_agreed_name_is_found_by_its_word(
    name: str, hex_: str, family: str
) -> None:
    word = colour_word(hex_)
    assert word == family or word in [MAY_BE.get(part) for part in name.split()]
