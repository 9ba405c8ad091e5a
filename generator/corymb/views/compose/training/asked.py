"""How is a question put into words, and what is read of each of its choices?"""

from __future__ import annotations

from collections.abc import Callable

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.trade.questions import Question
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.plants import plant_words
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import third_of

Ask = Callable[[Catalogue, Question], str]


def asked(catalogue: Catalogue, question: Question) -> str:
    """The question, a sentence."""
    return ASKS[question.kind](catalogue, question)


def choice_words(catalogue: Catalogue, question: Question, choice: str) -> str:
    """One of its choices."""
    if question.kind == "not known":
        return _meanings()[choice]
    if question.kind in ("lesson for", "lesson first"):
        return catalogue.studio.techniques[choice].heading.title
    if choice in catalogue.studio.stems:
        return catalogue.stem(choice).name
    return choice


def recipe_name(catalogue: Catalogue, question: Question) -> str:
    """The recipe that a question is of."""
    return catalogue.studio.recipes[question.recipe].name


def stem_name(catalogue: Catalogue, question: Question) -> str:
    """The stem that a question is of."""
    return catalogue.stem(question.about[0]).name


def style_name(catalogue: Catalogue, question: Question) -> str:
    """The style that a question is of, as it is called for many."""
    return catalogue.studio.house.styles[question.style].plural


def _which_role(catalogue: Catalogue, question: Question) -> str:
    role = trade_word("role", question.about[0])
    told = _("{recipe}: which of these plays {role}?")
    return told.format(recipe=recipe_name(catalogue, question), role=role)


def _how_many(catalogue: Catalogue, question: Question) -> str:
    pieces = int(question.about[1])
    told = ngettext(
        "{recipe}: how many of {stem} for {number}?",
        "{recipe}: how many of {stem} for {number}?",
        pieces,
    )
    names = {"recipe": recipe_name(catalogue, question), "stem": stem_name(catalogue, question)}
    return told.format(number=pieces, **names)


def _to_a_bucket(catalogue: Catalogue, question: Question) -> str:
    told = _("{stem}: how many stand in one bucket without crowding?")
    return told.format(stem=stem_name(catalogue, question))


def _out_of_season(catalogue: Catalogue, question: Question) -> str:
    told = _("{recipe} and its variants, in {when}: which of these can’t be cut then?")
    when = third_of(catalogue.week)
    return told.format(recipe=recipe_name(catalogue, question), when=when)


def _stands_in(catalogue: Catalogue, question: Question) -> str:
    stem = plant_words(catalogue.stem(question.about[0]))
    told = _("{recipe}: there is no {stem}. Which of these would stand in, if all could be had?")
    return told.format(recipe=recipe_name(catalogue, question), stem=stem)


def _lesson_for(catalogue: Catalogue, question: Question) -> str:
    told = _("{recipe}: which of these lessons do you need first?")
    return told.format(recipe=recipe_name(catalogue, question))


def _left_out(catalogue: Catalogue, question: Question) -> str:
    if catalogue.studio.house.styles[question.style].place == "table with food":
        told = _("{styles} stand on tables with food. Which of these must not go into one?")
    else:
        told = _("{styles}: which of these must not go into one?")
    return told.format(styles=style_name(catalogue, question))


def _gloves(catalogue: Catalogue, question: Question) -> str:
    told = _("{styles}: for which of these does the bench sheet ask for gloves?")
    return told.format(styles=style_name(catalogue, question))


def _not_known(catalogue: Catalogue, question: Question) -> str:
    told = _("{stem}: no hazard is written for it. What does that mean?")
    return told.format(stem=stem_name(catalogue, question))


def _lesson_first(catalogue: Catalogue, question: Question) -> str:
    return _("Which of these lessons comes before all the others?")


def _meanings() -> dict[str, str]:
    return {
        "safe": _("It is safe."),
        "safe to handle": _("It is safe to handle, and not to eat."),
        "not known": _("Nobody has said. Treat it as harmful, and ask."),
    }


ASKS: dict[str, Ask] = {
    "which role": _which_role,
    "how many": _how_many,
    "to a bucket": _to_a_bucket,
    "out of season": _out_of_season,
    "stands in": _stands_in,
    "lesson for": _lesson_for,
    "left out": _left_out,
    "gloves": _gloves,
    "not known": _not_known,
    "lesson first": _lesson_first,
}
