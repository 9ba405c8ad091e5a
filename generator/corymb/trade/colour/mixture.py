"""What do the colours of an arrangement come to, taken together?

From the area that each colour shows (`areas`): how light it is and how much that varies, how warm
and how cool, how far its hues lie apart, how it stands out from the cloth or wall behind, and how
much of it is depth, light and accent: by the roles that the recipe gives, and by what the colours
really do. Means are of CIELAB lightness over the area, not of mixed light.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from corymb.studio.models import ColourThresholds, Stem
from corymb.studio.words import ROLES
from corymb.trade.changes import LookLine
from corymb.trade.colour.areas import ColourArea, colour_areas
from corymb.trade.colour.ciede2000 import lab_of
from corymb.trade.colour.tally import (
    Backing,
    Measures,
    added,
    measures_of,
    oklch_of,
    tally_of_colour,
)

STRONG = 0.09
STRONGER = 1.6
"""A colour that is strong (chroma in OKLCh) and so many times stronger than its mix catches the
eye, whether it is light or dark. House values: common practice, no source."""


@dataclass(frozen=True)
class Mixture:
    """The colours of a look, measured."""

    areas: tuple[ColourArea, ...]
    measures: Measures
    roles: Mapping[str, float]
    """Share of the area by the roles the recipe gives, 0 to 1."""
    parts: Mapping[str, float]
    """Share of the area by what each colour really does in the mix."""


def backing_of(against: str | None, limits: ColourThresholds) -> Backing | None:
    """The cloth or wall (`#rrggbb`), with the distance at which colours are lost against it."""
    return None if against is None else Backing(against, limits.lost_within)


def mixture(
    lines: Sequence[LookLine], stems: Mapping[str, Stem], backing: Backing | None = None
) -> Mixture:
    """Of a look's lines. Raises ValueError when there are none."""
    areas = tuple(colour_areas(lines, stems))
    parts = [(tally_of_colour(area.hex, backing), area.share) for area in areas]
    measures = measures_of(added(parts), backing)
    played = [(part_played(area.hex, measures), area.share) for area in areas]
    return Mixture(
        areas,
        measures,
        roles=_by_role((area.role, area.share) for area in areas),
        parts=_by_role(played),
    )


def part_played(hex_: str, measures: Measures) -> str:
    """What a colour does in a mix: accent, light or depth, whatever it is called."""
    strength = oklch_of(hex_)[1]
    if strength >= STRONG and strength > STRONGER * measures.strength:
        return "accent"
    return "light" if lab_of(hex_)[0] > measures.lightness else "depth"


def _by_role(shares: Iterable[tuple[str, float]]) -> dict[str, float]:
    found = dict.fromkeys(ROLES, 0.0)
    for role, share in shares:
        found[role] += share
    return found
