"""Which arrangements go with each other: the same flowers, the same colours, the same weeks?

Two go together the better the more of what is seen they have in common, and the nearer their
colours are; a piece of another style completes, one of the same only repeats. Numbers are house
values: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from heapq import nsmallest
from math import dist

from corymb.studio.models import Stem
from corymb.trade.colour.areas import colour_areas, line_shares
from corymb.trade.colour.ciede2000 import Lab
from corymb.trade.colour.likeness import Palette, apart, mean_lab, palette
from corymb.trade.looks import Look

NOTHING_SHARED = 20.0
"""No stem in common counts as much as this distance of colours (CIEDE2000)."""

SAME_STYLE = 5.0
"""So does being of the same style."""

FURTHEST = 35.0
"""Beyond this score two arrangements don't go together."""

COMMON_WEEKS = 3
"""They can be made in at least so many of the same weeks, or in all that one of them has."""

MOST = 3
"""So many are named for each: a page shows a row of them."""

LOOKED_AT = 24
"""Colours are compared with so many only, those that stems and mean colour bring forward."""


@dataclass(frozen=True)
class Kin:
    """An arrangement that goes with another."""

    recipe: str
    shared: tuple[str, ...]
    """Stems in both, by id, the one most seen first."""
    palette: float
    """How far apart their colours are (CIEDE2000)."""
    score: float
    """Lower is better."""


@dataclass(frozen=True)
class Seen:
    """What is seen of one look, and when."""

    recipe: str
    style: str
    shares: Mapping[str, float]
    palette: Palette
    mean: Lab
    cells: int
    """The weeks in which it can be made, as bits of a number."""


class Kinship:
    """What goes with what, of everything that is seen; `seen` is by id."""

    def __init__(self, seen: Mapping[str, Seen]) -> None:
        self._seen = {known_as: seen[known_as] for known_as in sorted(seen)}
        self._holders = _holders(self._seen)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Kinship) and self._seen == other._seen

    __hash__ = None  # type: ignore[assignment]

    def of(self, known_as: str) -> tuple[Kin, ...]:
        """The other recipes that go with one, best first, ties by id."""
        return _kin_of(known_as, self._seen, self._holders)


def seen_of(look: Look, stems: Mapping[str, Stem], weeks: Iterable[int], style: str) -> Seen:
    """What is seen of a look of that style, and in which weeks."""
    shares: dict[str, float] = {}
    for line, share in zip(look.lines, line_shares(look.lines, stems), strict=True):
        shares[line.stem] = shares.get(line.stem, 0.0) + share
    colours = palette((area.hex, area.share) for area in colour_areas(look.lines, stems))
    bits = sum(1 << week for week in weeks)
    return Seen(look.recipe, style, shares, colours, mean_lab(colours), bits)


def _holders(seen: Mapping[str, Seen]) -> dict[str, list[str]]:
    """By stem, the looks that hold it."""
    holders: dict[str, list[str]] = {}
    for look_id, each in seen.items():
        for stem in each.shares:
            holders.setdefault(stem, []).append(look_id)
    return holders


def _kin_of(
    look_id: str, seen: Mapping[str, Seen], holders: Mapping[str, list[str]]
) -> tuple[Kin, ...]:
    own = seen[look_id]
    common = _in_common(own, seen, holders)
    likely = nsmallest(
        LOOKED_AT,
        (
            (
                _strangeness(own, other, common.get(other_id, 0.0)) + dist(own.mean, other.mean),
                other_id,
            )
            for other_id, other in seen.items()
            if other.recipe != own.recipe and _same_time(own.cells, other.cells)
        ),
    )
    kin = [_kin(own, seen[other_id], common.get(other_id, 0.0)) for _, other_id in likely]
    near = [each for each in kin if each.score <= FURTHEST]
    return tuple(sorted(near, key=lambda each: (each.score, each.recipe))[:MOST])


def _in_common(
    own: Seen, seen: Mapping[str, Seen], holders: Mapping[str, list[str]]
) -> dict[str, float]:
    """By look, the part of what is seen that it has in common."""
    common: dict[str, float] = {}
    for stem, share in own.shares.items():
        for other_id in holders[stem]:
            both = min(share, seen[other_id].shares[stem])
            common[other_id] = common.get(other_id, 0.0) + both
    return common


def _same_time(own: int, other: int) -> bool:
    needed = min(COMMON_WEEKS, own.bit_count(), other.bit_count())
    return needed > 0 and (own & other).bit_count() >= needed


def _strangeness(own: Seen, other: Seen, common: float) -> float:
    same_style = SAME_STYLE if own.style == other.style else 0.0
    return NOTHING_SHARED * (1 - common) + same_style


def _kin(own: Seen, other: Seen, common: float) -> Kin:
    both = {stem: min(share, other.shares.get(stem, 0.0)) for stem, share in own.shares.items()}
    shared = sorted((stem for stem in both if both[stem] > 0), key=lambda s: (-both[s], s))
    colours = apart(own.palette, other.palette)
    score = round(colours + _strangeness(own, other, common), 6)
    return Kin(other.recipe, tuple(shared), colours, score)
