"""What does a page say that asks for the passphrase? Whose site it is, and no more."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class LockedView:
    """The door of a locked site."""

    studio: str
