"""What pages show of colours beyond the band, for staff: findings, and what would mend them."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class PartShare:
    """How much of what is seen has a role in the recipe, and how much plays it to the eye."""

    role: str
    written: float  # percent
    plays: float


@dataclass(frozen=True)
class FindingView:
    """Something to say about a mix, with whole changes that mend it in the week of the build."""

    words: str
    advice: tuple[str, ...]


@dataclass(frozen=True)
class ColourView:
    """What the colours of a look come to."""

    shares: tuple[PartShare, ...]
    roles: tuple[str, ...]  # lines whose colour does something else than their role says
    findings: tuple[FindingView, ...]
    week: str  # 'week 38', for which the advice holds
