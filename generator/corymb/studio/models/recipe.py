"""One arrangement: its stems with counts and roles, how it is made, and its variants."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import BeforeValidator, Field, PrivateAttr, model_validator

from corymb.studio.models.base import FileModel, KeysDisagree, NamedModel, short_form
from corymb.studio.models.photo import Photo
from corymb.studio.values import lines
from corymb.studio.values.fields import (
    DecimalField,
    DifficultyField,
    DurationField,
    IdField,
    LengthField,
    MoneyField,
    NamedColourField,
    PieceLengthField,
    PriceGuideField,
    RoleField,
    ScaleField,
    StemsField,
    TextField,
    UseField,
    VesselKindField,
    VolumeField,
    YesNoField,
)


class RecipeLine(FileModel):
    """How many of a stem, and the colour part it plays. Short: `7 smoke-bush, depth`."""

    stem: IdField
    """The stem, by id."""
    count: StemsField
    """How many of it."""
    role: RoleField
    """The colour part it plays."""
    use: UseField | None = None
    """The structural part it plays here, when that isn't its own."""
    essential: YesNoField = False
    """Stays in however small the size."""
    note: TextField = ""
    """A word to whoever makes it, about this stem."""


class Swap(FileModel):
    """One stem standing in for another. Short: `3 dahlia-shell -> 5 cosmos-white`."""

    out: IdField
    """The stem that goes."""
    in_: IdField
    """The stem that comes."""
    out_count: StemsField | None = None
    """How many go; left out, all of them."""
    in_count: StemsField | None = None
    """How many come; left out, as many as go."""
    role: RoleField | None = None
    """The role of what comes; left out, the role of what goes."""


class Drop(FileModel):
    """A stem left out, or so many of it. Short: `2 dahlia-shell`."""

    stem: IdField
    """The stem, by id."""
    count: StemsField | None = None
    """How many fewer; left out, all of it goes."""


class Vessel(FileModel):
    """What an arrangement stands in, or how it is held."""

    kind: VesselKindField
    """What sort of vessel, for its picture; `hand` is a tied bunch with none."""
    name: TextField
    """What you call it."""
    across: LengthField | None = None
    """How wide its mouth is."""
    high: LengthField | None = None
    """How high it is."""
    water: VolumeField | None = None
    """How much water it holds when filled for use."""


class Sundry(FileModel):
    """Something beside the stems, with its cost. Short: `0.3 m jute twine, 0.05`."""

    name: TextField
    """What it is."""
    count: DecimalField
    """How many, or how much."""
    unit: TextField = ""
    """The unit, when it is measured: m, cm, kg, g, L or ml."""
    cost: MoneyField
    """What all of it costs you."""


LineField = Annotated[RecipeLine, BeforeValidator(short_form(lines.recipe_line))]
SwapField = Annotated[Swap, BeforeValidator(short_form(lines.swap))]
DropField = Annotated[Drop, BeforeValidator(short_form(lines.drop))]
SundryField = Annotated[Sundry, BeforeValidator(short_form(lines.sundry))]


class Scales(FileModel):
    """How much more or less of everything, or of a role. Short: `120 %`."""

    all: ScaleField | None = None
    """Of everything."""
    depth: ScaleField | None = None
    """Of the stems that play depth."""
    light: ScaleField | None = None
    """Of the stems that play light."""
    accent: ScaleField | None = None
    """Of the stems that play accent."""


ScalesField = Annotated[Scales, BeforeValidator(short_form(lambda text: {"all": text}))]


class Changes(FileModel):
    """What a variant, or a recipe based on another, does to the stems it starts from."""

    swap: list[SwapField] = []
    """One stem for another, one swap a line."""
    add: list[LineField] = []
    """Stems that come in, written as in `stems`."""
    drop: list[DropField] = []
    """Stems that are left out, or so many of them."""
    scale: ScalesField | None = None
    """More or less of everything, or of a role."""

    @property
    def any(self) -> bool:
        """Whether anything is changed at all."""
        return bool(self.swap or self.add or self.drop or self.scale)


