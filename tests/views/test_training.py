"""Do the pages for learning say why, warn where it matters, and keep to what is known?"""

from __future__ import annotations

from functools import cache

import pytest

from corymb.trade.questions import gloves
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import AT_THE_BENCH
from corymb.views.compose.orders.cut_words import careful_words
from corymb.views.compose.training.expected import expected_view
from corymb.views.compose.training.path import learnt_from, learnt_looks, path_view
from corymb.views.compose.training.practice import practice_view
from corymb.views.compose.training.questions import questions_view
from corymb.views.training import PracticeView, QuestionView
from tests.views.making import catalogue_of, demo


@cache
def staffs() -> Catalogue:
    return catalogue_of(demo(), "staff")


@cache
def made(recipe: str, variant: str = "") -> PracticeView:
    return practice_view(staffs(), staffs().looks[recipe][variant])


@cache
def questions() -> tuple[QuestionView, ...]:
    return tuple(each for part in questions_view(staffs()).parts for each in part.questions)


@pytest.mark.parametrize(
    ("title", "why"),
    [
        ("Clean buckets", "It needs no lesson before it."),
        ("Reading a recipe", "It needs no lesson before it. It opens Keeping cup."),
        (
            "Conditioning",
            "It builds on Cutting at the right stage. It opens 12 recipes.",
        ),
        (
            "Jackdaw hand-tie",
            "It puts to use for the first time: Spiralling a hand-tie. "
            "The first of a new style: Bridal hand-tie.",
        ),
        ("First-light posy", "More practice of Clean buckets and Conditioning."),
    ],
    ids=lambda text: text[:20],
)
def test_each_step_of_the_path_says_why_it_comes_now(title: str, why: str) -> None:
    step = next(each for each in path_view(staffs()).steps if each.title == title)
    assert " ".join(step.why) == why


def test_a_draft_is_nobodys_lesson() -> None:
    assert "hearth-stook" in staffs().looks
    assert "hearth-stook" not in learnt_from(staffs())
    assert all(not look.id.startswith("hearth-stook") for look in learnt_looks(staffs()))
    assert not any(each.recipe_id == "hearth-stook" for each in questions())


def test_every_stem_is_fetched_once_with_its_bucket() -> None:
    view = made("hedgerow-jar")
    stems = [stem for role in view.roles for stem in role.stems]
    assert sum(stem.count for stem in stems) == view.stems_total == 23
    assert sum(role.total for role in view.roles) == 23
    assert "short bucket, 80 to one" in {stem.bucket for stem in stems}


def test_a_step_shows_its_own_stems_and_cautions_and_the_start_has_them_all() -> None:
    view = made("may-bough-hand-tie")
    searing, spiral = view.steps[0], view.steps[1]
    assert [stem.name for stem in searing.stems] == ["Lilac, violet", "Iceland poppy, apricot"]
    assert "Poppies are not for the cake." in searing.careful
    assert any("poisonous if eaten" in caution for caution in searing.careful)
    assert spiral.careful == ()
    plants = {caution.partition(":")[0] for step in view.steps for caution in step.careful}
    assert all(any(plant in caution for caution in view.careful) for plant in plants)


def test_a_step_shows_what_stands_in_for_the_plant_it_was_written_for() -> None:
    view = made("hedgerow-jar", "later")
    step = next(each for each in view.steps if "crocosmia" in each.text)
    assert "Zinnia, coral" in {stem.name for stem in step.stems}


def test_minutes_go_by_wrights_curve() -> None:
    expected = expected_view(staffs(), staffs().looks["hedgerow-jar"][""])
    # By hand: half as long again as 20, then at every doubling 85 % of it, in whole minutes, but
    # never less than the practised hand, who keeps 95 %: 20 x 0.95 ** log2(n).
    assert expected.helper[:8] == (30, 26, 24, 22, 21, 20, 20, 19)
    assert expected.words.startswith("A practised hand takes 20 min; a helper 30 min at first")


def test_every_question_gives_reasons_in_whole_sentences() -> None:
    assert len(questions()) > 200
    for question in questions():
        assert question.ask.endswith("?")
        assert question.choices[question.right] == question.answer
        assert question.because and all(each[-1:] == "." for each in question.because)


def test_no_reason_calls_a_plant_safe() -> None:
    for question in questions():
        said = " ".join(question.because).casefold()
        for told in ("make them safe to eat: nothing here is", "known is never safe"):
            said = said.replace(told, "")
        assert "safe" not in said.replace("safe handling", "")


@pytest.mark.parametrize("hazard", [*gloves.GLOVES, *gloves.NO_HARM_TO_HANDS])
def test_bench_sheets_and_cut_lists_ask_for_gloves_where_a_question_says_so(hazard: str) -> None:
    assert ("gloves" in AT_THE_BENCH[hazard].casefold()) is (hazard in gloves.GLOVES)
    assert any("gloves" in words for words in careful_words([hazard])) is (hazard in gloves.GLOVES)
