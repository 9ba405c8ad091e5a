"""Buckets on a floor, against circle packings that others have proven, found or bounded."""

import csv
from decimal import Decimal
from math import sqrt
from pathlib import Path

import pytest

from corymb.trade.load.packing import at_most, on_floor

SQUARES = [
    {key: int(row[key]) for key in row if key != "side_in_diameters"}
    for row in csv.DictReader(
        line
        for line in (Path(__file__).parent / "data" / "oeis_A084616.csv").open(encoding="utf-8")
        if not line.startswith("#")
    )
]


@pytest.mark.parametrize("row", SQUARES, ids=[f"area {row['area_n']}" for row in SQUARES])
def test_a_square_floor_takes_as_many_as_plain_rows_and_never_more_than_is_known_to_fit(
    row: dict[str, int],
) -> None:
    side = Decimal(row["area_n"]).sqrt()
    count = on_floor(side, side, 1).count
    assert row["best_of_grid_and_two_hex_rows"] <= count <= row["max_circles_diameter_1"]
    assert at_most(side, side, 1) == row["Oler_upper_bound"]


def test_on_most_small_squares_the_rows_are_the_best_packing_known() -> None:
    assert len(SQUARES) == 73
    best = [
        on_floor(side, side, 1).count == row["max_circles_diameter_1"]
        for row in SQUARES
        for side in [Decimal(row["area_n"]).sqrt()]
    ]
    assert sum(best) == 43


# Largest radius of n equal circles in a unit square: P. G. Szabo and others, New Approaches to
# Circle Packing in a Square (2007); closed forms r = m / (2 (1 + m)), m the smallest distance.
RADII = {
    2: sqrt(2),
    3: sqrt(6) - sqrt(2),
    4: 1.0,
    5: sqrt(2) / 2,
    7: 2 * (2 - sqrt(3)),
    9: 1 / 2,
}
PUBLISHED = {
    2: 0.292893219,
    3: 0.254333095,
    4: 0.25,
    5: 0.207106781,
    7: 0.174457630,
    9: 0.166666667,
}


@pytest.mark.parametrize("count", RADII)
def test_no_more_circles_fit_than_their_largest_radius_allows(count: int) -> None:
    radius = RADII[count] / (2 * (1 + RADII[count]))
    assert radius == pytest.approx(PUBLISHED[count], abs=1e-9)
    assert on_floor(1, 1, 2 * radius * 1.000001).count < count


# Of these, all but the lopsided 3 and 7 stand in rows.
@pytest.mark.parametrize("count", [2, 4, 5, 9])
def test_the_best_packing_is_found_where_it_stands_in_rows(count: int) -> None:
    radius = RADII[count] / (2 * (1 + RADII[count]))
    assert on_floor(1, 1, 2 * radius * 0.999999).count == count


# Floors in cm with buckets in cm: the best of a square grid and both hexagonal layouts, and the
# bound of N. Oler, Acta Mathematica 105 (1961) 19-48; both computed apart from this program.
FLOORS = {
    "180 x 120, 30": (180, 120, 30, 24, 26),
    "240 x 120, 29": (240, 120, 29, 32, 37),
    "200 x 150, 25": (200, 150, 25, 50, 53),
    "300 x 170, 28": (300, 170, 28, 66, 72),
    "280 x 140, 22": (280, 140, 22, 84, 90),
    "100 x 100, 20": (100, 100, 20, 25, 27),
}


@pytest.mark.parametrize(("long", "wide", "across", "rows", "bound"), FLOORS.values(), ids=FLOORS)
def test_a_load_floor_takes_at_least_plain_rows_and_no_more_than_the_bound(
    long: int, wide: int, across: int, rows: int, bound: int
) -> None:
    assert at_most(long, wide, across) == bound
    assert rows <= on_floor(long, wide, across).count <= bound


# 0.6 / 0.2 is 2.9999999999999996 for a float: by it a row would lose its third bucket.
@pytest.mark.parametrize(("side", "across"), [(0.6, 0.2), (60.0, 20.0), (0.9, 0.3), (4.35, 1.45)])
def test_three_rows_of_three_fit_exactly(side: float, across: float) -> None:
    assert on_floor(side, side, across).count == 9
