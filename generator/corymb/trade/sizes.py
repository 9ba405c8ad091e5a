"""How large is a recipe's piece in one of its sizes? Heads cover a surface, so by their root.

A vessel stays the one it is; what stands above its rim grows and shrinks. A trough is another
trough, as much longer or shorter, for its flowers stand side by side. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

from corymb.studio.models import Recipe
from corymb.studio.values.share import Scale

TROUGH = "trough"


@dataclass(frozen=True)
class PieceSize:
    """How large a piece is, and the vessel it is in, in cm."""

    across_cm: float
    high_cm: float
    vessel_across_cm: float | None


def piece_size(recipe: Recipe, scale: Scale | None) -> PieceSize:
    """A recipe's piece in one of its sizes; without one, as it is written."""
    across, high = recipe.across.cm, recipe.high.cm
    vessel = recipe.vessel.across.cm if recipe.vessel.across else None
    factor = float(scale.factor) if scale else 1.0
    if recipe.vessel.kind == TROUGH:
        return PieceSize(across * factor, high, vessel * factor if vessel else None)
    rim = recipe.vessel.high.cm if recipe.vessel.high else 0.0
    stands = max(high - rim, 0.0)
    return PieceSize(
        max(across * sqrt(factor), vessel or 0.0), high - stands + stands * sqrt(factor), vessel
    )
