"""What is wanted on a date, or again and again: recipes, quantities, where, when and how."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import BeforeValidator, Field, model_validator

from corymb.studio.models.base import FileModel, KeysDisagree, NamedModel, short_form
from corymb.studio.values import lines
from corymb.studio.values.fields import (
    ClockSpanField,
    DateField,
    EmailField,
    HandoverField,
    IdField,
    LightField,
    PiecesField,
    RecurrenceField,
    SettingField,
    ShareField,
    TextField,
    WholeField,
    YesNoField,
)


class Client(FileModel):
    """Who ordered. Private."""

    name: TextField
    """Whom the order is for."""
    email: EmailField | None = None
    """Where to write to."""
    phone: TextField = ""
    """Where to call."""


class Where(FileModel):
    """Where the flowers will stand, and in what light."""

    place: TextField
    """Where the flowers will stand."""
    setting: SettingField
    """Under a roof or not: it decides about heat, wind and light."""
    light: LightField
    """The light they are seen in."""


class OrderLine(FileModel):
    """So many of one recipe. Short: `6 hedgerow-jar, later, small, in buckets`."""

    quantity: PiecesField
    """How many."""
    recipe: IdField
    """The recipe, by id."""
    variant: IdField | None = None
    """One of its variants."""
    size: IdField | None = None
    """One of its sizes; left out, the regular one."""
    in_buckets: YesNoField = False
    """Sent as loose stems in buckets, not made up."""
    from_the_mix: YesNoField = False
    """Made from the order's other flowers: nothing is cut for it."""


OrderLineField = Annotated[OrderLine, BeforeValidator(short_form(lines.order_line))]


class OrderBase(NamedModel):
    """What one-off and standing orders share."""

    name: TextField
    """What you call the order."""
    client: Client
    """Private: who ordered."""
    hours: ClockSpanField | None = None
    """From when to when the flowers are looked at."""
    where: Where
    """Where they will stand, and in what light."""
    handover: HandoverField
    """How they reach the client."""
    vehicle: TextField = ""
    """The vehicle they travel in, by its name in studio.yml."""
    spare: ShareField | None = None
    """How many more stems than the recipes ask, for breakages; left out, the studio's habit."""
    notes: TextField = ""
    """Private: what you want to remember."""
    learnt: TextField = ""
    """Private: what to do better next time."""


class Order(OrderBase):
    """What is wanted on one date."""

    date: DateField
    """The day the flowers are wanted."""
    lines: list[OrderLineField] = Field(min_length=1)
    """What is wanted, one recipe a line."""
    visit_of: IdField | None = None
    """The standing order whose visit on this day it stands for, by id."""
    used: dict[IdField, WholeField] = {}
    """Stems that really went in, by stem id, counted afterwards."""
    minutes: WholeField | None = None
    """How long the making really took."""


class StandingOrder(OrderBase):
    """An order that repeats."""

    repeats: RecurrenceField
    """How often: `weekly on Tuesday`, or an RFC 5545 rule."""
    from_: DateField
    """The first day."""
    until: DateField | None = None
    """The last day; left out, it goes on."""
    skip: list[DateField] = []
    """Days on which nothing is sent."""
    moved: dict[DateField, DateField] = {}
    """Days that changed: planned day, colon, real day."""
    lines: list[OrderLineField] = []
    """What is sent each time, one recipe a line."""
    rotation: list[IdField] = []
    """Recipes sent in turn, by id."""

    @model_validator(mode="after")
    def _sends_something(self) -> Self:
        if not self.lines and not self.rotation:
            raise KeysDisagree(
                "A standing order needs `lines`, like `- 1 hall-urn`, or a `rotation` of recipes.",
                "lines",
                "rotation",
            )
        if self.until is not None and self.until < self.from_:
            raise KeysDisagree("`until` is before `from`: swap the two dates.", "until", "from")
        return self
