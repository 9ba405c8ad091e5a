"""A studio that stays the same object while its files change, and knows what has."""

from __future__ import annotations

from typing import cast

from corymb.ledger import Followed, Ledger
from corymb.studio.studio import Studio

SHELVES = (
    *("stems", "groups", "recipes", "made", "orders", "standing_orders", "walks", "logs"),
    *("links", "pages", "techniques", "sources"),
)
"""What a studio holds by name."""


def followed(studio: Studio, ledger: Ledger) -> Studio:
    """The same studio, its shelves followed by a ledger."""
    own = Studio(studio.folder, studio.house)
    own.heard_of, own.stems_are_lost = studio.heard_of, studio.stems_are_lost
    own.ledger = ledger
    for shelf in SHELVES:
        setattr(own, shelf, Followed(ledger, shelf))
    become(own, studio)
    return own


def become(own: Studio, studio: Studio) -> bool:
    """Put what was read anew on the shelves; False where all has to be worked out anew.

    That is so when what no shelf holds has changed, such as the studio's own file.
    """
    beside = (own.house, own.heard_of, own.stems_are_lost)
    if beside != (studio.house, studio.heard_of, studio.stems_are_lost):
        return False
    for shelf in SHELVES:
        cast("Followed[object, object]", getattr(own, shelf)).become(getattr(studio, shelf))
    return True
