"""What is right in a question of each kind, and why nothing else is: worked out anew.

Each judge is given what questions are made from, a question and one of its choices, and says
whether that choice would be a right answer. It goes by the studio's models and shares no code with
the questions beyond the calculations of the trade.
"""

from __future__ import annotations

from collections.abc import Callable

from corymb.trade.questions import Known, Question
from corymb.trade.season.weeks import thursday

Judge = Callable[[Known, Question, str], bool]

WANT_GLOVES = {
    *("irritant sap", "irritant hairs", "burns in sun", "thorns", "skin allergy"),
    "heart poison",
}


def _plays_it(known: Known, question: Question, choice: str) -> bool:
    lines = known.looks[question.recipe][""].lines
    played = {line.role for line in lines if line.stem == choice}
    assert played, f"{choice} isn't in {question.recipe}"
    return question.about[0] in played


def _is_the_product(known: Known, question: Question, choice: str) -> bool:
    stem, pieces = question.about
    counts = [line.count for line in known.looks[question.recipe][""].lines if line.stem == stem]
    return int(choice) == sum(counts * int(pieces))


def _is_to_a_bucket(known: Known, question: Question, choice: str) -> bool:
    return known.stems[question.about[0]].stems_per_bucket == int(choice)


def _is_gone(known: Known, question: Question, choice: str) -> bool:
    middle = thursday(known.week)
    chance = known.beds.chance(choice, middle)
    assert not 0.1 < chance < 0.9, f"nobody knows whether {choice} stands"
    return not known.beds.season(choice).has(middle)


def _may_stand_in(known: Known, question: Question, choice: str) -> bool:
    stem, role = question.about
    lines = known.looks[question.recipe][""].lines
    line = next(each for each in lines if (each.stem, each.role) == (stem, role))
    assert not line.essential
    style = known.styles[known.recipes[question.recipe].style]
    return choice in {each.in_ for each in known.stand_ins.ranked(line, style)}


def _is_needed_for(known: Known, question: Question, choice: str) -> bool:
    return choice in _with_all_before(known, known.recipes[question.recipe].techniques)


def _is_left_out(known: Known, question: Question, choice: str) -> bool:
    hazards = set(known.stems[choice].hazards)
    assert hazards, f"nothing is known of {choice}"
    return bool(hazards & set(known.styles[question.style].excludes))


def _wants_gloves(known: Known, question: Question, choice: str) -> bool:
    stem = known.stems[choice]
    assert stem.hazards, f"nothing is known of {choice}"
    return bool(set(stem.hazards) & WANT_GLOVES) or "glove" in stem.caution.lower()


def _is_not_known(known: Known, question: Question, choice: str) -> bool:
    assert not known.stems[question.about[0]].hazards
    return choice == "not known"


def _comes_before_the_others(known: Known, question: Question, choice: str) -> bool:
    others = [each for each in question.choices if each != choice]
    return all(choice in _with_all_before(known, [each]) for each in others)


def _with_all_before(known: Known, lessons: list[str]) -> set[str]:
    found = set(lessons)
    for each in lessons:
        found |= _with_all_before(known, known.lessons[each].needs)
    return found


JUDGES: dict[str, Judge] = {
    "which role": _plays_it,
    "how many": _is_the_product,
    "to a bucket": _is_to_a_bucket,
    "out of season": _is_gone,
    "stands in": _may_stand_in,
    "lesson for": _is_needed_for,
    "left out": _is_left_out,
    "gloves": _wants_gloves,
    "not known": _is_not_known,
    "lesson first": _comes_before_the_others,
}


def named(known: Known, choice: str) -> str:
    """What a helper reads of a choice."""
    if choice in known.stems:
        return known.stems[choice].name
    return known.lessons[choice].title if choice in known.lessons else choice


def faults(known: Known, question: Question) -> list[str]:
    """All that is wrong with a question; empty for one that can be asked."""
    judge = JUDGES[question.kind]
    right = [choice for choice in question.choices if judge(known, question, choice)]
    found = []
    if right != [question.answer]:
        found.append(f"{question}: right are {right}")
    names = {named(known, choice) for choice in question.choices}
    if len(names) != len(question.choices) or not 3 <= len(names) <= 4:
        found.append(f"{question}: {sorted(names)} to choose from")
    return found
