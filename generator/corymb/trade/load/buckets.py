"""How are an order's stems shared out into buckets?

Each order has buckets of its own. A kind of stem fills as many as it can; the ends that are too
few to fill one share a bucket with other ends of the same order, the largest share of a bucket
first, each into the first with room (first fit decreasing: D. S. Johnson, Near-optimal bin
packing algorithms, thesis, MIT 1973, from memory). `per_bucket` is what stands in a bucket of
the kind the stem goes into. Where a delicate head shares, the bucket is filled less; a stem
whose sap harms others shares with none, and dried ones stand with dried ones alone, without
water. All common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from corymb.trade.load.kinds import BucketKind, bucket_for

ROOM_WITH_DELICATE = Fraction(4, 5)
"""How full a shared bucket is with a delicate head in it. House value, no source."""


@dataclass(frozen=True)
class Lot:
    """All stems of one kind in an order, with what a bucket must know of them."""

    stem: str
    count: int
    per_bucket: int
    shortest_cm: float
    longest_cm: float
    weight_g: float
    alone: bool = False
    dry: bool = False
    delicate: bool = False
    """Whether its heads bruise."""

    def share(self, count: int) -> Fraction:
        """How much of a bucket so many of them take."""
        return Fraction(count, self.per_bucket)


@dataclass(frozen=True)
class Part:
    """So many stems of one lot in one bucket."""

    lot: Lot
    count: int


@dataclass(frozen=True)
class Filled:
    """One bucket with all that stands in it. `stands` is no when its stems need holding up."""

    order: str
    kind: BucketKind
    stands: bool
    parts: tuple[Part, ...]

    @property
    def share(self) -> Fraction:
        """How full it is; 1 is full."""
        return sum((part.lot.share(part.count) for part in self.parts), Fraction(0))

    @property
    def dry(self) -> bool:
        """Whether it is filled without water."""
        return all(part.lot.dry for part in self.parts)

    @property
    def tall_cm(self) -> float:
        """How high it reaches with its longest stem upright."""
        return max([self.kind.high_cm, *(part.lot.longest_cm for part in self.parts)])

    @property
    def trimmed_cm(self) -> float:
        """How high it reaches at least, each stem cut as short as it may be."""
        return max([self.kind.high_cm, *(part.lot.shortest_cm for part in self.parts)])


def fill(order: str, lots: Sequence[Lot], kinds: Sequence[BucketKind]) -> tuple[Filled, ...]:
    """The buckets of one order: full ones in the order of its lots, then the shared ones.

    Raises ValueError: no bucket to fill, a count below 0, or no stem to a bucket.
    """
    if any(lot.count < 0 or lot.per_bucket < 1 for lot in lots):
        raise ValueError("stems are counted from 0, and a bucket holds 1 or more")
    full, ends = [], []
    for lot in lots:
        home = bucket_for(lot.shortest_cm, lot.longest_cm, kinds)
        whole, end = divmod(lot.count, lot.per_bucket)
        full += [Filled(order, *home, (Part(lot, lot.per_bucket),))] * whole
        ends += [(home, Part(lot, end))] if end else []
    for home in dict.fromkeys(home for home, _ in ends):
        own = [part for other, part in ends if other == home]
        full += [Filled(order, *home, shared) for shared in _shared(own)]
    return tuple(full)


def _shared(ends: Iterable[Part]) -> list[tuple[Part, ...]]:
    """The ends together in as few buckets as first fit finds, the largest share first."""
    buckets: list[list[Part]] = []
    for part in sorted(ends, key=lambda p: (-p.lot.share(p.count), p.lot.stem)):
        home = next((bucket for bucket in buckets if _has_room(bucket, part)), None)
        if home is None:
            buckets.append([part])
        else:
            home.append(part)
    return [tuple(bucket) for bucket in buckets]


def _has_room(bucket: list[Part], part: Part) -> bool:
    parts = [*bucket, part]
    if any(one.lot.alone or one.lot.dry != part.lot.dry for one in parts):
        return False
    room = ROOM_WITH_DELICATE if any(one.lot.delicate for one in parts) else Fraction(1)
    return sum(one.lot.share(one.count) for one in parts) <= room
