"""Has every question exactly one right answer, in the demo and in any small studio?"""

from __future__ import annotations

from collections import Counter
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.load import read_studio
from corymb.studio.models import Stem
from corymb.studio.words import HAZARDS, ROLES
from corymb.trade.looks import looks_of
from corymb.trade.questions import KINDS, Known, Question, all_questions, gloves, out_of_season
from corymb.trade.season.beds import Beds
from corymb.trade.swaps.limits import SwapLimits
from tests.trade.making import lesson, recipe, stem, style
from tests.trade.questions.kinds import JUDGES, WANT_GLOVES, faults

DEMO = Path(__file__).parents[3] / "content"


def known_of_demo(week: int) -> Known:
    studio, _ = read_studio(DEMO)
    assert studio
    looks = {each: looks_of(one, studio.recipes) for each, one in studio.recipes.items()}
    lessons = {each: one.heading for each, one in studio.techniques.items()}
    limits = SwapLimits.of(studio.house)
    beds = Beds.of(studio)
    return Known(studio.stems, studio.recipes, looks, studio.styles, lessons, beds, week, limits)


@pytest.fixture(scope="module")
def demo() -> Known:
    return known_of_demo(38)


@pytest.fixture(scope="module")
def questions(demo: Known) -> tuple[Question, ...]:
    return all_questions(demo)


def test_every_kind_is_asked_in_the_demo(questions: tuple[Question, ...]) -> None:
    asked = Counter(question.kind for question in questions)
    assert set(asked) == set(JUDGES) == {kind.KIND for kind in KINDS}
    assert min(asked.values()) >= 5 and len(questions) > 200


@pytest.mark.parametrize("week", [1, 14, 20, 27, 38, 47])
def test_every_question_of_the_demo_has_one_right_answer(week: int) -> None:
    known = known_of_demo(week)
    assert [fault for each in all_questions(known) for fault in faults(known, each)] == []


def test_the_right_answer_stands_now_here_now_there(questions: tuple[Question, ...]) -> None:
    places = Counter(question.right for question in questions)
    assert all(places[place] > len(questions) / 10 for place in range(4))


def test_the_same_studio_is_asked_the_same(questions: tuple[Question, ...]) -> None:
    known = known_of_demo(38)
    backwards = dict(reversed(known.stems.items()))
    again = all_questions(Known(**{**vars_of(known), "stems": backwards}))
    assert all_questions(known) == questions
    assert set(again) == set(questions)


def vars_of(known: Known) -> dict[str, object]:
    return {name: getattr(known, name) for name in known.__dataclass_fields__}


def test_no_question_is_asked_twice(questions: tuple[Question, ...]) -> None:
    assert len(set(questions)) == len(questions)


def test_each_recipe_of_the_demo_has_questions_of_its_own(
    demo: Known, questions: tuple[Question, ...]
) -> None:
    asked = Counter(question.recipe for question in questions)
    assert all(asked[each] >= 4 for each in demo.recipes)


def test_what_asks_for_gloves_is_agreed(demo: Known) -> None:
    assert set(gloves.GLOVES) == WANT_GLOVES
    assert not WANT_GLOVES & set(gloves.NO_HARM_TO_HANDS)
    assert set(gloves.NO_HARM_TO_HANDS) <= set(HAZARDS)


def small_studio(stems: list[Stem], written: list[str], excludes: list[str], week: int) -> Known:
    by_id = {each.id: each for each in stems}
    recipes = {"jar": recipe("jar", stems=written, techniques=["b"])}
    lessons = {
        "a": lesson("a"),
        "b": lesson("b", needs=["a"]),
        "c": lesson("c", needs=["b"]),
        "d": lesson("d", needs=["c"]),
    }
    looks = {"jar": looks_of(recipes["jar"], recipes)}
    posy = style("posy", excludes=excludes)
    return Known(by_id, recipes, looks, {"posy": posy}, lessons, Beds(by_id), week)


SEASONS = ("April - May", "June - September", "all year", "November - February")
COLOURS = ("blush e8c2b4 100 %", "plum 5a1f38 100 %", "white f4efe6 100 %", "ember d9582b 100 %")


@st.composite
def small_studios(draw: st.DrawFn) -> Known:
    stems = [
        stem(
            f"s{i}",
            name=draw(st.sampled_from(["Rose", "Rose, red", "Mint", "Poppy", "Aster", "Cosmos"])),
            use=draw(st.sampled_from(["focal", "filler"])),
            colours=[draw(st.sampled_from(COLOURS))],
            in_season=draw(st.sampled_from(SEASONS)),
            stems_per_bucket=str(draw(st.sampled_from([1, 2, 10, 25, 60]))),
            hazards=draw(st.lists(st.sampled_from(HAZARDS), unique=True, max_size=2)),
            **draw(st.sampled_from([{}, {"caution": "Wear gloves."}])),
        )
        for i in range(draw(st.integers(3, 9)))
    ]
    lines = draw(
        st.lists(
            st.tuples(st.sampled_from(stems), st.sampled_from(ROLES)),
            min_size=1,
            max_size=7,
            unique_by=lambda line: (line[0].id, line[1]),
        )
    )
    counts = [draw(st.integers(1, 9)) for _ in lines]
    ends = [draw(st.sampled_from(["", ", essential"])) for _ in lines]
    written = [
        f"{count} {one.id}, {role}{end}"
        for count, (one, role), end in zip(counts, lines, ends, strict=True)
    ]
    excludes = draw(st.lists(st.sampled_from(HAZARDS), unique=True, max_size=4))
    return small_studio(stems, written, excludes, draw(st.integers(1, 52)))


@given(small_studios())
def test_every_question_of_any_small_studio_has_one_right_answer(known: Known) -> None:
    questions = all_questions(known)
    assert questions  # of its lessons at least
    assert [fault for each in questions for fault in faults(known, each)] == []


def test_a_stem_of_which_nothing_is_written_is_never_a_choice_about_hazards(
    demo: Known, questions: tuple[Question, ...]
) -> None:
    asked = [each for each in questions if each.kind in ("left out", "gloves")]
    assert len(asked) > 20
    for question in asked:
        assert all(demo.stems[choice].hazards for choice in question.choices)


@pytest.mark.parametrize(
    ("season", "gone"),
    [
        ("June - September", True),
        ("all year", False),
        ("April", False),
        ("W22 - W26", True),
        ("W15 - W17", False),
    ],
    ids=[
        "months off",
        "always there",
        "that month",
        "weeks later",
        "the next week, or sooner in an early year",
    ],
)
def test_a_stem_is_out_of_season_where_no_day_of_the_week_has_it_in_any_year(
    season: str, gone: bool
) -> None:
    # Week 14 of a common year is counted from its Thursday, day 95: 2 to 8 April.
    known = small_studio([stem("s0", in_season=season)], ["3 s0, depth"], [], 14)
    assert out_of_season.is_gone(known, "s0") is gone
