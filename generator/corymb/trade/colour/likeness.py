"""How alike are the colours of two stems, or of two arrangements?

What one shows is carried over into what the other shows, a share at a time, the likest colours
first; the distance is the mean CIEDE2000 that the shares travel. It is 0 for the same colours in
the same shares, and a white flower with a red edge is far from a red one with a white edge.
(The best way of carrying all at once is a little shorter, and slower to find: see `transport`.)
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from corymb.studio.models import Stem
from corymb.trade.colour.ciede2000 import Lab, difference, lab_of

Palette = tuple[tuple[str, float], ...]
"""Colours (`#rrggbb`) with their shares, largest first; the shares add up to 1."""

LARGEST = 8
"""So many colours stand for a whole arrangement; the rest is too little to be seen."""


def palette(parts: Iterable[tuple[str, float]]) -> Palette:
    """The largest colours of some, each once, sharing out the whole."""
    shares: dict[str, float] = {}
    for hex_, share in parts:
        if share > 0:
            shares[hex_] = shares.get(hex_, 0.0) + share
    kept = sorted(shares.items(), key=lambda part: (-part[1], part[0]))[:LARGEST]
    whole = sum(share for _, share in kept)
    return tuple((hex_, share / whole) for hex_, share in kept)


def palette_of(stem: Stem) -> Palette:
    """What a stem's heads show."""
    return palette((part.hex, float(part.share or 0)) for part in stem.colours)


def apart(one: Palette, other: Palette) -> float:
    """How far apart two palettes look, in CIEDE2000; the same either way round.

    Raises ValueError when only one of them has any colour.
    """
    if not one or not other:
        if one == other:
            return 0.0
        raise ValueError("no colours to compare with")
    if len(one) == 1 or len(other) == 1:
        return sum(
            share * rest * difference(hex_, its) for hex_, share in one for its, rest in other
        )
    return _carried(one, other) if one <= other else _carried(other, one)


@lru_cache(maxsize=1 << 16)
def _carried(one: Palette, other: Palette) -> float:
    ways = sorted(
        (difference(hex_, its), i, j)
        for i, (hex_, _) in enumerate(one)
        for j, (its, _) in enumerate(other)
    )
    left = [share for _, share in one]
    room = [share for _, share in other]
    total = 0.0
    for distance, i, j in ways:
        moved = min(left[i], room[j])
        if moved > 0:
            total += moved * distance
            left[i] -= moved
            room[j] -= moved
    return total


@lru_cache(maxsize=4096)
def mean_lab(colours: Palette) -> Lab:
    """The mean of what is shown, in CIELAB: good for light and warmth, no colour by itself."""
    parts = [(share, lab_of(hex_)) for hex_, share in colours]
    light, red, yellow = (sum(share * lab[axis] for share, lab in parts) for axis in range(3))
    return light, red, yellow
