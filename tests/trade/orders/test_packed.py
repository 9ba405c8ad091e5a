"""What of an order travels, in what, and whether it all goes in."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import date
from typing import Any

import pytest

from corymb.studio.models import Recipe
from corymb.studio.models.studio_file import Vehicle
from corymb.studio.studio import Studio
from corymb.trade.orders.cut_days import CutDay, cut_days
from corymb.trade.orders.due import Due, Dues
from corymb.trade.orders.night_before import night_before
from corymb.trade.orders.packed import Packed, packed
from corymb.trade.season.makeable import Makeable
from tests.trade.making import recipe
from tests.trade.orders.hall import RECIPES, STEMS, order
from tests.trade.season.studio import small_studio

DAY = date(2026, 6, 18)
LINES = ["2 rose, light, essential", "2 holly, depth, essential"]


def piece(known_as: str, kind: str, wide: str, tall: str, **vessel: str) -> Recipe:
    """A piece of four stems in a vessel of its own."""
    return recipe(
        known_as,
        stems=LINES,
        across=wide,
        high=tall,
        vessel={"kind": kind, "name": kind, **vessel},
        sizes={"small": "0.25", "large": "4"},
    )


PIECES = (
    piece("cup", "jar", "20 cm", "24 cm", across="9 cm", high="10 cm", water="0.5 L"),
    piece("saucer", "bowl", "20 cm", "8 cm", across="24 cm", high="6 cm"),
    piece("tie", "hand", "35 cm", "45 cm"),
    piece("urn", "urn", "90 cm", "130 cm", across="32 cm", high="42 cm", water="9 L"),
    piece("spread", "trough", "150 cm", "30 cm", across="60 cm", high="10 cm"),
    piece("button", "wire", "6 cm", "10 cm"),
    piece("wreath", "ring", "36 cm", "6 cm"),
)
VAN = {"name": "small van", "floor": "170 x 120 cm", "height": "110 cm"}
CART = {"name": "cart", "floor": "60 x 50 cm", "height": "100 cm"}
LORRY = {"name": "lorry", "floor": "400 x 200 cm", "height": "220 cm"}


def studio_with(vehicles: list[dict[str, str]], *lines: str, **keys: Any) -> Studio:
    """A studio with one order on a day in June."""
    made = small_studio(*STEMS, *RECIPES, *PIECES)
    written = [Vehicle.model_validate(vehicle) for vehicle in vehicles]
    house = made.house.model_copy(update={"vehicles": written})
    return replace(made, house=house, orders={"supper": order("supper", f"{DAY}", *lines, **keys)})


def the_order(studio: Studio) -> tuple[Due, CutDay]:
    """Its order on its day, and the day it is cut."""
    makeable = Makeable.of(studio)
    (due,) = Dues(studio, makeable).between(DAY, DAY)
    (day,) = cut_days([due], studio, makeable)
    return due, day


def pack(*lines: str, vehicles: list[dict[str, str]] | None = None, **keys: Any) -> Packed:
    """An order, packed."""
    studio = studio_with([VAN] if vehicles is None else vehicles, *lines, **keys)
    return packed(*the_order(studio), studio)


STANDS = {
    # the line, what stands on the floor: how, how wide, how high, and how often
    "a jar is as wide as its heads": ("3 cup", [("piece", 20, 24)] * 3),
    "a bowl is as wide as itself": ("1 saucer", [("piece", 24, 8)]),
    "a quarter of the stems, half the width": ("1 cup, small", [("piece", 10, 24)]),
    "four times the stems, twice the width": ("1 cup, large", [("piece", 40, 48)]),
    "hand-ties stand one to a bucket": ("2 tie", [("hand-tie", 35, 45)] * 2),
    "an urn too high for the van travels empty": ("1 urn", [("empty vessel", 32, 42)]),
    "so does a trough too wide for its floor": ("1 spread", [("empty vessel", 60, 10)]),
    "what is worn takes none of the floor": ("4 button", []),
}


@pytest.mark.parametrize(("line", "stands"), STANDS.values(), ids=STANDS)
def test_a_piece_stands_on_the_floor_as_it_travels(
    line: str, stands: list[tuple[str, float, float]]
) -> None:
    found = [
        (item.how, item.upright.across_cm, item.upright.tall_cm)
        for item in pack(line).items
        if item.how != "bucket"
    ]
    assert found == stands


BOXES = {"24 in a box of 60 x 40 cm": ("24 button", 1), "one ring": ("3 wreath", 3)}


@pytest.mark.parametrize(("line", "boxes"), BOXES.values(), ids=BOXES)
def test_what_is_worn_lies_in_boxes(line: str, boxes: int) -> None:
    (boxed,) = pack(line).boxed
    assert (boxed.pieces, boxed.boxes) == (int(line.split()[0]), boxes)


def test_more_buttons_than_lie_in_one_box_take_another() -> None:
    (boxed,) = pack("60 button").boxed
    assert boxed.boxes == 2


def test_what_is_too_high_for_the_vehicle_is_made_up_there_and_its_stems_go_in_buckets() -> None:
    there = pack("1 urn", "1 cup")
    assert there.there == (1,)
    # Of four a tenth is spare, so one, and it goes with the urn.
    assert stems_in(there.buckets.going) == {"rose": 3, "holly": 3}
    assert stems_in(there.buckets.bench) == {"rose": 2, "holly": 2}
    assert [item.how for item in there.items].count("bucket") == len(there.buckets.going)


def test_where_the_client_collects_nobody_goes_along_to_make_it_up() -> None:
    fetched = pack("1 urn", "1 cup", handover="collection")
    assert fetched.there == ()
    assert [item.how for item in fetched.items] == ["piece", "piece"]
    assert fetched.load and not fetched.load.whole


def stems_in(buckets: Any) -> dict[str, int]:
    counts: Counter[str] = Counter()
    for bucket in buckets:
        counts.update({part.lot.stem: part.count for part in bucket.parts})
    return dict(counts)


ORDERS = {
    "all made up": ("6 cup", "1 tie"),
    "some in buckets": ("6 cup", "3 loose, in buckets"),
    "all in buckets": ("40 loose, in buckets",),
    "from the mix": ("6 cup", "1 jar, from the mix"),
    "made up there": ("2 urn", "60 jar"),
}


@pytest.mark.parametrize("lines", ORDERS.values(), ids=ORDERS)
def test_overnight_every_stem_of_the_order_stands_in_one_of_its_buckets(
    lines: tuple[str, ...],
) -> None:
    studio = studio_with([VAN], *lines)
    due, day = the_order(studio)
    loose = {line.number for line in due.lines if line.piece.in_buckets}
    buckets = night_before(due, day, studio, loose)
    wanted = Counter(day.stems[due.id])
    for mix in day.mixed:
        wanted.update(mix.left_over)
    assert stems_in(buckets.all) == dict(wanted)
    assert {bucket.order for bucket in buckets.all} == {due.id}


@pytest.mark.parametrize("lines", ORDERS.values(), ids=ORDERS)
def test_everything_on_the_list_has_a_place_on_one_trip(lines: tuple[str, ...]) -> None:
    one = pack(*lines)
    assert one.load and one.load.whole
    placed = [place.bucket for trip in one.load.trips for place in trip.places]
    assert sorted(placed) == list(range(len(one.items)))


def test_a_pieces_weight_is_its_water_and_its_stems() -> None:
    (item,) = pack("1 cup").items
    grams = sum(STEM.weight.grams * 2 for STEM in STEMS if STEM.id in ("rose", "holly"))
    assert item.kg == pytest.approx(0.5 + grams / 1000, abs=0.01)


CHOICES = {
    "the order's own, though it takes more trips": ("12 cup", {"vehicle": "cart"}, "cart"),
    "the one with the fewest trips": ("12 cup", {}, "small van"),
    "of two that do, the smaller": ("2 cup", {}, "cart"),
    "what can be made up goes before": ("1 urn", {}, "lorry"),
}


@pytest.mark.parametrize(("line", "keys", "name"), CHOICES.values(), ids=CHOICES)
def test_the_vehicle_is(line: str, keys: dict[str, str], name: str) -> None:
    load = pack(line, vehicles=[VAN, CART, LORRY], **keys).load
    assert load and load.space.name == name


def test_of_two_vehicles_the_one_that_needs_no_stem_cut_shorter() -> None:
    low = {**CART, "name": "low cart", "floor": "50 x 50 cm", "height": "50 cm"}
    load = pack("1 loose, in buckets", vehicles=[low, CART]).load
    assert load and load.space.name == "cart"


def test_without_a_vehicle_things_are_listed_and_not_placed() -> None:
    one = pack("3 cup", "1 urn", vehicles=[])
    assert one.load is None
    assert [item.how for item in one.items] == ["piece"] * 4
    assert one.there == ()
