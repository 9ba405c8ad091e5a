"""May this stem go into this style: no hazard it leaves out, not too heavy, long enough?

What a style excludes is the studio's own judgement. A recipe that breaks it is only told so;
what the program itself offers never does.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.studio.models import Stem, Style
from corymb.studio.saying import or_list


def misfits(stem: Stem, style: Style) -> Iterator[tuple[bool, str]]:
    """Why a stem doesn't fit a style: whether that can hurt someone, and a sentence."""
    many = style.plural.lower()
    hazards = [hazard for hazard in stem.hazards if hazard in style.excludes]
    if hazards:
        yield True, f"has a hazard that {many} leave out: {or_list(hazards)}."
    if stem.weight.grams > style.heaviest_stem.grams:
        yield False, f"weighs {stem.weight}; {many} take stems of up to {style.heaviest_stem}."
    if stem.length.longest_cm < style.stem_length.shortest_cm:
        yield False, f"is cut at {stem.length}; {many} need {style.stem_length}."


def fits(stem: Stem, style: Style) -> bool:
    """Whether nothing at all speaks against the stem in the style."""
    return next(misfits(stem, style), None) is None
