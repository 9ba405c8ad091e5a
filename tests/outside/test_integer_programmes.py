"""Whole numbers at the least cost, against problems whose best answer is published."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction

import pytest

from corymb.trade.cut.programme import Answer, Programme, UnsolvableError

Costs = Sequence[Sequence[int | str]]


def transport(supply: list[int], demand: list[int], costs: Costs) -> Answer:
    """The cheapest way to bring what is demanded from where it is."""
    programme = Programme()
    ways = [[programme.whole(min(has, wants)) for wants in demand] for has in supply]
    for row, has in zip(ways, supply, strict=True):
        programme.row(dict.fromkeys(row, 1), most=has)
    for column, wants in zip(zip(*ways, strict=True), demand, strict=True):
        programme.row(dict.fromkeys(column, 1), least=wants)
    return programme.minimise(
        {
            way: Fraction(cost)
            for row, prices in zip(ways, costs, strict=True)
            for way, cost in zip(row, prices, strict=True)
        }
    )


def most_of(programme: Programme, worth: dict[int, int]) -> Answer:
    """The values that make a sum most: those that make its opposite least."""
    least = programme.minimise({each: -times for each, times in worth.items()})
    return Answer(least.values, -least.objective, -least.bound)


def knapsack(weights: list[int], values: list[int], room: int) -> Answer:
    """The most value that goes into the room, each thing once."""
    programme = Programme()
    things = [programme.whole(1) for _ in weights]
    programme.row(dict(zip(things, weights, strict=True)), most=room)
    return most_of(programme, dict(zip(things, values, strict=True)))


TRANSPORT = {
    # Dantzig, Linear Programming and Extensions (1963), chapter 3-3; the cases in thousands.
    "two canneries, three markets": (
        [350, 600],
        [325, 300, 275],
        [["0.225", "0.153", "0.162"], ["0.225", "0.162", "0.126"]],
        "153.675",
    ),
    # Hillier and Lieberman, Introduction to Operations Research (from memory).
    "three canneries, four warehouses": (
        [75, 125, 100],
        [80, 65, 70, 85],
        [[464, 513, 654, 867], [352, 416, 690, 791], [995, 682, 388, 685]],
        "152535",
    ),
    # OR-Tools guide, Solving an Assignment Problem: five workers, four tasks.
    "five workers, four tasks": (
        [1, 1, 1, 1, 1],
        [1, 1, 1, 1],
        [
            [90, 80, 75, 70],
            [35, 85, 55, 65],
            [125, 95, 90, 95],
            [45, 110, 95, 115],
            [50, 100, 90, 100],
        ],
        "265",
    ),
}


@pytest.mark.parametrize(("supply", "demand", "costs", "least"), TRANSPORT.values(), ids=TRANSPORT)
def test_the_least_cost_is_the_one_published(
    supply: list[int], demand: list[int], costs: Costs, least: str
) -> None:
    answer = transport(supply, demand, costs)
    assert (answer.objective, answer.proven, answer.gap) == (Fraction(Decimal(least)), True, 0)


KNAPSACKS = {
    # J. Burkardt, KNAPSACK_01, problem 1.
    "ten things": (
        [23, 31, 29, 44, 53, 38, 63, 85, 89, 82],
        [92, 57, 49, 68, 60, 43, 67, 84, 87, 72],
        165,
        309,
    ),
    # Kreher and Stinson, Combinatorial Algorithms (1998), table 5.2.
    "fifteen things": (
        [70, 73, 77, 80, 82, 87, 90, 94, 98, 106, 110, 113, 115, 118, 120],
        [135, 139, 149, 150, 156, 163, 173, 184, 192, 201, 210, 214, 221, 229, 240],
        750,
        1458,
    ),
}


@pytest.mark.parametrize(("weights", "values", "room", "most"), KNAPSACKS.values(), ids=KNAPSACKS)
def test_the_most_value_is_the_one_published(
    weights: list[int], values: list[int], room: int, most: int
) -> None:
    answer = knapsack(weights, values, room)
    assert (answer.objective, answer.bound) == (Fraction(most), Fraction(most))


def test_whole_orders_are_accepted_for_the_most_value() -> None:
    # Made for this test; all thirty-two choices tried: orders 2, 3 and 4 use up all there is.
    uses = [(40, 20, 30), (30, 30, 60), (50, 10, 40), (20, 40, 50), (25, 15, 35)]
    programme = Programme()
    orders = [programme.whole(1) for _ in uses]
    for stock, needs in zip((100, 80, 150), zip(*uses, strict=True), strict=True):
        programme.row(dict(zip(orders, needs, strict=True)), most=stock)
    answer = most_of(programme, dict(zip(orders, (180, 210, 190, 200, 140), strict=True)))
    assert (answer.objective, answer.values) == (Fraction(600), (0, 1, 1, 1, 0))


def in_multiples(second_stock: int, weights: Sequence[int]) -> tuple[Fraction, int]:
    """Five demands filled from three stocks, each in its multiples, and the second's use."""
    stocks = [(120, 10), (second_stock, 5), (60, 10)]
    demands = [(75, {0}), (60, {0, 1}), (50, {1, 2}), (40, {2}), (30, {0, 2})]
    programme = Programme()
    ways = [{s: programme.whole(most // stocks[s][1]) for s in sorted(of)} for most, of in demands]
    for way, (most, _) in zip(ways, demands, strict=True):
        programme.row({steps: stocks[s][1] for s, steps in way.items()}, most=most)
    for s, (stock, step) in enumerate(stocks):
        programme.row({way[s]: step for way in ways if s in way}, most=stock)
    worth = {
        steps: stocks[s][1] * weight
        for way, weight in zip(ways, weights, strict=True)
        for s, steps in way.items()
    }
    answer = most_of(programme, worth)
    assert answer.proven
    return answer.objective, 5 * sum(answer.values[way[1]] for way in ways if 1 in way)


@pytest.mark.parametrize("second_stock", [85, 87], ids=["a multiple stands", "two more stand"])
@pytest.mark.parametrize(
    ("weights", "most"),
    [([1] * 5, 250), ([3, 2, 2, 1, 1], 500)],
    ids=["every stem alike", "some stems count for more"],
)
def test_lines_are_filled_in_multiples_of_a_step(
    second_stock: int, weights: list[int], most: int
) -> None:
    # Computed with two other solvers when the cases were drawn up.
    filled, used = in_multiples(second_stock, weights)
    assert filled == most
    assert used <= 85


def test_what_cannot_be_met_is_refused() -> None:
    programme = Programme()
    programme.row({programme.whole(3): 2}, least=5, most=5)
    with pytest.raises(UnsolvableError, match="no whole numbers meet every condition"):
        programme.minimise({})


def test_an_answer_that_is_not_proven_says_how_far_off_it_may_be() -> None:
    answer = Answer((3,), Fraction(60), Fraction(45))
    assert (answer.proven, answer.gap) == (False, 0.25)


def test_with_no_time_the_answer_known_before_stands() -> None:
    programme = Programme()
    things = [programme.whole(1) for _ in range(40)]
    programme.row({thing: 17 + (7 * thing) % 23 for thing in things}, least=301)
    known = [1] * 40
    answer = programme.minimise({t: 100 + (13 * t) % 41 for t in things}, seconds=0.0, start=known)
    assert answer.objective <= sum(100 + (13 * t) % 41 for t in things)
    assert 0 <= answer.bound <= answer.objective
