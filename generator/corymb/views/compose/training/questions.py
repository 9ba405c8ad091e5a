"""All questions in words, by style."""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.trade.questions import Known, Question, all_questions
from corymb.trade.swaps.limits import SwapLimits
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.prose import headings_of
from corymb.views.compose.training.asked import asked, choice_words
from corymb.views.compose.training.because import because
from corymb.views.compose.training.path import learnt_from
from corymb.views.pieces import Link
from corymb.views.training import QuestionsPart, QuestionsView, QuestionView


def questions_view(catalogue: Catalogue) -> QuestionsView:
    """The questions of each style that the studio makes, and those on lessons alone."""
    known = known_by(catalogue)
    views = [
        (question.style, _view(catalogue, known, question, number))
        for number, question in enumerate(all_questions(known), 1)
    ]
    names = {known_as: style.plural for known_as, style in catalogue.studio.styles.items()}
    parts = [
        QuestionsPart(part, name, tuple(view for style, view in views if style == part))
        for part, name in (*names.items(), ("", _("Lessons")))
    ]
    return QuestionsView(
        parts=tuple(part for part in parts if part.questions),
        recipes=tuple(Link(recipe.name, recipe.id) for recipe in learnt_from(catalogue).values()),
    )


def known_by(catalogue: Catalogue) -> Known:
    """What questions are made from: no draft, and the week of the build."""
    studio = catalogue.studio
    recipes = learnt_from(catalogue)
    return Known(
        stems=studio.stems,
        recipes=recipes,
        looks={known_as: catalogue.looks[known_as] for known_as in recipes},
        styles=studio.styles,
        lessons=headings_of(studio),
        beds=catalogue.beds,
        week=catalogue.week,
        limits=SwapLimits.of(studio.house),
    )


def _view(catalogue: Catalogue, known: Known, question: Question, number: int) -> QuestionView:
    return QuestionView(
        number=number,
        kind=question.kind,
        style=question.style,
        recipe_id=question.recipe,
        ask=asked(catalogue, question),
        choices=tuple(choice_words(catalogue, question, each) for each in question.choices),
        right=question.right,
        answer=choice_words(catalogue, question, question.answer),
        because=because(catalogue, known, question),
    )
