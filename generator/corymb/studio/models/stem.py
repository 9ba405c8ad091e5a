"""One cut material in one colour, with its facts; and a file of them, a group of plants."""

from __future__ import annotations

from decimal import Decimal
from typing import Self

from pydantic import field_validator, model_validator

from corymb.studio.models.base import FileModel, KeysDisagree, NamedModel
from corymb.studio.values.colour import ColourPart
from corymb.studio.values.fields import (
    ColourPartField,
    CountField,
    DayRangeField,
    EndsWithField,
    FormField,
    HazardField,
    HeadsField,
    HexField,
    IdField,
    LengthField,
    LengthRangeField,
    MoneyField,
    ScentField,
    SeasonField,
    TextField,
    UseField,
    WeightField,
    WholeField,
)
from corymb.studio.values.number import plain
from corymb.studio.words import LONG_FORMS


class Conditioning(FileModel):
    """How a stem is readied after the cut: how long it stands in water, and what to do."""

    hours: WholeField
    """How many hours it stands in water before it is used."""
    do: TextField
    """What to do, in a sentence."""


class Stem(NamedModel):
    """A flower, leaf, grass, berry or pod as it is cut."""

    name: TextField
    """What a client reads; the colour after a comma."""
    botanical: TextField
    """Its botanical name."""
    use: UseField
    """The structural part it plays."""
    form: FormField
    """The shape of its head, leaf, fruit or pod, for its picture."""
    colours: list[ColourPartField]
    """Its colours, one a line: NAME NUMBER SHARE, shares adding up to 100 %."""
    green: HexField = "#5d7350"
    """The colour of its stem and leaf."""
    head: LengthField
    """How wide one head is."""
    head_length: LengthField | None = None
    """How long one head is; for long forms alone."""
    heads_per_stem: HeadsField = 1
    """How many heads one cut stem bears."""
    length: LengthRangeField
    """How long it is cut."""
    weight: WeightField
    """What one cut stem weighs."""
    in_season: SeasonField
    """When it can be cut where the book dates hold good (`reference place` in studio.yml)."""
    at_best: SeasonField | None = None
    """When it is at its best."""
    ends_with: EndsWithField | None = None
    """What ends its season, when it isn't the plant itself."""
    vase_life: DayRangeField
    """How long it keeps in water."""
    cut_when: TextField
    """At which stage it is cut."""
    conditioning: Conditioning
    """How it is readied after the cut."""
    stems_per_bucket: CountField
    """How many stand in one bucket without crowding."""
    cutting_step: CountField
    """It is cut in multiples of this: 50 by habit, 25 if it bruises, 1 if precious."""
    grown: MoneyField
    """What a stem of your own costs you."""
    bought: MoneyField | None = None
    """What a bought stem costs you; leave it out if it can't be bought."""
    bed: TextField = ""
    """Private: the bed it grows in."""
    hazards: list[HazardField] = []
    """How it can hurt. None written means not known, never safe."""
    caution: TextField = ""
    """One more sentence of caution."""
    scent: ScentField = "none"
    """How strongly it smells."""
    about: TextField = ""
    """One or two sentences for clients."""
    source: TextField
    """Where season and facts come from; `common practice, no source` where there is none."""
    notes: TextField = ""
    """Private: what you want to remember."""

    @field_validator("colours")
    @classmethod
    def _shares_make_a_whole(cls, parts: list[ColourPart]) -> list[ColourPart]:
        return whole_colours(parts)

    @model_validator(mode="after")
    def _long_forms_have_a_length(self) -> Self:
        if self.form in LONG_FORMS and self.head_length is None:
            raise KeysDisagree(
                f"A {self.form} needs `head length` as well: "
                "how much of the stem is flower or leaf, for instance `head length: 20 cm`.",
                "form",
                "head length",
            )
        return self

    @property
    def main_colour(self) -> ColourPart:
        """The colour with the largest share."""
        return max(self.colours, key=lambda part: part.share or 0)


def whole_colours(parts: list[ColourPart]) -> list[ColourPart]:
    """The parts with every share known: one share left out is the rest. Raises ValueError."""
    if not parts:
        raise ValueError("A stem needs at least one colour, for instance `- shell e8c2b4 100 %`.")
    told = sum((Decimal(str(p.share)) for p in parts if p.share is not None), Decimal(0))
    untold = [p for p in parts if p.share is None]
    if len(untold) > 1:
        raise ValueError("Only one colour may leave its share out; write the others' shares.")
    rest = 1 - told
    if (untold and rest <= 0) or (not untold and rest != 0):
        raise ValueError(
            f"The shares add up to {plain(told * 100)} %; they should add up to 100 %."
        )
    return [p if p.share is not None else p.with_share(rest) for p in parts]


class StemFile(FileModel):
    """A group of plants and its stems, by id."""

    group: TextField
    """What this group of plants is called."""
    stems: dict[IdField, Stem]
    """Its stems, by id. An id is used once in the whole studio."""
