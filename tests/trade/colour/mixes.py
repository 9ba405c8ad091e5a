"""Made-up stems and looks for the tests of mixes: plain colours in heads of one size."""

from __future__ import annotations

from functools import cache

from corymb.studio.load import read_studio
from corymb.studio.models import ColourThresholds, Stem
from corymb.studio.studio import Studio
from corymb.trade.changes import LookLine
from corymb.trade.colour.advice import Piece
from corymb.trade.looks import Look, looks_of
from corymb.trade.season.makeable import Makeable
from tests import conftest
from tests.trade.making import stem, style
from tests.trade.swaps.making import line

HOUSE = ColourThresholds()

COLOURS = {
    "white": "ffffff",
    "cream": "f6ecd2",
    "shell": "e8c2b4",
    "apricot": "e3a46c",
    "crimson": "b01e3c",
    "plum": "3f1d33",
    "black-plum": "2b1626",
    "navy": "1f2a55",
    "cornflower": "4a63c0",
    "ice-blue": "c6d6ea",
    "mid-grey": "777777",
    "moss": "5d7350",
    "lime": "b7c94f",
}


@cache
def bed() -> dict[str, Stem]:
    """A stem of each colour that stands all year, one that stands in June alone, a thorny one."""
    stems = {
        name: stem(
            name,
            name=name.capitalize(),
            colours=[f"{hex_} 100 %"],
            in_season="all year",
            head="4 cm",
        )
        for name, hex_ in COLOURS.items()
    }
    june = stem("june-scarlet", name="June scarlet", colours=["c8102e 100 %"], in_season="June")
    thorny = stem(
        "thorny-gold",
        name="Thorny gold",
        colours=["ffd700 100 %"],
        in_season="all year",
        hazards=["thorns"],
    )
    return stems | {each.id: each for each in (june, thorny)}


def look(*lines: str) -> tuple[LookLine, ...]:
    """Lines as a recipe has them: `5 white, light`; `!` at the end makes one essential."""
    made = []
    for text in lines:
        count, _, rest = text.partition(" ")
        stem_id, _, role = rest.rstrip("!").partition(", ")
        made.append(line(int(count), stem_id, role or "depth", essential=text.endswith("!")))
    return tuple(made)


def piece(*lines: str, week: int = 45, against: str | None = None) -> Piece:
    return Piece(look(*lines), style(), week, against)


@cache
def demo() -> tuple[Studio, Makeable]:
    """The demo studio and its year."""
    studio, _ = read_studio(conftest.STUDIO)
    assert studio
    return studio, Makeable.of(studio)


@cache
def demo_looks() -> dict[str, Look]:
    """Every look of the demo studio, by id."""
    studio, _ = demo()
    return {
        each.id: each
        for recipe in studio.recipes.values()
        for each in looks_of(recipe, studio.recipes).values()
    }
