"""Why this stem for that one, in a few plain words each: colour, heads and count, form, keeping?"""

from __future__ import annotations

from collections.abc import Mapping

from corymb.studio.models import Stem
from corymb.studio.saying import number_word
from corymb.studio.words import LONG_FORMS
from corymb.trade.colour.likeness import palette_of
from corymb.trade.colour.shifts import colour_shift
from corymb.trade.swaps.standing_in import StandIn

SAME_TO_THE_EYE = 3.0
NEARLY_THE_SAME = 6.0
"""Distances of colours (CIEDE2000) below which one says so: house values."""

SIZES = (
    (0.28, "much smaller {heads}"),
    (0.41, "{heads} a third as {wide}"),
    (0.59, "{heads} half as {wide}"),
    (0.72, "{heads} two thirds as {wide}"),
    (0.90, "slightly smaller {heads}"),
    (1.11, "{heads} of the same size"),
    (1.40, "slightly larger {heads}"),
    (1.70, "{heads} half as {wide} again"),
    (2.45, "{heads} twice as {wide}"),
    (3.60, "{heads} three times as {wide}"),
)
"""What is said of a head so many times as wide, or of a long one that shows so many times as much;
the words hold below the number, a house value."""

SAME_SIZE = (0.90, 1.11)

HEADS = {"leaf-spray": "sprays", "blade": "blades", "trail": "trails"}
"""What the forms that bear no head are counted by."""

FAR = 14
"""Beyond so many days nobody counts them: house value."""


def reasons(stand_in: StandIn, stems: Mapping[str, Stem]) -> tuple[str, ...]:
    """A few short words each, the most telling first."""
    out, coming = stems[stand_in.out], stems[stand_in.in_]
    words = (
        _colour(stand_in, out, coming),
        _heads(stand_in, out, coming),
        "the same form" if stand_in.same_form else f"another form: {_spoken(coming.form)}",
        _keeping(stand_in.days),
    )
    return tuple(word for word in words if word)


def colour_reason(stand_in: StandIn, stems: Mapping[str, Stem]) -> str:
    """How the colour differs, for whoever needn't know the rest."""
    return _colour(stand_in, stems[stand_in.out], stems[stand_in.in_])


def new_hazards(stand_in: StandIn, stems: Mapping[str, Stem]) -> tuple[str, ...]:
    """How what comes in can hurt and what goes out can't; the style leaves none of it out."""
    known = stems[stand_in.out].hazards
    return tuple(hazard for hazard in stems[stand_in.in_].hazards if hazard not in known)


def _colour(stand_in: StandIn, out: Stem, coming: Stem) -> str:
    distance = stand_in.colour_distance
    if distance < SAME_TO_THE_EYE:
        return "the same colour to the eye"
    if distance < NEARLY_THE_SAME:
        return "nearly the same colour"
    return colour_shift(palette_of(out), palette_of(coming), distance)


def _heads(stand_in: StandIn, out: Stem, coming: Stem) -> str:
    """The size of its heads, and why so many come for so many."""
    long = out.form in LONG_FORMS or coming.form in LONG_FORMS
    ratio = stand_in.size_ratio**2 if long else stand_in.size_ratio
    size = _size(ratio, "big" if long else "wide", coming.form)
    change = stand_in.in_count - stand_in.out_count
    if change == 0:
        return size
    so = f"so {stand_in.in_count} for {stand_in.out_count}"
    least, most = SAME_SIZE
    if ratio < least if change > 0 else ratio >= most:
        return f"{size}, {so}"
    why = _fullness(change, out, coming)
    return f"{why}, {so}" if least <= ratio < most else f"{size} but {why}, {so}"


def _size(ratio: float, wide: str, form: str) -> str:
    words = next((words for below, words in SIZES if ratio < below), "much larger {heads}")
    return words.format(heads=_heads_of(form), wide=wide)


def _fullness(change: int, out: Stem, coming: Stem) -> str:
    """What else makes a stem show more or less, when its heads' size doesn't."""
    more = coming.heads_per_stem - out.heads_per_stem
    if change > 0:
        return f"fewer {_heads_of(coming.form)} on a stem" if more < 0 else "airier"
    return f"more {_heads_of(coming.form)} on a stem" if more > 0 else "fuller"


def _heads_of(form: str) -> str:
    return HEADS.get(form, "heads")


def _keeping(days: int) -> str:
    if days == 0:
        return ""
    many = abs(days)
    than = "longer" if days > 0 else "less"
    if many > FAR:
        return "keeps far longer" if days > 0 else "keeps far less long"
    number = "a" if many == 1 else number_word(many)
    return f"keeps {number} {'day' if many == 1 else 'days'} {than}"


def _spoken(form: str) -> str:
    return form.replace("-", " ")
