"""Which of the studio's buckets does a stem stand in?

It must neither topple nor drown: a bucket about a third as high as the stem is long or more,
and no higher than two thirds of it, so that heads stand clear of the rim. Among those that suit
it goes into the one with the most water. Both shares are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from corymb.trade.load.exact import exact

STANDS_FROM = Fraction(1, 3)
"""Of the longest stem's length: in a lower bucket it falls over. House value."""

DROWNS_FROM = Fraction(2, 3)
"""Of the shortest stem's length: in a higher bucket its head is under the rim. House value."""


@dataclass(frozen=True)
class BucketKind:
    """One kind of bucket the studio has, filled with its usual water."""

    name: str
    across_cm: float
    high_cm: float
    water_litres: float
    empty_kg: float


def bucket_for(
    shortest_cm: float, longest_cm: float, kinds: Sequence[BucketKind]
) -> tuple[BucketKind, bool]:
    """The bucket for stems cut so long, and whether they stand in it by themselves.

    Where every bucket in which they stand would drown the shortest, it is the lowest of these.
    Where they stand in none, it is the highest there is. Ties go to the earlier in the list.
    Raises ValueError when there is no bucket.
    """
    if not kinds:
        raise ValueError("the studio has no bucket to stand stems in")
    stands = [kind for kind in kinds if exact(kind.high_cm) >= STANDS_FROM * exact(longest_cm)]
    if not stands:
        return max(kinds, key=lambda kind: kind.high_cm), False
    clear = [kind for kind in stands if exact(kind.high_cm) <= DROWNS_FROM * exact(shortest_cm)]
    if clear:
        return max(clear, key=lambda kind: kind.water_litres), True
    return min(stands, key=lambda kind: kind.high_cm), True
