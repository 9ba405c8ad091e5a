"""What an order's page shows of what really happened. For staff alone."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Link


@dataclass(frozen=True)
class RealityRow:
    """A stem, or the time: what the recipes asked for, what it took, and how far apart they are."""

    words: str
    href: str  # the stem's page; '' for the time
    asked: str
    took: str
    difference: str  # '4 more', 'as asked', 'stood in'


@dataclass(frozen=True)
class ProposalView:
    """What a recipe should look at again, and what speaks for it."""

    recipe: Link
    words: str  # '5 Dahlia, plum, not 4'
    why: str  # '19 went in where 15 were asked'
    shared: str  # 'shared with Plum button', or ''


@dataclass(frozen=True)
class RealityView:
    """An order's recipes against reality."""

    rows: tuple[RealityRow, ...]
    not_counted: str  # 'Ninebark, plum; Geum, ember', or ''
    proposals: tuple[ProposalView, ...]
