"""The studio itself: its name and place, its money, cutting habits, buckets, vehicles and styles."""

from __future__ import annotations

from pydantic import Field

from corymb.studio.models.base import FileModel, NamedModel
from corymb.studio.models.choices import HazardField, StylePlaceField
from corymb.studio.values.fields import (
    CurrencyField,
    DayRangeField,
    EmailField,
    FloorField,
    IdField,
    LanguageField,
    LatitudeField,
    LengthField,
    LengthRangeField,
    LongitudeField,
    MoneyField,
    NumberField,
    ShareField,
    TextField,
    TimeZoneField,
    VolumeField,
    WeightField,
    WholeField,
    YesNoField,
)


class ReferencePlace(FileModel):
    """Where the book dates of the stems' seasons are true."""

    name: TextField
    latitude: LatitudeField
    longitude: LongitudeField
    height: LengthField


class Place(ReferencePlace):
    """Where the studio grows and makes."""

    time_zone: TimeZoneField


class Contact(FileModel):
    """How clients reach the studio."""

    email: EmailField
    phone: TextField = ""
    answer_within: DayRangeField | None = None


class MarkUp(FileModel):
    """What the costs are multiplied by to make a price."""

    grown: NumberField = 1.0
    bought: NumberField = 1.0
    sundries: NumberField = 1.0


class Money(FileModel):
    """Currency, wages, allowances and tax."""

    currency: CurrencyField
    hourly_rate: MoneyField
    overhead: ShareField
    waste: ShareField
    mark_up: MarkUp = MarkUp()
    tax: ShareField
    tax_in_prices: YesNoField
    round_prices_to: MoneyField


class Cutting(FileModel):
    """The studio's habits at the cut: round numbers, spare, and what is left standing."""

    habit_step: WholeField = 50
    delicate_step: WholeField = 25
    precious_step: WholeField = 1
    spare: ShareField
    keep_standing: ShareField


class Bucket(FileModel):
    """A bucket flowers stand in."""

    name: TextField
    across: LengthField
    high: LengthField
    water: VolumeField
    empty_weight: WeightField


class Vehicle(FileModel):
    """What flowers are carried in, by its load floor."""

    name: TextField
    floor: FloorField
    height: LengthField
    note: TextField = ""


class Style(NamedModel):
    """A family of arrangement, and what may go into it."""

    name: TextField
    plural: TextField
    about: TextField
    order: WholeField = 100
    place: StylePlaceField
    stem_length: LengthRangeField
    heaviest_stem: WeightField
    excludes: list[HazardField] = []
    known_object: TextField = ""


class ColourThresholds(FileModel):
    """When a mix is called flat, sombre or washed out (CIELAB lightness, 0 to 100).

    The defaults are house defaults: common practice, no source.
    """

    flat_below: NumberField = 12.0
    sombre_below: NumberField = 38.0
    washed_out_above: NumberField = 78.0


class StudioFile(FileModel):
    """The studio's own file, `studio.yml`."""

    name: TextField
    tagline: TextField
    about: TextField = ""
    language: LanguageField = "en"
    place: Place
    reference_place: ReferencePlace
    contact: Contact
    money: Money
    cutting: Cutting
    buckets: list[Bucket] = Field(min_length=1)
    vehicles: list[Vehicle] = []
    styles: dict[IdField, Style]
    colour: ColourThresholds = ColourThresholds()
