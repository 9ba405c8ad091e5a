"""What is left of a stem that is taken apart? Small pieces use a sprig of it, not all its heads."""

from dataclasses import replace

from corymb.picture.arrangement import Arrangement, PictureStem
from corymb.picture.forms import FORMS


def taken_apart(
    arrangement: Arrangement, wide_cm: float, long_cm: float, bud_cm: float, heads: int
) -> Arrangement:
    """The arrangement with `heads` of each stem, those that can be divided cut to the size.

    What cannot be divided goes in as a bud, at most `bud_cm` wide.
    """
    stems = tuple(_sprig(stem, wide_cm, long_cm, bud_cm, heads) for stem in arrangement.stems)
    return replace(arrangement, stems=stems)


def _sprig(
    stem: PictureStem, wide_cm: float, long_cm: float, bud_cm: float, heads: int
) -> PictureStem:
    grown = stem.heads_per_stem
    fewer = replace(stem, heads_per_stem=min(heads, grown), grown_heads=grown)
    form = FORMS[stem.form]
    if not form.divisible:
        return replace(fewer, head_cm=min(stem.head_cm, bud_cm))
    across = min(stem.head_cm, wide_cm)
    length = stem.head_length_cm or stem.head_cm * form.length
    return replace(fewer, head_cm=across, head_length_cm=max(across, min(length, long_cm)))
