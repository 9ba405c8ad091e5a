"""Trips: how often a vehicle goes, what it can't take, and what a client is told."""

import pytest

from corymb.trade.load.buckets import Lot, fill
from corymb.trade.load.kinds import BucketKind
from corymb.trade.load.telling import collection_words, loaded_words, trimming_words
from corymb.trade.load.trips import LoadSpace, Upright, load

VAN = LoadSpace("small van", 170, 120, 110, "seats stay up")
ESTATE = LoadSpace("estate car", 165, 100, 75, "rear seats folded flat")


def upright(tall: float, trimmed: float | None = None, across: float = 29) -> Upright:
    """A bucket so high with its stems; it can't be trimmed unless said otherwise."""
    return Upright(across, tall, tall if trimmed is None else trimmed)


TALL = upright(70)

TRIPS = {
    # buckets, vehicle, buckets in each trip. The van is 5.86 x 4.13 buckets: across it four rows
    # of 4, then 3 and 4 in the gaps. The car is 5.69 x 3.45: across it six rows of 3, leaning.
    "one trip": ([TALL] * 20, VAN, [20]),
    "a second trip for the last": ([TALL] * 24, VAN, [23, 1]),
    "the smaller floor": ([TALL] * 24, ESTATE, [18, 6]),
    "nothing": ([], VAN, []),
}


@pytest.mark.parametrize(("buckets", "space", "counts"), TRIPS.values(), ids=TRIPS)
def test_a_vehicle_goes_as_often_as_its_floor_asks(
    buckets: list[Upright], space: LoadSpace, counts: list[int]
) -> None:
    told = load(buckets, space)
    assert [len(trip.places) for trip in told.trips] == counts
    carried = [place.bucket for trip in told.trips for place in trip.places]
    assert sorted(carried) == list(range(len(buckets)))


def test_what_is_too_tall_or_too_wide_is_named_and_left_out() -> None:
    told = load([TALL, upright(111), upright(50, across=121), upright(110)], VAN)
    assert (told.too_tall, told.too_wide, told.whole) == ((1,), (2,), False)
    assert [[place.bucket for place in trip.places] for trip in told.trips] == [[0, 3]]


TRIMS = {
    # buckets, what to trim, what is too tall; the car is 75 cm high
    "under the roof": ([upright(75, 40)], (), ()),
    "over it and may be shorter": ([TALL, upright(90, 75)], (1,), ()),
    "over it however short": ([TALL, upright(90, 76)], (), (1,)),
    "as wide as the floor": ([upright(70, across=100)], (), ()),
    "over it and too wide besides": ([upright(90, 60, across=101)], (), ()),
}


@pytest.mark.parametrize(("buckets", "trim", "tall"), TRIMS.values(), ids=TRIMS)
def test_stems_are_trimmed_to_the_roof_where_they_may_be(
    buckets: list[Upright], trim: tuple[int, ...], tall: tuple[int, ...]
) -> None:
    told = load(buckets, ESTATE)
    assert (told.to_trim, told.too_tall) == (trim, tall)
    assert told.too_wide == tuple(i for i, one in enumerate(buckets) if one.across_cm > 100)


def test_whoever_loads_is_told_what_to_trim() -> None:
    assert trimming_words(load([TALL], ESTATE)) == ""
    assert trimming_words(load([upright(90, 60)] * 6 + [TALL], ESTATE)) == (
        "Cut the stems in 6 buckets to 75 cm, or they touch the roof of the estate car."
    )


def test_a_filled_bucket_stands_as_high_as_its_stems_and_as_low_as_they_may_be_cut() -> None:
    lots = [Lot("a", 5, 20, 40, 90, 20), Lot("b", 5, 20, 60, 70, 20)]
    (filled,) = fill("supper", lots, [BucketKind("tall bucket", 29, 38, 5, 0.9)])
    assert Upright.of(filled) == Upright(29, 90, 60)


SEATS = [
    ("seats stay up", "up"),
    ("rear seats folded flat", "down"),
    ("fold the back seats", "down"),
    ("Seats down. Watch the lamp.", "down"),
    ("seats stay up, flat boards under the buckets", "up"),
    ("the seats don't go down", None),
    ("mind the seats", None),
    ("load from the back, lie nothing down", None),
    ("", None),
]


@pytest.mark.parametrize(("note", "seats"), SEATS)
def test_a_note_says_whether_seats_are_down(note: str, seats: str | None) -> None:
    assert LoadSpace("van", 170, 120, 110, note).seats == seats


@pytest.mark.parametrize(
    ("buckets", "space", "words"),
    [
        ([TALL], VAN, "On the floor stand 1 bucket: one trip with a small van."),
        ([TALL] * 24, ESTATE, "On the floor stand 24 buckets: two trips with an estate car."),
        (
            [TALL, upright(80)],
            ESTATE,
            "On the floor stand 2 buckets, 1 of them too tall or too wide for an estate car.",
        ),
        (
            [upright(80), upright(70, across=101)],
            ESTATE,
            "On the floor stand 2 buckets, 2 of them too tall or too wide for an estate car.",
        ),
        ([], VAN, ""),
    ],
)
def test_whoever_loads_hears_in_how_many_trips_all_of_it_goes(
    buckets: list[Upright], space: LoadSpace, words: str
) -> None:
    assert loaded_words(load(buckets, space)) == words


@pytest.mark.parametrize(
    ("buckets", "space", "words"),
    [
        (
            [TALL] * 14,
            ESTATE,
            "Your flowers stand in 14 buckets and have to stay upright. Bring an estate car, its "
            "rear seats down, or as much room: a flat floor of 165 x 100 cm, 75 cm high inside. "
            "That is one trip.",
        ),
        (
            [TALL] * 100,
            VAN,
            "Your flowers stand in 100 buckets and have to stay upright. Bring a small van, its "
            "seats up, or as much room: a flat floor of 170 x 120 cm, 110 cm high inside. "
            "That is 5 trips.",
        ),
        (
            [upright(80)],
            ESTATE,
            "Your flowers stand in 1 bucket, 1 of them too tall or too wide for an estate car: "
            "ask us how to come.",
        ),
        ([], VAN, ""),
    ],
)
def test_a_client_who_collects_hears_what_to_bring(
    buckets: list[Upright], space: LoadSpace, words: str
) -> None:
    assert collection_words(load(buckets, space)) == words
