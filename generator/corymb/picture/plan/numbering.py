"""In which order are the stems placed, and which number does each kind bear?

Leaf makes the outline and line gives the height; then come the focal heads, then the filler
between them, and what is an accent last of all (common practice, no source).
"""

from dataclasses import dataclass

from corymb.picture.arrangement import Arrangement, PictureStem

STEPS = ("foliage", "line", "focal", "filler")


@dataclass(frozen=True)
class KeyLine:
    """One line of the plan's key."""

    number: int
    name: str
    count: int


def in_order(stems: tuple[PictureStem, ...]) -> list[PictureStem]:
    """The kinds of stems in the order of placing, those that are not used left out."""
    used = [stem for stem in stems if stem.count > 0]
    return sorted(used, key=_step)


def key_of(arrangement: Arrangement) -> tuple[KeyLine, ...]:
    """Number, name and count of each kind, the first placed first."""
    return tuple(
        KeyLine(number, stem.name or stem.id.replace("-", " "), stem.count)
        for number, stem in enumerate(in_order(arrangement.stems), 1)
    )


def _step(stem: PictureStem) -> int:
    if stem.role == "accent":
        return len(STEPS)
    return STEPS.index(stem.use) if stem.use in STEPS else len(STEPS)
