"""How is a whole number shared out in given proportions, in whole parts?

The largest remainder method (Hamilton's, with Hare's quota): everyone gets the whole part of
their quota, and what is left goes one each to the largest remainders. Ties go to the earlier
in the list. Source: M. L. Balinski and H. P. Young, Fair Representation (1982), chapter 2,
from memory. Raising the total may lower a single part (the Alabama paradox).
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import lcm


def apportion(total: int, weights: Sequence[Fraction | int]) -> list[int]:
    """`total` (0 or more) shared out by `weights` (0 or more, not all 0), in whole parts.

    The parts add up to `total`, and each is within 1 of its quota. Raises ValueError on a
    negative total or weight, or when there is something to share and no weight.
    """
    if total < 0 or any(w < 0 for w in weights):
        raise ValueError("neither the total nor a weight may be negative")
    parts_of_one = lcm(*(w.denominator for w in weights))
    shares = [int(w * parts_of_one) for w in weights]
    whole = sum(shares)
    if whole == 0:
        if total:
            raise ValueError("there is nothing to share by: every weight is 0")
        return [0] * len(weights)
    quotas = [divmod(total * share, whole) for share in shares]
    parts = [part for part, _remainder in quotas]
    by_remainder = sorted(range(len(quotas)), key=lambda i: (-quotas[i][1], i))
    for i in by_remainder[: total - sum(parts)]:
        parts[i] += 1
    return parts
