"""When is a bucket heavy enough that someone should look closer before it is lifted?

The lifting and lowering filter of the Health and Safety Executive (Great Britain), Manual
handling at work: a brief guide, INDG143, figure 1, with its reductions for lifting often and
for twisting; the same figures are in its guidance L23. A filter is a guideline for when to
assess a job more closely. It is not a limit, and says nothing of who may lift what.
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from types import MappingProxyType
from typing import Literal

Who = Literal["men", "women"]
Reach = Literal["close to the body", "arms extended"]
Zone = Literal[
    "above the shoulder",
    "shoulder to elbow",
    "elbow to knuckle",
    "knuckle to mid lower leg",
    "below mid lower leg",
]

FILTER_KG: Mapping[Who, Mapping[Zone, Mapping[Reach, int]]] = MappingProxyType({
    "men": {
        "above the shoulder": {"close to the body": 10, "arms extended": 5},
        "shoulder to elbow": {"close to the body": 20, "arms extended": 10},
        "elbow to knuckle": {"close to the body": 25, "arms extended": 15},
        "knuckle to mid lower leg": {"close to the body": 20, "arms extended": 10},
        "below mid lower leg": {"close to the body": 10, "arms extended": 5},
    },
    "women": {
        "above the shoulder": {"close to the body": 7, "arms extended": 3},
        "shoulder to elbow": {"close to the body": 13, "arms extended": 7},
        "elbow to knuckle": {"close to the body": 16, "arms extended": 10},
        "knuckle to mid lower leg": {"close to the body": 13, "arms extended": 7},
        "below mid lower leg": {"close to the body": 7, "arms extended": 3},
    },
})  # fmt: skip
"""INDG143, figure 1: kg by the hands' height and reach; a lift through zones takes the least."""

CAUTION = (
    "The filter is a guideline for when to look closer at a lift; a lighter bucket can hurt too. "
    "Carry less at a time or share the weight, keep floors dry, follow your local rules, "
    "and ask a qualified person."
)

FLOOR_TO_TAILGATE: tuple[Zone, ...] = (
    "below mid lower leg",
    "knuckle to mid lower leg",
    "elbow to knuckle",
)
"""The heights a bucket passes from the floor into a vehicle."""


def filter_kg(
    who: Who, zone: Zone, reach: Reach, *, per_minute: float = 0, twist_degrees: float = 0
) -> Decimal:
    """The filter for one lift, in kg. Raises ValueError when a lift is less than never.

    As it stands it is for up to 30 lifts an hour. INDG143 leaves gaps between its ranges; a
    number in a gap takes the stricter side here.
    """
    if per_minute < 0 or twist_degrees < 0:
        raise ValueError("lifts a minute and degrees of twist are 0 or more")
    return FILTER_KG[who][zone][reach] * _for_often(per_minute) * _for_twist(twist_degrees)


def _for_often(per_minute: float) -> Decimal:
    """30 % off for one or two a minute, 50 % for five to eight, 80 % above twelve."""
    if per_minute <= 0.5:
        return Decimal(1)
    if per_minute <= 2:
        return Decimal("0.7")
    return Decimal("0.5") if per_minute <= 8 else Decimal("0.2")


def _for_twist(degrees: float) -> Decimal:
    """10 % off beyond 45 degrees, 20 % beyond 90."""
    if degrees <= 45:
        return Decimal(1)
    return Decimal("0.9") if degrees <= 90 else Decimal("0.8")


def lift_words(kg: float, reach: Reach = "close to the body", what: str = "A full bucket") -> str:
    """What to think of before a bucket so heavy goes from the floor into a vehicle."""
    about = f"{what} weighs about {kg:.1f} kg."
    men, women = (_into_a_vehicle(who, reach) for who in ("men", "women"))
    guide = f"the guideline filter from the floor up, {reach} (HSE INDG143: {women} kg for women"
    guide += f", {men} kg for men)"
    if kg <= women:
        return f"{about} It is within {guide}. {CAUTION}"
    whom = "for both women and men" if kg > men else "for women"
    return (
        f"{about} It is over {guide} {whom}: look closer first, "
        f"pour out some water or lift it in twos. {CAUTION}"
    )


def _into_a_vehicle(who: Who, reach: Reach) -> int:
    return min(FILTER_KG[who][zone][reach] for zone in FLOOR_TO_TAILGATE)
