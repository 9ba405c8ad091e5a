"""The studio itself: name and place, money, cutting habits, buckets, vehicles, styles."""

from __future__ import annotations

from datetime import time
from decimal import Decimal
from typing import Self

from pydantic import Field, field_validator, model_validator

from corymb.studio.models.base import FileModel, KeysDisagree, NamedModel
from corymb.studio.values.fields import (
    ClockField,
    CountField,
    CurrencyField,
    DayRangeField,
    DaysBeforeField,
    DurationField,
    EmailField,
    FloorField,
    HazardField,
    HeightField,
    HoursOfWorkField,
    IdField,
    LanguageField,
    LatitudeField,
    LengthField,
    LengthRangeField,
    LengthUnitField,
    LongitudeField,
    MarkUpField,
    MoneyField,
    NumberField,
    PeopleField,
    ShareField,
    StylePlaceField,
    TextField,
    TimeZoneField,
    VolumeField,
    WeightField,
    WholeField,
    YesNoField,
)
from corymb.studio.values.number import plain
from corymb.studio.values.share import Share
from corymb.studio.values.time import Duration


class ReferencePlace(FileModel):
    """Where the book dates of the stems' seasons are true."""

    name: TextField
    """What the place is called."""
    latitude: LatitudeField
    """Degrees; north is plus, south is minus."""
    longitude: LongitudeField
    """Degrees; east is plus, west is minus."""
    height: HeightField
    """How high above the sea."""


class Place(ReferencePlace):
    """Where the studio grows and makes."""

    time_zone: TimeZoneField
    """Its time zone, as continent and city."""


class Contact(FileModel):
    """How clients reach the studio."""

    email: EmailField
    """Where clients write."""
    phone: TextField = ""
    """Where clients call."""
    answer_within: DayRangeField | None = None
    """How soon they hear from you."""


class MarkUp(FileModel):
    """What the costs are multiplied by to make a price."""

    grown: MarkUpField = Decimal(1)
    """Of stems of your own."""
    bought: MarkUpField = Decimal(1)
    """Of bought stems."""
    sundries: MarkUpField = Decimal(1)
    """Of everything beside stems."""


class Money(FileModel):
    """Currency, wages, allowances and tax."""

    currency: CurrencyField
    """Three letters: EUR, GBP."""
    hourly_rate: MoneyField
    """What an hour at the bench costs you."""
    overhead: ShareField
    """Rent, van, insurance: on top of stems, sundries and labour."""
    waste: ShareField
    """Stems that are cut and never reach a piece."""
    mark_up: MarkUp = MarkUp()
    """Cost times this makes the price."""
    tax: ShareField
    """The rate of tax on what you sell. Check today's with your accountant."""
    tax_in_prices: YesNoField
    """Whether the prices you show hold the tax already."""
    round_prices_to: MoneyField
    """Prices are rounded up to the next whole multiple of this."""

    @field_validator("waste")
    @classmethod
    def _leaves_something(cls, waste: Share) -> Share:
        if waste.fraction == 1:
            raise ValueError(
                f"‘{waste}’ leaves nothing: of what is cut something must reach a piece, so waste "
                "is below 100 %; 8 % is usual."
            )
        return waste


class Cutting(FileModel):
    """The studio's habits at the cut: round numbers, spare, and what is left standing."""

    habit_step: CountField = 50
    """Most stems are cut in multiples of this."""
    delicate_step: CountField = 25
    """Stems that bruise are cut in multiples of this."""
    precious_step: CountField = 1
    """Precious stems are cut in multiples of this."""
    small_step: CountField = 10
    """A stem is cut in multiples of this where a day wants less than half its own step, or where
    whole steps come to more than may be cut; where these do too, it is cut one by one.
    """
    spare: ShareField
    """More than the recipes ask, for breakages and second thoughts."""
    keep_standing: ShareField
    """Never cut: left for the bees, for seed and for next week."""


class Work(FileModel):
    """When in the day you do what, and how many of you there are.

    The defaults are house defaults: common practice, no source.
    """

    people: PeopleField = 2
    """How many work at it: one practised hand, the others as helpers."""
    cut_at: ClockField = time(6, 30)
    """When the cut begins, if it is light by then."""
    cut_at_in_heat: ClockField = time(5)
    """When it begins on hot days."""
    cut_hours: HoursOfWorkField = 4.0
    """A morning's cut takes no longer: then the sun is on the beds."""
    stems_an_hour: CountField = 150
    """How many stems one person cuts and strips in an hour."""
    make_at: ClockField = time(8)
    """When making begins."""
    hours_a_day: HoursOfWorkField = 7.0
    """A day at the bench, breaks left out."""
    make_days_before: DaysBeforeField = 1
    """How many days before handing over the making is done."""
    before_delivery: DurationField = Duration(120)
    """From loading up to the hour of use: driving and setting out."""
    before_collection: DurationField = Duration(240)
    """From the client's coming for them to the hour of use."""


class Bucket(FileModel):
    """A bucket flowers stand in."""

    name: TextField
    """What you call it."""
    across: LengthField
    """How wide at its rim."""
    high: LengthField
    """How high."""
    water: VolumeField
    """How much you fill it with."""
    empty_weight: WeightField
    """What it weighs dry."""


