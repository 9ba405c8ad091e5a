"""Views of what is written in Markdown, pages and lessons, once it has been made into HTML."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from corymb.studio.models import Page, Technique
from corymb.studio.studio import Document, Studio
from corymb.trade.training.lessons import in_order
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import time_words
from corymb.views.compose.trade_words import trade_word
from corymb.views.pages import LessonsView, LessonView, ProseView
from corymb.views.pieces import Link


@dataclass(frozen=True)
class Prose:
    """Markdown made into HTML, and its headings."""

    html: str
    headings: tuple[Link, ...]


def pages_shown(catalogue: Catalogue) -> list[Document[Page]]:
    """The pages this audience may read, in the order of the menu."""
    pages = [page for page in catalogue.studio.pages.values() if catalogue.may_read(page.heading)]
    return sorted(pages, key=lambda page: (page.heading.order, page.heading.title))


def lessons_shown(catalogue: Catalogue) -> list[Document[Technique]]:
    """The lessons this audience may read, each after those it needs."""
    lessons = catalogue.studio.techniques
    in_turn = (lessons[each] for each in in_order(headings_of(catalogue.studio)))
    return [lesson for lesson in in_turn if catalogue.may_read(lesson.heading)]


def headings_of(studio: Studio) -> dict[str, Technique]:
    """The headings of all lessons, by id."""
    return {known_as: lesson.heading for known_as, lesson in studio.techniques.items()}


def page_view(page: Document[Page], prose: Prose) -> ProseView:
    """A page of plain text."""
    return ProseView(page.heading.title, page.heading.summary, prose.html, prose.headings)


def lesson_view(catalogue: Catalogue, lesson: Document[Technique], prose: Prose) -> LessonView:
    """A lesson's page."""
    heading = lesson.heading
    shown = {each.id: each for each in lessons_shown(catalogue)}
    return LessonView(
        title=heading.title,
        summary=heading.summary,
        html=prose.html,
        headings=prose.headings,
        href=addresses.of_lesson(lesson.id),
        time=time_words(heading.minutes),
        level=trade_word("level", heading.level),
        needs=tuple(_link(shown[need]) for need in heading.needs if need in shown),
        leads_to=tuple(_link(each) for each in shown.values() if lesson.id in each.heading.needs),
        careful=tuple(heading.careful),
        used_in=tuple(
            Link(recipe.name, addresses.of_look(catalogue.looks[recipe.id][""]))
            for recipe in catalogue.recipes()
            if lesson.id in recipe.techniques
        ),
    )


def lessons_view(catalogue: Catalogue, prose: Mapping[str, Prose]) -> LessonsView:
    """All lessons in the order to take them."""
    return LessonsView(
        tuple(
            lesson_view(catalogue, lesson, prose[lesson.id]) for lesson in lessons_shown(catalogue)
        )
    )


def _link(lesson: Document[Technique]) -> Link:
    return Link(lesson.heading.title, addresses.of_lesson(lesson.id))
