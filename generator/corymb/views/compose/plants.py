"""How is a plant called in a sentence? `white cosmos` for `Cosmos, white`; lists keep its name."""

from __future__ import annotations

from collections.abc import Sequence

from corymb.language import ngettext
from corymb.language.locales import and_list, locale_spoken
from corymb.language.speaking import ENGLISH
from corymb.studio.models import Stem
from corymb.views.compose.catalogue import Catalogue

NAMED = 3  # more stems than this are only counted: our own choice, no source

BEHIND = ("in", "on", "with", "from", "for", "of")
"""Words that begin what is said after the plant: `ivy in berry`."""

AFTER_SOMEBODY = (
    "African",
    "American",
    "Bells",
    "Canterbury",
    "Chinese",
    "Christmas",
    "English",
    "Iceland",
    "Jacob's",
    "Japanese",
    "Jerusalem",
    "Lenten",
    "Michaelmas",
    "New",
    "Queen",
    "Scots",
    "Solomon's",
    "Spanish",
    "St",
    "Welsh",
)
"""First words that keep their capital, as named after people, places and days."""


def plant_words(stem: Stem) -> str:
    """A plant as one would say it: what follows the comma goes before it.

    A name of its own behind the comma, with a capital, stays where it is. Only English lets one do
    this by rule: elsewhere the name stays as it is written, `Dahlie (weiß)`.
    """
    plant, comma, kind = stem.name.partition(", ")
    if locale_spoken().language != ENGLISH:
        return f"{plant} ({kind})" if comma else plant
    if kind[:1].isupper():
        return stem.name
    if not comma:
        return _small(plant)
    if kind.split()[0] in BEHIND:
        return f"{_small(plant)} {kind}"
    return f"{kind} {_small(plant)}"


def names_of(catalogue: Catalogue, stems: Sequence[str]) -> str:
    """`shell dahlia, white cosmos and 4 more`."""
    names = [plant_words(catalogue.stem(stem)) for stem in stems]
    if len(names) > NAMED + 1:
        more = len(names) - NAMED
        # L10N: what a list of stems ends with: shell dahlia, white cosmos and 4 more.
        names[NAMED:] = [ngettext("{number} more", "{number} more", more).format(number=more)]
    return and_list(names)


def _small(plant: str) -> str:
    if plant.split()[0] in AFTER_SOMEBODY:
        return plant
    return plant[:1].lower() + plant[1:]
