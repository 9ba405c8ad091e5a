"""Which stems of the studio are nearest to a colour, and what would a first recipe of some be?

A beginning, not a recipe: heads are counted by how much of what is seen they take, and each
colour's role is proposed by what it does beside the others.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from corymb.studio.models import Stem
from corymb.trade.apportion import apportion
from corymb.trade.colour.areas import visible_area
from corymb.trade.colour.likeness import Palette, apart, palette_of
from corymb.trade.colour.mixture import HOUSE
from corymb.trade.colour.parts import part_played
from corymb.trade.colour.tally import added, measures_of, tally_of_colour
from corymb.trade.season.weeks import WEEKS

ANOTHER_COLOUR = 20.0
"""From this far (CIEDE2000) a stem is of another colour: common practice, no source."""

FINELY = 1000
"""Weights are told to a thousandth, so that counts are the same on every machine."""


@dataclass(frozen=True)
class Near:
    """A stem, and how far its heads are from a colour (CIEDE2000)."""

    stem: str
    distance: float


@dataclass(frozen=True)
class FirstLine:
    """A line of a first recipe."""

    count: int
    stem: str
    role: str


@dataclass(frozen=True)
class FirstRecipe:
    """What to begin with, and the week (1 to 52) in which all of it stands."""

    week: int
    lines: tuple[FirstLine, ...]


def nearest_stems(hex_: str, stems: Mapping[str, Stem]) -> list[Near]:
    """The stems that come near a colour (`#rrggbb`) with all their heads show, nearest first."""
    found = [
        Near(stem_id, apart(palette_of(stem), ((hex_, 1.0),))) for stem_id, stem in stems.items()
    ]
    near = [each for each in found if each.distance < ANOTHER_COLOUR]
    return sorted(near, key=lambda each: (each.distance, each.stem))


def first_recipe(
    colours: Palette, stems: Mapping[str, Stem], count: int, weeks: Mapping[str, frozenset[int]]
) -> FirstRecipe:
    """So many stems that show about such colours, each colour by the stem nearest to it.

    `weeks` are those in which each stem stands. The largest lines come first; a stem that would
    come to less than one is left out, and so is a colour that no stem comes near.
    """
    near = {hex_: nearest_stems(hex_, stems) for hex_, _ in colours}

    def standing(hex_: str, week: int) -> Near | None:
        return next((each for each in near[hex_] if week in weeks[each.stem]), None)

    def apart_in(week: int) -> float:
        found = [(share, standing(hex_, week)) for hex_, share in colours]
        return sum(share * (each.distance if each else ANOTHER_COLOUR) for share, each in found)

    week = min(WEEKS, key=lambda each: (round(apart_in(each), 6), each))
    chosen = {hex_: found.stem for hex_, _ in colours if (found := standing(hex_, week))}
    return FirstRecipe(week, tuple(_lines(colours, stems, count, chosen)))


def _lines(
    colours: Palette, stems: Mapping[str, Stem], count: int, chosen: Mapping[str, str]
) -> list[FirstLine]:
    if not chosen:
        return []
    measures = measures_of(added((tally_of_colour(h, None), share) for h, share in colours), None)
    roles: dict[str, str] = {}
    weights: dict[str, float] = {}
    for hex_, share in colours:  # the largest first: it decides the role of a stem chosen twice
        if stem := chosen.get(hex_):
            roles.setdefault(stem, part_played(hex_, share, measures, HOUSE))
            weights[stem] = weights.get(stem, 0.0) + share / visible_area(stems[stem])
    most = max(weights.values())
    parts = apportion(count, [round(FINELY * weight / most) for weight in weights.values()])
    lines = [FirstLine(n, stem, roles[stem]) for stem, n in zip(weights, parts, strict=True) if n]
    return sorted(lines, key=lambda line: (-line.count, line.stem))
