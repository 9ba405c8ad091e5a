"""One cut material in one colour, with its facts; and a file of them, a group of plants."""

from __future__ import annotations

from decimal import Decimal
from typing import Self

from pydantic import field_validator, model_validator

from corymb.studio.models.base import FileModel, NamedModel
from corymb.studio.models.choices import (
    EndsWithField,
    FormField,
    HazardField,
    ScentField,
    UseField,
)
from corymb.studio.values.colour import ColourPart
from corymb.studio.values.fields import (
    ColourPartField,
    DayRangeField,
    DurationField,
    HexField,
    IdField,
    LengthField,
    LengthRangeField,
    MoneyField,
    SeasonField,
    TextField,
    WeightField,
    WholeField,
)
from corymb.studio.words import LONG_FORMS


class Conditioning(FileModel):
    """How a stem is readied after the cut: how long it stands in water, and what to do."""

    hours: WholeField
    do: TextField


class Stem(NamedModel):
    """A flower, leaf, grass, berry or pod as it is cut."""

    name: TextField
    botanical: TextField
    use: UseField
    form: FormField
    colours: list[ColourPartField]
    green: HexField = "#5d7350"
    head: LengthField
    head_length: LengthField | None = None
    heads_per_stem: WholeField = 1
    length: LengthRangeField
    weight: WeightField
    in_season: SeasonField
    at_best: SeasonField | None = None
    ends_with: EndsWithField | None = None
    vase_life: DayRangeField
    cut_when: TextField
    conditioning: Conditioning
    stems_per_bucket: WholeField
    cutting_step: WholeField
    grown: MoneyField
    bought: MoneyField | None = None
    bed: TextField = ""
    hazards: list[HazardField] = []
    caution: TextField = ""
    scent: ScentField = "none"
    about: TextField = ""
    source: TextField
    notes: TextField = ""

    @field_validator("colours")
    @classmethod
    def _shares_make_a_whole(cls, parts: list[ColourPart]) -> list[ColourPart]:
        return whole_colours(parts)

    @model_validator(mode="after")
    def _long_forms_have_a_length(self) -> Self:
        if self.form in LONG_FORMS and self.head_length is None:
            raise ValueError(
                f"a {self.form} needs `head length` as well: "
                "how much of the stem is flower or leaf, for instance `head length: 20 cm`."
            )
        return self

    @property
    def main_colour(self) -> ColourPart:
        """The colour with the largest share."""
        return max(self.colours, key=lambda part: part.share or 0)


def whole_colours(parts: list[ColourPart]) -> list[ColourPart]:
    """The parts with every share known: one share left out is the rest. Raises ValueError."""
    if not parts:
        raise ValueError("a stem needs at least one colour, for instance `- shell e8c2b4 100 %`.")
    told = sum((Decimal(str(p.share)) for p in parts if p.share is not None), Decimal(0))
    untold = [p for p in parts if p.share is None]
    if len(untold) > 1:
        raise ValueError("only one colour may leave its share out; write the others' shares.")
    rest = 1 - told
    if (untold and rest <= 0) or (not untold and rest != 0):
        raise ValueError(
            f"the shares add up to {told * 100:f} %; they should add up to 100 %.".replace(
                ".00 %", " %"
            )
        )
    return [p if p.share is not None else p.with_share(rest) for p in parts]


class StemFile(FileModel):
    """A group of plants and its stems, by id."""

    group: TextField
    stems: dict[IdField, Stem]
