"""Why this stem for that one, in a few plain words each: colour, heads and count, form, keeping?"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from corymb.language import gettext as _
from corymb.language import ngettext, noted, pgettext
from corymb.language.number_words import number_word
from corymb.studio.models import Stem
from corymb.studio.words import LONG_FORMS
from corymb.trade.colour.likeness import palette_of
from corymb.trade.colour.shifts import colour_shift
from corymb.trade.form_words import form_words
from corymb.trade.swaps.standing_in import StandIn

SAME_TO_THE_EYE = 3.0
NEARLY_THE_SAME = 6.0
"""Distances of colours (CIEDE2000) below which one says so: house values."""

BELOW = (0.28, 0.41, 0.59, 0.72, 0.90, 1.11, 1.40, 1.70, 2.45, 3.60)
"""What is said of a head so many times as wide, or of a long one that shows so many times as much,
holds below these numbers: house values."""

MUCH_LARGER = noted("much larger {heads}")
WIDE = (
    noted("much smaller {heads}"),
    noted("{heads} a third as wide"),
    noted("{heads} half as wide"),
    noted("{heads} two thirds as wide"),
    noted("slightly smaller {heads}"),
    noted("{heads} of the same size"),
    noted("slightly larger {heads}"),
    noted("{heads} half as wide again"),
    noted("{heads} twice as wide"),
    noted("{heads} three times as wide"),
)
LONG = (
    noted("much smaller {heads}"),
    noted("{heads} a third as big"),
    noted("{heads} half as big"),
    noted("{heads} two thirds as big"),
    noted("slightly smaller {heads}"),
    noted("{heads} of the same size"),
    noted("slightly larger {heads}"),
    noted("{heads} half as big again"),
    noted("{heads} twice as big"),
    noted("{heads} three times as big"),
)
"""Of what is longer than it is wide."""

SAME_SIZE = (0.90, 1.11)

FAR = 14
"""Beyond so many days nobody counts them: house value."""


def reasons(stand_in: StandIn, stems: Mapping[str, Stem]) -> tuple[str, ...]:
    """A few short words each, the most telling first."""
    out, coming = stems[stand_in.out], stems[stand_in.in_]
    words = (
        _colour(stand_in, out, coming),
        _heads(stand_in, out, coming),
        _form(stand_in, coming),
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
        return _("the same colour to the eye")
    if distance < NEARLY_THE_SAME:
        return _("nearly the same colour")
    return colour_shift(palette_of(out), palette_of(coming), distance)


def _heads(stand_in: StandIn, out: Stem, coming: Stem) -> str:
    """The size of its heads, and why so many come for so many."""
    long = out.form in LONG_FORMS or coming.form in LONG_FORMS
    ratio = stand_in.size_ratio**2 if long else stand_in.size_ratio
    why = _size(ratio, LONG if long else WIDE, coming.form)
    change = stand_in.in_count - stand_in.out_count
    if change == 0:
        return why
    least, most = SAME_SIZE
    if not (ratio < least if change > 0 else ratio >= most):
        fullness = _fullness(change, out, coming)
        both = _("{size} but {fullness}").format(size=why, fullness=fullness)
        why = fullness if least <= ratio < most else both
    # L10N: {why}: heads half as wide; {coming} stems come in for {out}.
    told = _("{why}, so {coming} for {out}")
    return told.format(why=why, coming=stand_in.in_count, out=stand_in.out_count)


def _size(ratio: float, words: Sequence[str], form: str) -> str:
    held = (told for below, told in zip(BELOW, words, strict=True) if ratio < below)
    return _(next(held, MUCH_LARGER)).format(heads=_heads_of(form))


def _fullness(change: int, out: Stem, coming: Stem) -> str:
    """What else makes a stem show more or less, when its heads' size doesn't."""
    more = coming.heads_per_stem - out.heads_per_stem
    heads = _heads_of(coming.form)
    if change > 0:
        return _("fewer {heads} on a stem").format(heads=heads) if more < 0 else _("airier")
    return _("more {heads} on a stem").format(heads=heads) if more > 0 else _("fuller")


def _heads_of(form: str) -> str:
    """What a form is counted by, where it bears no head."""
    headless = {
        "leaf-spray": pgettext("heads", "sprays"),
        "needle-spray": pgettext("heads", "sprays"),
        "blade": pgettext("heads", "blades"),
        "trail": pgettext("heads", "trails"),
    }
    return headless.get(form, pgettext("heads", "heads"))


def _form(stand_in: StandIn, coming: Stem) -> str:
    if stand_in.same_form:
        return _("the same form")
    return _("another form: {form}").format(form=form_words()[coming.form])


def _keeping(days: int) -> str:
    if days == 0:
        return ""
    many = abs(days)
    if many > FAR:
        return _("keeps far longer") if days > 0 else _("keeps far less long")
    if many == 1:
        return _("keeps a day longer") if days > 0 else _("keeps a day less")
    told = ngettext("keeps {number} day less", "keeps {number} days less", many)
    if days > 0:
        told = ngettext("keeps {number} day longer", "keeps {number} days longer", many)
    return told.format(number=number_word(many))
