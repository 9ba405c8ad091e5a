"""What to do on a warm day, where there is no cold store?

By the warmest of the day and by how many hours the flowers stand in it. The steps of warmth and
all advice are common practice, no source. For people it says the usual cautions and defers to
local rules.
"""

from __future__ import annotations

from datetime import time
from enum import IntEnum
from math import ceil

from corymb.language import gettext as _
from corymb.language import ngettext, noted
from corymb.language.locales import clock_words, figures


class Heat(IntEnum):
    """How warm a day is for cut flowers."""

    MILD = 0
    WARM = 1
    HOT = 2
    VERY_HOT = 3


WARM_FROM, HOT_FROM, VERY_HOT_FROM = 21.0, 25.0, 30.0
"""Degrees Celsius, the warmest of the day in the shade. House values, no source."""

LONG_HOURS = 3.0
"""So many hours in the warmth and they tell on a flower. House value, no source."""

FLOWERS: tuple[tuple[Heat, str], ...] = (
    (Heat.WARM, noted("Cut at first light, and stand each stem in water in the bed itself.")),
    (
        Heat.HOT,
        noted("Stop cutting when the sun is on the beds; the rest can wait for the next dawn."),
    ),
    (
        Heat.WARM,
        noted(
            "Condition in the coolest room there is: a north wall, a stone floor, doors shut by "
            "day and open by night."
        ),
    ),
    (
        Heat.HOT,
        noted("Wet the floor, hang damp sheets in the doorway, and change the water at midday."),
    ),
    (Heat.VERY_HOT, noted("Make up by dawn or after dusk, and few pieces at a time.")),
    (Heat.WARM, noted("Keep fruit, sun and draughts away from the buckets.")),
    (
        Heat.WARM,
        noted(
            "Cool the vehicle before it is loaded, flowers last and out again first; leave none in "
            "it when it is parked."
        ),
    ),
)
"""Advice from a degree of warmth on, in the order of the work."""

EARLY = noted("Begin the cut at {hour}, so that it is over before the sun is on the beds.")

WORN_OR_DRY = noted(
    "Pieces without water, such as buttonholes and crowns, stay boxed in the cool until worn."
)

PEOPLE = noted(
    "Work in the shade, drink water often, wear a hat, and rest in the hottest hours. Whoever "
    "feels dizzy, sick or confused stops, cools down and gets medical help. Follow your local "
    "rules, and ask a qualified person."
)


def heat_of(hottest_celsius: float) -> Heat:
    """How warm a day is by the warmest of it, in degrees Celsius."""
    passed = sum(hottest_celsius >= step for step in (WARM_FROM, HOT_FROM, VERY_HOT_FROM))
    return Heat(passed)


def heat_advice(
    hottest_celsius: float, hours: float = 0, cut_at: time | None = None
) -> tuple[str, ...]:
    """What to do, in the order of the work; nothing on a mild day.

    `hours` is how long the flowers stand in the warmth, from handing over to the end of use;
    `cut_at` is when the studio would begin the cut on a hot day.
    Raises ValueError when it is below 0.
    """
    if hours < 0:
        raise ValueError("hours in the warmth are 0 or more")
    heat = heat_of(hottest_celsius)
    if heat == Heat.MILD:
        return ()
    flowers = [_(words) for since, words in FLOWERS if heat >= since]
    if heat >= Heat.HOT and cut_at:
        flowers.insert(0, _(EARLY).format(hour=clock_words(cut_at)))
    if hours >= LONG_HOURS:
        flowers.append(_long_out(hours))
    if heat >= Heat.HOT:
        flowers += [_(WORN_OR_DRY), _(PEOPLE)]
    return tuple(flowers)


def _long_out(hours: float) -> str:
    told = ngettext(
        "They stand {number} hour in the warmth: set out as late as you can, in the shade, with "
        "the water filled to the brim and topped up.",
        "They stand {number} hours in the warmth: set out as late as you can, in the shade, with "
        "the water filled to the brim and topped up.",
        ceil(hours),
    )
    return told.format(number=figures(hours))