class Vehicle(FileModel):
    """What flowers are carried in, by its load floor."""

    name: TextField
    """What you call it; orders name it so."""
    floor: FloorField
    """The flat load floor: length x width."""
    height: LengthField
    """From the floor to the roof."""
    note: TextField = ""
    """A word to whoever loads it."""


class Style(NamedModel):
    """A family of arrangement, and what may go into it."""

    name: TextField
    """One of them."""
    plural: TextField
    """Several of them."""
    about: TextField
    """One sentence for clients."""
    order: WholeField = 100
    """The place in menus, lowest first."""
    place: StylePlaceField
    """What it is near: food, skin, the hand, or none of them."""
    stem_length: LengthRangeField
    """What a stem is cut to for it."""
    heaviest_stem: WeightField
    """A heavier stem tips or drags it."""
    excludes: list[HazardField] = []
    """Hazards that it leaves out; a build names each one that gets in."""
    known_object: TextField = ""
    """What its size is compared with, so that a client can judge it."""


class ColourThresholds(FileModel):
    """From where on something is said about a mix of colours.

    Lightness is CIELAB's, from 0 (black) to 100 (white). The defaults are house defaults: common
    practice, no source.
    """

    flat_below: NumberField = 12.0
    """Lightness hardly varies: nothing stands out."""
    sombre_below: NumberField = 38.0
    """Dark altogether."""
    washed_out_above: NumberField = 78.0
    """Pale altogether."""
    cold_above: ShareField = Share(Decimal("0.6"))
    """Cool colours take more than this of what is seen."""
    alike_below: NumberField = 18.0
    """Hues lie so many degrees apart, as a rule, and lightness varies little: all matches."""
    lost_within: NumberField = 15.0
    """Nearer than this to the cloth or wall behind (CIEDE2000), a colour isn't seen against it."""
    lost_above: ShareField = Share(Decimal("0.5"))
    """More than this of what is seen is lost so against the cloth or wall."""
    accent_above: ShareField = Share(Decimal("0.25"))
    """A stem that takes more than this is no accent any more."""
    photo_lacks_above: ShareField = Share(Decimal("0.2"))
    """More than this of a look has colours that nothing in a photo of it comes near."""

    @field_validator("flat_below", "sombre_below", "washed_out_above")
    @classmethod
    def _is_a_lightness(cls, lightness: float) -> float:
        return _within(lightness, 100, "lightness", "0, for black, to 100, for white")

    @field_validator("alike_below")
    @classmethod
    def _is_an_angle(cls, degrees: float) -> float:
        return _within(degrees, 180, "spread of hues", "0 degrees, for one hue, to 180")

    @field_validator("lost_within")
    @classmethod
    def _is_a_distance(cls, within: float) -> float:
        return _within(within, 100, "distance of colours", "0, for the same colour, to 100")

    @model_validator(mode="after")
    def _leaves_a_middle(self) -> Self:
        if self.sombre_below >= self.washed_out_above:
            raise KeysDisagree(
                "`sombre below` isn't below `washed out above`, so every mix would be one or the "
                "other: 38 and 78 are usual.",
                "sombre below",
                "washed out above",
            )
        return self


def _within(value: float, most: float, noun: str, ends: str) -> float:
    if not 0 <= value <= most:
        raise ValueError(f"‘{plain(value)}’ is not a {noun}: it goes from {ends}.")
    return value


class Swapping(FileModel):
    """How far a stem that stands in for another may go.

    The defaults are house defaults: common practice, no source.
    """

    colour_within: NumberField = 20.0
    """How far its colours may be from those it stands in for (CIEDE2000; 1 is just seen)."""
    most_of_a_piece: ShareField = Share(Decimal("0.5"))
    """The share of what is seen of a piece that all its swaps may take together."""
    lines_at_most: WholeField = 3
    """How many of its lines may be swapped at once; 0 offers no swaps at all."""

    @field_validator("colour_within")
    @classmethod
    def _is_a_distance(cls, within: float) -> float:
        if within < 0:
            raise ValueError(
                f"‘{plain(within)}’ is not a distance of colours: it starts at 0, for the same "
                "colour, and 20 is usual."
            )
        return within


class StudioFile(FileModel):
    """The studio's own file, `studio.yml`."""

    name: TextField
    """The studio's name."""
    tagline: TextField
    """A few words under the name."""
    about: TextField = ""
    """One or two sentences on the front page."""
    language: LanguageField = "en"
    """Language and country: what pages are written in, their dates and money too."""
    lengths_in: LengthUnitField = "cm"
    """In what pages show lengths: cm or inches. Files may be written in either."""
    place: Place
    """Where the beds are."""
    reference_place: ReferencePlace
    """Where the dates under `in season` hold good."""
    contact: Contact
    """How clients reach you."""
    money: Money
    """Currency, wages, allowances, tax."""
    cutting: Cutting
    """How you cut."""
    work: Work = Work()
    """When in the day you do what, and how many of you there are."""
    buckets: list[Bucket] = Field(min_length=1)
    """What stems stand and travel in."""
    vehicles: list[Vehicle] = []
    """What flowers are carried in."""
    styles: dict[IdField, Style]
    """Families of arrangement, by id; each id is also a folder in recipes/."""
    colour: ColourThresholds = ColourThresholds()
    """From where on a mix counts as flat, sombre, washed out, cold, all alike or lost."""
    swaps: Swapping = Swapping()
    """How far stems that stand in for others may go."""
