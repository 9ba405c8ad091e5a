"""The colour band: each role's colours and how much of what is seen they take."""

from __future__ import annotations

from collections import defaultdict

from corymb.ledger import kept
from corymb.studio.words import ROLES
from corymb.trade.colour.areas import ColourArea, colour_areas
from corymb.trade.colour.words import WORDS, colour_word
from corymb.trade.looks import Look
from corymb.views.compose.catalogue import Catalogue
from corymb.views.pieces import Patch, RoleShare

NOTICED = 0.06  # a smaller share doesn't make an arrangement be called by that colour


@kept
def band_of(catalogue: Catalogue, look: Look) -> tuple[RoleShare, ...]:
    """Depth, light and accent in this order, each with its patches from large to small."""
    areas = colour_areas(look.lines, catalogue.studio.stems)
    return tuple(
        _role_share(role, [area for area in areas if area.role == role])
        for role in ROLES
        if any(area.role == role for area in areas)
    )


def _role_share(role: str, areas: list[ColourArea]) -> RoleShare:
    shares: dict[tuple[str, str], float] = defaultdict(float)
    for area in areas:
        shares[area.name, area.hex] += area.share
    patches = [
        Patch(name, hex_, round(100 * share, 2))
        for (name, hex_), share in sorted(shares.items(), key=lambda item: (-item[1], item[0]))
    ]
    return RoleShare(role, round(100 * sum(a.share for a in areas), 1), tuple(patches))


@kept
def words_of(catalogue: Catalogue, look: Look) -> tuple[str, ...]:
    """The plain colour words a look would be looked for by, in the order of the rainbow."""
    shares: dict[str, float] = defaultdict(float)
    for area in colour_areas(look.lines, catalogue.studio.stems):
        shares[colour_word(area.hex)] += area.share
    return tuple(word for word in WORDS if shares[word] >= NOTICED)
