"""What is wanted on a date, or again and again: recipes, quantities, where, when and how."""

from __future__ import annotations

from datetime import date
from typing import Annotated, Self

from pydantic import BeforeValidator, Field, model_validator

from corymb.studio.models.base import FileModel, NamedModel, short_form
from corymb.studio.models.choices import HandoverField, LightField, SettingField
from corymb.studio.values import lines
from corymb.studio.values.fields import (
    ClockSpanField,
    DateField,
    EmailField,
    IdField,
    RecurrenceField,
    ShareField,
    TextField,
    WholeField,
    YesNoField,
)


class Client(FileModel):
    """Who ordered. Private."""

    name: TextField
    email: EmailField | None = None
    phone: TextField = ""


class Where(FileModel):
    """Where the flowers will stand, and in what light."""

    place: TextField
    setting: SettingField
    light: LightField


class OrderLine(FileModel):
    """So many of one recipe. Short: `6 hedgerow-jar, later, small, in buckets`."""

    quantity: WholeField
    recipe: IdField
    variant: IdField | None = None
    size: IdField | None = None
    in_buckets: YesNoField = False
    from_the_mix: YesNoField = False


OrderLineField = Annotated[OrderLine, BeforeValidator(short_form(lines.order_line))]


class OrderBase(NamedModel):
    """What one-off and standing orders share."""

    name: TextField
    client: Client
    hours: ClockSpanField | None = None
    where: Where
    handover: HandoverField
    vehicle: TextField = ""
    spare: ShareField | None = None  # the studio's habit
    notes: TextField = ""
    learnt: TextField = ""


class Order(OrderBase):
    """What is wanted on one date."""

    date: DateField
    lines: list[OrderLineField] = Field(min_length=1)
    used: dict[IdField, WholeField] = {}
    minutes: WholeField | None = None


class StandingOrder(OrderBase):
    """An order that repeats."""

    repeats: RecurrenceField
    from_: DateField
    until: DateField | None = None
    skip: list[DateField] = []
    moved: dict[DateField, DateField] = {}
    lines: list[OrderLineField] = []
    rotation: list[IdField] = []

    @model_validator(mode="after")
    def _sends_something(self) -> Self:
        if not self.lines and not self.rotation:
            raise ValueError("a standing order needs `lines`, or a `rotation` of recipes.")
        if self.until is not None and self.until < self.from_:
            raise ValueError("`until` is before `from`; swap the two dates.")
        return self

    def moved_to(self, planned: date) -> date:
        """The day a planned visit really takes place."""
        return self.moved.get(planned, planned)
