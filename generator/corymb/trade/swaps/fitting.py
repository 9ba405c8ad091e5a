"""May this stem go into this style: no hazard it leaves out, not too heavy, long enough?

What a style excludes is the studio's own judgement. A recipe that breaks it is only told so;
what the program itself offers never does.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import noted
from corymb.studio.models import Stem, Style
from corymb.studio.saying import or_list

HARMFUL, TOO_HEAVY, TOO_SHORT = noted("harmful"), noted("too heavy"), noted("too short")


def unfit(stem: Stem, style: Style) -> Iterator[str]:
    """What speaks against a stem in a style, each by its English word."""
    if any(hazard in style.excludes for hazard in stem.hazards):
        yield HARMFUL
    if stem.weight.grams > style.heaviest_stem.grams:
        yield TOO_HEAVY
    if stem.length.longest_cm < style.stem_length.shortest_cm:
        yield TOO_SHORT


def misfits(stem: Stem, style: Style) -> Iterator[tuple[bool, str]]:
    """The same for whoever wrote it: whether that can hurt someone, and a sentence."""
    many = style.plural.lower()
    hazards = or_list([hazard for hazard in stem.hazards if hazard in style.excludes])
    sentences = {
        HARMFUL: f"has a hazard that {many} leave out: {hazards}.",
        TOO_HEAVY: f"weighs {stem.weight}; {many} take stems of up to {style.heaviest_stem}.",
        TOO_SHORT: f"is cut at {stem.length}; {many} need {style.stem_length}.",
    }
    yield from ((word == HARMFUL, sentences[word]) for word in unfit(stem, style))


def fits(stem: Stem, style: Style) -> bool:
    """Whether nothing at all speaks against the stem in the style."""
    return next(unfit(stem, style), None) is None
