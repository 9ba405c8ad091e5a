"""The answer: what to cut and buy, what goes into which order, and what is missing.

Plain values, all whole stems, sorted by name.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal


@dataclass(frozen=True)
class Cut:
    """One stem: cut and bought, and where it went. `cut + bought == used + spare + left`."""

    stem: str
    cut: int
    step: int
    """The number the cut is a multiple of."""
    bought: int
    used: int
    """For what is wanted, its own or as a stand-in."""
    spare: int
    left: int
    """In the bucket, for no order."""
    left_standing: int

    @property
    def steps(self) -> int:
        """How many steps are cut."""
        return self.cut // self.step


@dataclass(frozen=True)
class Fill:
    """So many stems (`count`, of which some bought) do for so many that are wanted (`of`)."""

    stem: str
    count: int
    of: int
    bought: int = 0
    drift: float = 0.0
    """How far the colour is from the wanted one's (CIEDE2000); 0 for the stem itself."""
    why: tuple[str, ...] = ()


@dataclass(frozen=True)
class Filled:
    """How one wanted stem of an order is met: `met + short == count`."""

    key: str
    order: str
    stem: str
    count: int
    essential: bool
    fills: tuple[Fill, ...]
    short: int
    spare: tuple[Fill, ...] = ()
    """What goes along against breakage: the stem itself, from the garden."""
    spare_missed: int = 0

    @property
    def met(self) -> int:
        """How many of those wanted are met, by itself or by stand-ins."""
        return sum(fill.of for fill in self.fills)


@dataclass(frozen=True)
class Parts:
    """What the plan was judged by, the first first, and what it costs."""

    short: int
    """Stems missing, each once."""
    short_weighed: int
    """The same, an essential one counted as many times as it weighs."""
    spare_missed: int
    bought_cost: Decimal
    drift: Decimal
    """CIEDE2000, added up over the wanted stems that stand-ins do for."""
    waste: int
    """Stems cut that no order takes."""
    weighed: Decimal
    """Bought-in cost, drift and waste by the studio's weights, in money."""
    grown_cost: Decimal
    """What the stems cut have cost to grow; told, not judged by."""


@dataclass(frozen=True)
class CutPlan:
    """What to cut and for whom, and whether anything could be better."""

    cuts: tuple[Cut, ...]
    filled: tuple[Filled, ...]
    parts: Parts
    proven: bool
    """That no plan is short of less, or misses less spare, and that none of those is better by
    more than the settings call close. It is the very best where the gap is 0.
    """
    gap: float
    """How much better another might be at most, as a share of what is judged."""
    seconds: float = field(default=0.0, compare=False)

    @property
    def short(self) -> dict[str, int]:
        """How many are missing, by the key of what is wanted."""
        return {each.key: each.short for each in self.filled if each.short}
