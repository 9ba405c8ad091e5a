"""How like another is a stem, for standing in: colour, size of head, form, vase life?

The lower the score the liker. Its weights are house values: common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import floor, log2, sqrt
from typing import NamedTuple

from corymb.studio.models import Stem
from corymb.studio.words import LONG_FORMS
from corymb.trade.colour.areas import visible_area
from corymb.trade.colour.likeness import Palette, apart, mean_lab, palette_of
from corymb.trade.colour.words import colour_word
from corymb.trade.dried import is_dried
from corymb.trade.swaps.families import family_of

A_DOUBLING = 6.0
"""Heads twice or half the size count as much as this distance of colours."""

ANOTHER_FORM = 6.0
A_KIN_FORM = 2.0
A_DAY_LESS = 1.5
"""So do another form, one that is of its kin, and each day that it keeps less."""

LONG_ENOUGH_DAYS = 14
"""Days that a stem keeps beyond these make it no better: no piece is kept for longer."""

KIN_FORMS = (
    ("rosette", "cup", "iris", "trumpet", "daisy"),
    ("spike", "plume", "bell"),
    ("umbel", "cluster", "globe"),
    ("berry", "pod"),
    ("leaf-spray", "needle-spray", "blade", "twig", "trail", "tassel"),
)
"""Forms that do the same for the eye."""


class Facts(NamedTuple):
    """What is asked of a stem, worked out once."""

    id: str
    stem: Stem
    use: str
    form: str
    family: str
    dried: bool
    plant: tuple[str, str]
    """Botanical name and main colour: two stems of one plant may be it dried and fresh."""
    palette: Palette
    lightness: float
    head: float
    area: float
    days: int
    longest: float


@dataclass(frozen=True, eq=False)
class Pair:
    """One stem beside another, whatever the style. Colours, which take long, are compared once."""

    out: Facts
    coming: Facts

    @property
    def size_ratio(self) -> float:
        """One head of what comes in over one head of what goes out."""
        return self.coming.head / self.out.head

    @property
    def lighter(self) -> float:
        """L* by which what comes in is lighter; below 0 where it is darker."""
        return self.coming.lightness - self.out.lightness

    @property
    def stems_for_one(self) -> float:
        """So many of what comes in show the area of one that goes out."""
        return self.out.area / self.coming.area

    def whole_stems(self, count: int) -> int:
        """In whole stems, for so many that go out: one at least."""
        return max(1, floor(count * self.stems_for_one + 0.5))

    @cached_property
    def colour(self) -> float:
        """How far apart their colours are (CIEDE2000)."""
        return apart(self.out.palette, self.coming.palette)

    @cached_property
    def score(self) -> float:
        """How unlike they are: lower is better."""
        fewer_days = max(0, min(self.out.days, LONG_ENOUGH_DAYS) - self.coming.days)
        score = (
            self.colour
            + A_DOUBLING * abs(log2(self.size_ratio))
            + form_cost(self.out.form, self.coming.form)
            + A_DAY_LESS * fewer_days
        )
        return round(score, 6)


def head_size(stem: Stem) -> float:
    """How wide one head is in centimetres; of a long one, the width of a round one of its area."""
    across = stem.head.cm
    long = stem.head_length.cm if stem.form in LONG_FORMS and stem.head_length else across
    return sqrt(across * long)


def form_cost(one: str, other: str) -> float:
    """What another form costs in the ranking."""
    if one == other:
        return 0.0
    kin = any(one in group and other in group for group in KIN_FORMS)
    return A_KIN_FORM if kin else ANOTHER_FORM


def facts_of(stem_id: str, stem: Stem) -> Facts:
    colours = palette_of(stem)
    return Facts(
        id=stem_id,
        stem=stem,
        use=stem.use,
        form=stem.form,
        family=family_of(stem),
        dried=is_dried(stem),
        plant=(stem.botanical, colour_word(colours[0][0])),
        palette=colours,
        lightness=mean_lab(colours)[0],
        head=head_size(stem),
        area=visible_area(stem),
        days=stem.vase_life.fewest,
        longest=stem.length.longest_cm,
    )
