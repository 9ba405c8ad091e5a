"""When is a bucket heavy enough that someone should look closer before it is lifted?

The lifting and lowering filter of the Health and Safety Executive (Great Britain), Manual
handling at work: a brief guide, INDG143, figure 1; the same figures are in its guidance L23. It
is for up to 30 lifts an hour, and less where one lifts more often or twists. A filter is a
guideline for when to assess a job more closely. It is not a limit, and says nothing of who may
lift what.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Literal

from corymb.language import gettext as _
from corymb.language import noted
from corymb.language.locales import rounded

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

CAUTION = noted(
    "The filter is a guideline for when to look closer at a lift; a lighter bucket can hurt too. "
    "It is 30 % less where one lifts once or twice a minute, as in loading, and 10 % less where "
    "one turns at the waist. "
    "Carry less at a time or share the weight, keep floors dry, follow your local rules, "
    "and ask a qualified person."
)

FLOOR_TO_TAILGATE: tuple[Zone, ...] = (
    "below mid lower leg",
    "knuckle to mid lower leg",
    "elbow to knuckle",
)
"""The heights a bucket passes from the floor into a vehicle."""


WITHIN = noted("It is within {guide}.")
OVER_FOR_WOMEN = noted(
    "It is over {guide} for women: look closer first, pour out some water or lift it in twos."
)
OVER_FOR_BOTH = noted(
    "It is over {guide} for both women and men: look closer first, pour out some water or lift it "
    "in twos."
)

GUIDE: Mapping[Reach, str] = {
    "close to the body": noted(
        "the guideline filter from the floor up, close to the body "
        "(HSE INDG143: {women} kg for women, {men} kg for men)"
    ),
    "arms extended": noted(
        "the guideline filter from the floor up, arms extended "
        "(HSE INDG143: {women} kg for women, {men} kg for men)"
    ),
}


def lift_words(kg: float, reach: Reach = "close to the body", *, heaviest: bool = False) -> str:
    """What to think of before a bucket so heavy goes from the floor into a vehicle."""
    about = _("A full bucket weighs about {weight} kg.")
    if heaviest:
        about = _("The heaviest bucket weighs about {weight} kg.")
    men, women = (_into_a_vehicle(who, reach) for who in ("men", "women"))
    found = WITHIN if kg <= women else OVER_FOR_BOTH if kg > men else OVER_FOR_WOMEN
    guide = _(GUIDE[reach]).format(women=women, men=men)
    return " ".join((about.format(weight=rounded(kg, 1)), _(found).format(guide=guide), _(CAUTION)))


def _into_a_vehicle(who: Who, reach: Reach) -> int:
    return min(FILTER_KG[who][zone][reach] for zone in FLOOR_TO_TAILGATE)
