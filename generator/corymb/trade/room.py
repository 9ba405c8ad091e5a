"""How much of a stem does a piece have room for?

A spray of mint is 22 cm long, but in a jar that stands 26 cm high with its flowers only what is
above the rim is seen: the rest is stripped or cut away. What is wired, on a pin or a ring, is cut
far smaller: sprigs no longer than the piece, of each stem one head, and where that would be too
large one in bud. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import inf

from corymb.studio.models import Recipe, Stem
from corymb.studio.words import LONG_FORMS

TIED, SUNK = 0.3, 0.42
"""How high the tie of a bunch is, and a vessel that is given no height, as parts of the whole."""

CLEAR = 0.84
"""The part of what stands above the rim that leaf and floret take; below it a stem is stripped."""

DIVIDED = {"umbel", "cluster", "berry", *LONG_FORMS} - {"bell"}
"""Forms that can be taken apart into sprigs."""


@dataclass(frozen=True)
class Room:
    """The most that is seen of one stem; a stem that is smaller is seen whole."""

    longest_cm: float = inf
    """Of a spray or a spike."""
    widest_cm: float = inf
    """Of a sprig, across."""
    bud_cm: float = inf
    """Of a head that can't be taken apart."""
    heads: float = inf

    def size_of(self, stem: Stem) -> tuple[float, float]:
        """What is seen of one head: how wide and how long, in centimetres."""
        across = stem.head.cm
        wide = min(across, self.widest_cm if stem.form in DIVIDED else self.bud_cm)
        if stem.form not in LONG_FORMS or stem.head_length is None:
            return wide, wide
        return wide, min(stem.head_length.cm, max(wide, self.longest_cm))

    def heads_of(self, stem: Stem) -> float:
        """How many of a stem's heads go in."""
        return min(stem.heads_per_stem, self.heads)


ALL = Room()
"""For a stem by itself."""


def room_in(recipe: Recipe) -> Room:
    """What there is room for in a recipe's piece, in its regular size."""
    across, high, vessel = recipe.across.cm, recipe.high.cm, recipe.vessel
    if vessel.kind == "wire":
        return Room(high * 0.55, across * 0.42, across * 0.52, heads=1)
    if vessel.kind == "ring":
        return Room(across * 0.25, across * 0.2, across * 0.3, heads=1)
    usual = high * (TIED if vessel.kind == "hand" else SUNK)
    rim = min(vessel.high.cm if vessel.high else usual, high * 0.68)
    return Room(CLEAR * max(high - rim, across / 2))
