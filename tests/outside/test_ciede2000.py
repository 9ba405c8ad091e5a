"""The difference of two colours, against published pairs and another library's.

Sources: G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30(1):21-30, 2005, table 1
(`data/sharma_2005_ciede2000.csv`); coloraide's `delta_e(method="2000")`.
"""

from __future__ import annotations

import csv
from math import degrees
from pathlib import Path
from random import Random

import pytest
from coloraide import Color

from corymb.trade.colour.ciede2000 import Lab, between, ciede2000, difference, lab_of

FILE = Path(__file__).parent / "data" / "sharma_2005_ciede2000.csv"

Pair = tuple[Lab, Lab, float]


def rows() -> dict[str, dict[str, float]]:
    with FILE.open(encoding="utf-8", newline="") as lines:
        found = list(csv.DictReader(line for line in lines if not line.startswith("#")))
    return {f"pair {row['pair']}": {key: float(row[key]) for key in row} for row in found}


def published() -> dict[str, Pair]:
    return {
        pair: (
            (row["L1"], row["a1"], row["b1"]),
            (row["L2"], row["a2"], row["b2"]),
            row["dE00"],
        )
        for pair, row in ROWS.items()
    }


ROWS = rows()
PAIRS = published()


def test_all_thirty_four_published_pairs_are_there() -> None:
    assert len(PAIRS) == 34


@pytest.mark.parametrize(("one", "other", "told"), PAIRS.values(), ids=PAIRS)
def test_a_published_pair_differs_as_published_either_way_round(
    one: Lab, other: Lab, told: float
) -> None:
    assert ciede2000(one, other) == pytest.approx(told, abs=1e-4)
    assert ciede2000(other, one) == pytest.approx(ciede2000(one, other), abs=1e-12)
    assert ciede2000(one, one) == 0


STEPS = ("G", "T", "SL", "SC", "SH", "RT")


@pytest.mark.parametrize("pair", ROWS)
def test_the_steps_on_the_way_to_a_published_difference_are_the_published_ones(pair: str) -> None:
    one, other, _ = PAIRS[pair]
    found, row = between(one, other), ROWS[pair]
    for step in STEPS:
        assert getattr(found, step) == pytest.approx(row[step], abs=2e-4), step
    # The table's hue comes from rounded ones: that of pairs 21 and 23 is off by up to 6e-4.
    off = (degrees(found.hue) - row["hbar_prime_deg"] + 180) % 360 - 180
    assert off == pytest.approx(0, abs=1e-3)


def test_any_two_colours_differ_as_another_library_says() -> None:
    chance = Random(2000)
    for _ in range(300):
        one, other = (f"#{chance.randrange(1 << 24):06x}" for _ in range(2))
        theirs = Color(one).delta_e(other, method="2000")
        assert difference(one, other) == pytest.approx(theirs, abs=1e-9), (one, other)


# Computed once with coloraide: crimson, lavender and forest green of CSS.
MIX = {
    "crimson, lavender": ("#dc143c", "#e6e6fa", 46.892),
    "crimson, forest green": ("#dc143c", "#228b22", 73.830),
    "lavender, forest green": ("#e6e6fa", "#228b22", 47.644),
}


@pytest.mark.parametrize(("one", "other", "told"), MIX.values(), ids=MIX)
def test_named_colours_differ_as_they_should(one: str, other: str, told: float) -> None:
    assert difference(one, other) == pytest.approx(told, abs=0.01)
    assert difference(other, one) == difference(one, other)


def test_white_and_black_lie_at_the_ends_of_lightness() -> None:
    assert lab_of("#ffffff") == pytest.approx((100, 0, 0), abs=0.03)
    assert lab_of("#000000") == pytest.approx((0, 0, 0), abs=0.03)
    assert difference("#000000", "#ffffff") == pytest.approx(100, abs=0.01)
