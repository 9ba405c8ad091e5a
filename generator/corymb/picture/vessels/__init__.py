"""Which vessels can hold an arrangement? One file each, a line in this list, and its usual size."""

from collections.abc import Callable
from dataclasses import dataclass

from corymb.picture.arrangement import Arrangement
from corymb.picture.vessels import bowl, cup, hand, jar, ring, trough, urn, vase, wire
from corymb.picture.vessels.base import Body, Halves
from corymb.picture.vessels.materials import material, named


@dataclass(frozen=True)
class Kind:
    """How a vessel is drawn, where its stems pass, and its size when the recipe names none.

    `across` is a part of the arrangement's width and `high` of its height; `mouth` and `foot`
    are parts of the vessel's half width.
    """

    draw: Callable[[Body], Halves]
    usual: str
    across: float
    high: float
    mouth: float
    foot: float
    ends: float = 0.06  # how high the stems' ends stand in it


VESSELS: dict[str, Kind] = {
    "hand": Kind(hand.draw, hand.USUAL, across=0.1, high=0.3, mouth=0.75, foot=3.0),
    "wire": Kind(wire.draw, wire.USUAL, across=0.14, high=0.34, mouth=0.7, foot=1.3),
    "jar": Kind(jar.draw, jar.USUAL, across=0.45, high=0.42, mouth=0.66, foot=0.78),
    "vase": Kind(vase.draw, vase.USUAL, across=0.4, high=0.42, mouth=0.52, foot=0.5),
    "urn": Kind(urn.draw, urn.USUAL, across=0.4, high=0.32, mouth=0.72, foot=0.5, ends=0.55),
    "bowl": Kind(bowl.draw, bowl.USUAL, across=0.5, high=0.4, mouth=0.86, foot=0.3),
    "trough": Kind(trough.draw, trough.USUAL, across=0.62, high=0.4, mouth=0.94, foot=0.85),
    "ring": Kind(ring.draw, ring.USUAL, across=0.8, high=0.8, mouth=1.0, foot=1.0),
}


CUP = Kind(cup.draw, cup.USUAL, across=0.45, high=0.42, mouth=0.8, foot=0.7)
CUPS = {"cup", "teacup", "mug", "beaker", "tin", "pot", "crock"}


def kind_of(arrangement: Arrangement) -> Kind:
    """By kind; an unknown one is a vase, and a jar that is called a cup is not of glass."""
    if arrangement.vessel.kind == "jar" and CUPS & named(arrangement.vessel.name):
        return CUP
    return VESSELS.get(arrangement.vessel.kind, VESSELS["vase"])


def size_cm(arrangement: Arrangement) -> tuple[float, float]:
    """Half the vessel's width and its height; never so large that nothing stands above it."""
    kind, vessel = kind_of(arrangement), arrangement.vessel
    across = vessel.across_cm or arrangement.across_cm * kind.across
    high = vessel.high_cm or arrangement.high_cm * kind.high
    return min(across, arrangement.across_cm * 1.2) / 2, min(high, arrangement.high_cm * 0.68)


__all__ = ["VESSELS", "Body", "Halves", "Kind", "kind_of", "material", "size_cm"]
