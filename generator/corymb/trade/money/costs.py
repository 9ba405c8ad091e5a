"""What does it cost the studio to make a piece, or a whole order?

    cost     = stems + waste + sundries + labour + overhead
    stems    = each stem's count x its cost, grown or bought
    waste    = stems / (1 - waste share) - stems
    labour   = minutes x hourly rate / 60
    overhead = overhead share x (stems + waste + sundries + labour)

*Waste* is a share of what is cut: where 8 of 100 never reach a piece, the 92 that do carry the
cost of the 100. Bought stems break and go over as well, so they carry it too (house rule).

*Sundries* come once for each piece. In another size, what is measured (twine, ribbon, wire)
takes as many times more or less as the flowers; what is counted (a jar, a pin, a ball of
netting) stays as many, for a small piece needs its vessel too (house rule).

Every head is rounded half up to the smallest coin, each stem by itself, and the total is the sum
of what is shown, so that a reader can add it up.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from decimal import Decimal

from corymb.trade.money.rounding import CENTS, half_up

MINUTES_IN_AN_HOUR = 60
NOTHING = Decimal(0)


@dataclass(frozen=True)
class StemsOf:
    """So many of one stem, what one of them costs, and whether they are bought in."""

    stem: str
    count: int
    each: Decimal
    bought: bool = False

    def cost(self, places: int = CENTS) -> Decimal:
        """What all of them cost."""
        return half_up(self.count * self.each, places)


@dataclass(frozen=True)
class SundryOf:
    """Something beside stems: what all of it costs, and whether it is measured or counted."""

    name: str
    cost: Decimal
    measured: bool = False

    def in_size(self, scale: Decimal) -> SundryOf:
        """For a piece `scale` times as large."""
        return replace(self, cost=self.cost * scale) if self.measured else self


@dataclass(frozen=True)
class Needs:
    """All that goes into a piece or an order."""

    stems: tuple[StemsOf, ...] = ()
    sundries: tuple[SundryOf, ...] = ()
    minutes: Decimal = NOTHING

    def times(self, quantity: int) -> Needs:
        """For so many pieces alike."""
        return Needs(
            tuple(replace(stem, count=stem.count * quantity) for stem in self.stems),
            tuple(replace(sundry, cost=sundry.cost * quantity) for sundry in self.sundries),
            self.minutes * quantity,
        )


@dataclass(frozen=True)
class Rates:
    """What the studio's costs go by: an hour at the bench, and shares (0.18 is 18 %)."""

    hourly_rate: Decimal
    overhead: Decimal
    waste: Decimal
    places: int = CENTS

    def __post_init__(self) -> None:
        if not 0 <= self.waste < 1:
            raise ValueError("waste is below 100 %: of what is cut, something must reach a piece")

    @property
    def without_waste(self) -> Rates:
        """For stems that were counted as they were cut: what is lost of them is in the count."""
        return replace(self, waste=NOTHING)


@dataclass(frozen=True)
class Costs:
    """What it costs, head by head; `total` is their sum."""

    grown: Decimal
    bought: Decimal
    waste_grown: Decimal
    waste_bought: Decimal
    sundries: Decimal
    labour: Decimal
    overhead: Decimal

    @property
    def stems(self) -> Decimal:
        """All stems, grown and bought, with their waste."""
        return self.grown + self.bought + self.waste_grown + self.waste_bought

    @property
    def total(self) -> Decimal:
        """All of it."""
        return self.stems + self.sundries + self.labour + self.overhead


def together(needs: Iterable[Needs]) -> Needs:
    """All that goes into several things; stems of one kind in one line."""
    several = list(needs)
    lines: dict[tuple[str, Decimal, bool], int] = {}
    for stem in (stem for one in several for stem in one.stems):
        kind = (stem.stem, stem.each, stem.bought)
        lines[kind] = lines.get(kind, 0) + stem.count
    return Needs(
        tuple(StemsOf(name, count, each, b) for (name, each, b), count in lines.items()),
        tuple(sundry for one in several for sundry in one.sundries),
        sum((one.minutes for one in several), NOTHING),
    )


def costs_of(needs: Needs, rates: Rates) -> Costs:
    """What all of it costs, by the formula above."""
    places = rates.places
    grown, bought = (
        sum((stem.cost(places) for stem in needs.stems if stem.bought is is_bought), NOTHING)
        for is_bought in (False, True)
    )
    waste_grown, waste_bought = (_waste(cost, rates) for cost in (grown, bought))
    sundries = half_up(sum((sundry.cost for sundry in needs.sundries), NOTHING), places)
    labour = half_up(needs.minutes * rates.hourly_rate / MINUTES_IN_AN_HOUR, places)
    before = grown + bought + waste_grown + waste_bought + sundries + labour
    overhead = half_up(before * rates.overhead, places)
    return Costs(grown, bought, waste_grown, waste_bought, sundries, labour, overhead)


def _waste(cost: Decimal, rates: Rates) -> Decimal:
    return half_up(cost / (1 - rates.waste), rates.places) - cost
