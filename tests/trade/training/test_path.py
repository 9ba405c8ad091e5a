"""Does the path lead from the first lesson to the hardest piece, nothing before its time?"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.load import read_studio
from corymb.studio.models import Recipe, Technique
from corymb.studio.words import DIFFICULTIES
from corymb.trade.training.path import PathStep, path
from tests.trade.making import lesson, recipe

DEMO = Path(__file__).parents[3] / "content"

BUCKETS = lesson("buckets")
WATER = lesson("water", needs=["buckets"], minutes="45")
SPIRAL = lesson("spiral", needs=["water"], level="steady")


def of(*things: Technique | Recipe) -> tuple[PathStep, ...]:
    lessons = {each.id: each for each in things if isinstance(each, Technique)}
    return path(lessons, {each.id: each for each in things if isinstance(each, Recipe)})


def ids(steps: tuple[PathStep, ...]) -> list[str]:
    return [step.id for step in steps]


@pytest.mark.parametrize(
    ("things", "order"),
    [
        ([WATER, BUCKETS], ["buckets", "water"]),
        ([recipe("jar", techniques=["buckets"]), BUCKETS, WATER], ["buckets", "jar", "water"]),
        (
            [
                *(recipe("jar", techniques=["water"]), recipe("jug", techniques=["buckets"])),
                *(BUCKETS, WATER, recipe("cup", techniques=["buckets"])),
            ],
            ["buckets", "cup", "water", "jar", "jug"],
        ),
        (
            [recipe("tie", difficulty="skilled"), SPIRAL, WATER, BUCKETS],
            ["buckets", "water", "spiral", "tie"],
        ),
        ([recipe("slow", time="40 min"), recipe("quick", time="10 min")], ["quick", "slow"]),
        (
            [
                *(recipe("tie", techniques=["spiral"]), SPIRAL, WATER, BUCKETS),
                recipe("jar", difficulty="steady"),
            ],
            ["buckets", "water", "spiral", "tie", "jar"],
        ),
    ],
    ids=[
        "a lesson after the one it needs",
        "what puts a lesson to use before the next lesson",
        "what repeats a lesson after the next",
        "the hard piece last, though it needs nothing",
        "of two alike the shorter",
        "an easy piece waits for its harder lesson",
    ],
)
def test_the_order_is(things: list[Technique | Recipe], order: list[str]) -> None:
    assert ids(of(*things)) == order


def test_each_step_knows_why_it_comes_now() -> None:
    jar = recipe("jar", techniques=["water", "buckets"])
    first, water, made = of(jar, WATER, BUCKETS)
    assert (first.after, first.opens) == ((), ())
    assert (water.after, water.opens) == (("buckets",), ("jar",))
    assert (made.after, made.first_use_of) == (("buckets", "water"),) * 2
    assert made.first_of_style


def test_a_lesson_takes_its_minutes_and_a_piece_a_helpers_first() -> None:
    # A helper's first piece takes half as long again as the recipe says (house value).
    assert [step.minutes for step in of(recipe("jar", time="25 min"), WATER, BUCKETS)] == [
        20,
        45,
        38,
    ]


def test_a_lesson_that_is_not_there_keeps_nobody_waiting() -> None:
    assert ids(of(recipe("jar", techniques=["gone"]))) == ["jar"]


@st.composite
def studios(draw: st.DrawFn) -> list[Technique | Recipe]:
    levels = st.sampled_from(DIFFICULTIES)
    names = [f"l{i}" for i in range(draw(st.integers(1, 6)))]
    things: list[Technique | Recipe] = [
        lesson(
            name,
            level=draw(levels),
            needs=draw(st.lists(st.sampled_from(names[:i] or [name]))) if i else [],
        )
        for i, name in enumerate(names)
    ]
    for i in range(draw(st.integers(0, 5))):
        asked = draw(st.lists(st.sampled_from(names), unique=True, max_size=3))
        things.append(recipe(f"r{i}", difficulty=draw(levels), techniques=asked))
    return things


@given(studios())
def test_nothing_comes_before_what_it_needs_and_nothing_is_left_out(
    things: list[Technique | Recipe],
) -> None:
    order = ids(of(*things))
    assert sorted(order) == sorted(each.id for each in things)
    for each in things:
        needs = each.needs if isinstance(each, Technique) else each.techniques
        assert all(order.index(need) < order.index(each.id) for need in needs)


@pytest.fixture(scope="module")
def demo() -> Iterator[tuple[PathStep, ...]]:
    studio, _ = read_studio(DEMO)
    assert studio
    yield path({k: v.heading for k, v in studio.techniques.items()}, studio.recipes)


def test_the_demos_path_begins_with_clean_buckets_and_ends_at_the_hotel(
    demo: tuple[PathStep, ...],
) -> None:
    order = ids(demo)
    assert order[0] == "clean-buckets"
    assert order[-1].startswith("lantern-house-")
    assert order.index("spiralling-a-hand-tie") < order.index("rooks-wing-hand-tie")
    assert order.index("hedgerow-jar") < order.index("wiring-a-buttonhole")
