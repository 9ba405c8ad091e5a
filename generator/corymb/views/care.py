"""What a care card says, the small card that goes with flowers when they leave."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.papers import PaperHead
from corymb.views.pieces import Link, PictureView

MUCH, VERY_MUCH = 420, 720
"""Letters on a card from which it is set smaller, and smaller again: tried on a quarter of A4."""


@dataclass(frozen=True)
class CareCard:
    """One piece: what is in it, how it is kept, what to be careful of."""

    name: str
    when: str  # 'Saturday 19 September 2026', or '' where it goes with no order
    picture: PictureView
    holds: str  # 'Dahlia, cosmos and apple mint'
    care: str
    lasts: str  # 'The first of it fades after 5-7 days; ...' or ''
    cautions: tuple[str, ...]
    not_known: str  # that what isn't warned of isn't known to be safe

    @property
    def crowded(self) -> bool:
        """Whether there is so much to say that it is set smaller."""
        return self._letters > MUCH

    @property
    def full(self) -> bool:
        """Whether there is so much that it is set as small as can be read."""
        return self._letters > VERY_MUCH

    @property
    def _letters(self) -> int:
        said = (self.name, self.holds, self.care, self.lasts, *self.cautions, self.not_known)
        return sum(map(len, said))


@dataclass(frozen=True)
class CareSheet:
    """So many cards as a side of A4 holds; `anchor` is the look's where all are of one."""

    anchor: str
    name: str
    cards: tuple[CareCard, ...]


@dataclass(frozen=True)
class CareCardsView:
    """The cards of an order, or of every look of a style."""

    head: PaperHead | None
    order: Link | None
    about: str
    sheets: tuple[CareSheet, ...]