class Variant(Changes, NamedModel):
    """A named set of changes to a recipe."""

    name: TextField
    """What a client reads."""
    about: TextField
    """When or why one would choose it."""
    builds_on: IdField | None = None
    """Another variant of this recipe, whose changes come first."""
    price: PriceGuideField | None = None
    """A guide price of its own, for the regular size."""
    time: DurationField | None = None
    """How long one takes to make, when it isn't the recipe's."""
    method: list[TextField] = []
    """How this variant is made, in place of the recipe's steps, one step a line."""
    looks_right_when: list[TextField] = []
    """How one sees that it is right, in place of the recipe's signs, one sign a line."""
    careful: list[TextField] = []
    """What can hurt whoever makes it, in place of the recipe's lines."""
    care: TextField = ""
    """How the client keeps it fresh, when it isn't as for the recipe."""
    photos: list[Photo] = []
    """Photos of this variant."""
    draft: YesNoField = False
    """Not shown to clients yet."""

    @model_validator(mode="after")
    def _changes_something(self) -> Self:
        if not self.any:
            raise KeysDisagree(
                "This variant changes nothing: give it a `swap`, an `add`, a `drop` or a `scale`.",
                "swap",
                "add",
                "drop",
                "scale",
            )
        return self


class Recipe(Changes, NamedModel):
    """One arrangement of a style."""

    name: TextField
    """What a client reads."""
    summary: TextField
    """One or two sentences a client reads."""
    based_on: IdField | None = None
    """Another recipe, by id, whose stems and other keys are taken over where left out here."""
    difficulty: DifficultyField
    """How much practice it asks for."""
    techniques: list[IdField] = []
    """Lessons to have had before making it, by id."""
    time: DurationField
    """How long one takes to make."""
    across: PieceLengthField
    """How wide the finished piece is."""
    high: PieceLengthField
    """How high the finished piece is, with its vessel."""
    vessel: Vessel
    """What it stands in, or how it is held."""
    against: NamedColourField | None = None
    """The cloth or wall it is seen against."""
    stems: list[LineField] = []
    """Its stems, one a line: COUNT STEM, ROLE."""
    sizes: dict[IdField, ScaleField] = {}
    """Other sizes, as multiples of the regular one: `small: 0.6`."""
    price: PriceGuideField | None = None
    """The guide price of the regular size, shown to clients."""
    sundries: list[SundryField] = []
    """Everything beside stems: COUNT NAME, COST."""
    method: list[TextField] = Field(min_length=1)
    """How it is made, one step a line."""
    looks_right_when: list[TextField] = []
    """How one sees that it is right, one sign a line."""
    careful: list[TextField] = []
    """What can hurt whoever makes it, and how not to be hurt."""
    care: TextField = ""
    """How the client keeps it fresh."""
    photos: list[Photo] = []
    """Photos of this recipe as written."""
    draft: YesNoField = False
    """Not shown to clients yet."""
    notes: TextField = ""
    """Private: what you want to remember."""
    variants: dict[IdField, Variant] = {}
    """Named sets of changes, by id."""
    _style: str = PrivateAttr(default="")

    @property
    def style(self) -> str:
        """The id of its style: the folder its file lies in."""
        return self._kept_beside("_style")

    def in_style(self, style: str) -> Self:
        """The same, knowing its style; its variants know their ids."""
        if self.style != style:
            self._style = style
        for variant_id, variant in self.variants.items():
            variant.with_id(variant_id)
        return self

    @model_validator(mode="after")
    def _starts_from_something(self) -> Self:
        if not self.stems and not self.based_on:
            raise KeysDisagree(
                "`stems` is missing: list them, one a line, for instance "
                "`- 7 smoke-bush, depth`; or say which recipe this is `based on`.",
                "stems",
                "based on",
            )
        return self


OWN_KEYS = frozenset(
    {"name", "based on", "stems", "photos", "draft", "notes", "variants"}
    | {"swap", "add", "drop", "scale"}
)
"""What a recipe never takes over from the one it is based on."""


def inherited_keys() -> frozenset[str]:
    """The keys that a recipe based on another takes over from it when it leaves them out."""
    return frozenset(str(field.alias) for field in Recipe.model_fields.values()) - OWN_KEYS
