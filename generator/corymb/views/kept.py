"""What the page of what a client kept can show: any look there is."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import ImagePair


@dataclass(frozen=True)
class KeptLook:
    """A look as it stands in the list, should it be kept."""

    id: str
    words: str  # 'Hedgerow jar, Later in the year'
    href: str
    image: ImagePair
    across: str
    price: str
    season: str


@dataclass(frozen=True)
class KeptView:
    """Every look that can be kept."""

    looks: tuple[KeptLook, ...]
