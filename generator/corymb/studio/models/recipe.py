"""One arrangement: its stems with counts and roles, how it is made, and its variants."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import BeforeValidator, Field, PrivateAttr, model_validator

from corymb.studio.models.base import FileModel, NamedModel, short_form
from corymb.studio.models.choices import DifficultyField, RoleField, UseField, VesselKindField
from corymb.studio.models.photo import Photo
from corymb.studio.values import lines
from corymb.studio.values.fields import (
    DurationField,
    IdField,
    LengthField,
    MoneyField,
    NamedColourField,
    NumberField,
    PriceGuideField,
    ScaleField,
    TextField,
    VolumeField,
    WholeField,
    YesNoField,
)



class RecipeLine(FileModel):
    """How many of a stem, and the colour part it plays. Short: `7 smoke-bush, depth`."""

    stem: IdField
    count: WholeField
    role: RoleField
    use: UseField | None = None
    essential: YesNoField = False
    note: TextField = ""


class Swap(FileModel):
    """One stem standing in for another. Short: `3 dahlia-shell -> 5 cosmos-white`."""

    out: IdField
    in_: IdField
    out_count: WholeField | None = None  # all of them
    in_count: WholeField | None = None  # as many as go out
    role: RoleField | None = None  # as before


class Drop(FileModel):
    """A stem left out, or so many of it. Short: `2 dahlia-shell`."""

    stem: IdField
    count: WholeField | None = None  # all of them


class Vessel(FileModel):
    """What an arrangement stands in, or how it is held."""

    kind: VesselKindField
    name: TextField
    across: LengthField | None = None
    high: LengthField | None = None
    water: VolumeField | None = None


class Sundry(FileModel):
    """Something beside the stems, with its cost. Short: `0.3 m jute twine, 0.05`."""

    name: TextField
    count: NumberField
    unit: TextField = ""
    cost: MoneyField


LineField = Annotated[RecipeLine, BeforeValidator(short_form(lines.recipe_line))]
SwapField = Annotated[Swap, BeforeValidator(short_form(lines.swap))]
DropField = Annotated[Drop, BeforeValidator(short_form(lines.drop))]
SundryField = Annotated[Sundry, BeforeValidator(short_form(lines.sundry))]


class Scales(FileModel):
    """How much more or less of everything, or of a role. Short: `120 %`."""

    all: ScaleField | None = None
    depth: ScaleField | None = None
    light: ScaleField | None = None
    accent: ScaleField | None = None


ScalesField = Annotated[Scales, BeforeValidator(short_form(lambda text: {"all": text}))]


class Changes(FileModel):
    """What a variant, or a recipe based on another, does to the stems it starts from."""

    swap: list[SwapField] = []
    add: list[LineField] = []
    drop: list[DropField] = []
    scale: ScalesField | None = None

    @property
    def any(self) -> bool:
        """Whether anything is changed at all."""
        return bool(self.swap or self.add or self.drop or self.scale)


class Variant(Changes, NamedModel):
    """A named set of changes to a recipe."""

    name: TextField
    about: TextField
    builds_on: IdField | None = None
    price: PriceGuideField | None = None
    photos: list[Photo] = []
    draft: YesNoField = False

    @model_validator(mode="after")
    def _changes_something(self) -> Self:
        if not self.any:
            raise ValueError(
                "this variant changes nothing: give it a `swap`, `add`, `drop` or `scale`."
            )
        return self


class Recipe(Changes, NamedModel):
    """One arrangement of a style."""

    name: TextField
    summary: TextField
    based_on: IdField | None = None
    difficulty: DifficultyField
    techniques: list[IdField] = []
    time: DurationField
    across: LengthField
    high: LengthField
    vessel: Vessel
    against: NamedColourField | None = None
    stems: list[LineField] = []
    sizes: dict[IdField, ScaleField] = {}
    price: PriceGuideField | None = None
    sundries: list[SundryField] = []
    method: list[TextField] = Field(min_length=1)
    looks_right_when: list[TextField] = []
    careful: list[TextField] = []
    care: TextField = ""
    photos: list[Photo] = []
    draft: YesNoField = False
    notes: TextField = ""
    variants: dict[IdField, Variant] = {}
    _style: str = PrivateAttr(default="")

    @property
    def style(self) -> str:
        """The id of its style: the folder its file lies in."""
        return self._style

    def in_style(self, style: str) -> Self:
        """The same, knowing its style; its variants know their ids."""
        self._style = style
        for variant_id, variant in self.variants.items():
            variant.with_id(variant_id)
        return self

    @model_validator(mode="after")
    def _starts_from_something(self) -> Self:
        if not self.stems and not self.based_on:
            raise ValueError(
                "`stems` is missing: list them, one a line, for instance "
                "`- 7 smoke-bush, depth`; or say which recipe this is `based on`."
            )
        return self


def inherited_keys() -> frozenset[str]:
    """The keys that a recipe based on another takes over from it when it leaves them out."""
    own: frozenset[str] = frozenset(
        "name,based on,stems,swap,add,drop,scale,photos,draft,notes,variants".split(",")
    )
    return frozenset(str(f.alias) for f in Recipe.model_fields.values()) - own


