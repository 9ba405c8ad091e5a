"""What do the colours of an arrangement come to, taken together?

From the area that each colour shows (`areas`): how light it is and how much that varies, how warm
and how cool, how far its hues lie apart, how it stands out from the cloth or wall behind, and how
much of it is depth, light and accent: by the roles that the recipe gives, and to the eye (`parts`).
Means are of CIELAB lightness over the area, not of mixed light.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from corymb.studio.models import ColourThresholds, Stem
from corymb.studio.words import ROLES
from corymb.trade.changes import LookLine
from corymb.trade.colour.areas import ColourArea, colour_areas, line_shares
from corymb.trade.colour.ciede2000 import lab_of
from corymb.trade.colour.parts import part_as_called
from corymb.trade.colour.tally import (
    Backing,
    Measures,
    added,
    measures_of,
    tally_of_colour,
)

HOUSE = ColourThresholds()
"""Where a studio says nothing else."""


@dataclass(frozen=True)
class Mixture:
    """The colours of a look, measured."""

    areas: tuple[ColourArea, ...]
    measures: Measures
    roles: Mapping[str, float]
    """Share of the area by the roles the recipe gives, 0 to 1."""
    parts: Mapping[str, float]
    """Share of the area by the part that each colour plays to the eye."""


def backing_of(against: str | None, limits: ColourThresholds) -> Backing | None:
    """The cloth or wall (`#rrggbb`), with the distance at which colours are lost against it."""
    return None if against is None else Backing(against, limits.lost_within)


def mixture(
    lines: Sequence[LookLine],
    stems: Mapping[str, Stem],
    backing: Backing | None = None,
    limits: ColourThresholds = HOUSE,
) -> Mixture:
    """Of a look's lines. Raises ValueError when there are none."""
    areas = tuple(colour_areas(lines, stems))
    parts = [(tally_of_colour(area.hex, backing), area.share) for area in areas]
    measures = measures_of(added(parts), backing)
    return Mixture(
        areas,
        measures,
        roles=_by_role((area.role, area.share) for area in areas),
        parts=_by_role(_played(lines, stems, measures, limits)),
    )


def _played(
    lines: Sequence[LookLine],
    stems: Mapping[str, Stem],
    measures: Measures,
    limits: ColourThresholds,
) -> Iterator[tuple[str, float]]:
    """The part that each colour of each line plays, with its share of the whole."""
    for line, whole in zip(lines, line_shares(lines, stems), strict=True):
        for colour in stems[line.stem].colours:
            part = part_as_called(line.role, lab_of(colour.hex)[0], whole, measures, limits)
            yield part, whole * float(colour.share or 0)


def _by_role(shares: Iterable[tuple[str, float]]) -> dict[str, float]:
    found = dict.fromkeys(ROLES, 0.0)
    for role, share in shares:
        found[role] += share
    return found
