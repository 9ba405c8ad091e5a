"""All lessons, and each."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.prose import Prose, lesson_view, lessons_shown, lessons_view
from corymb.views.pieces import Link

SECTION = "lessons"


def pages(making: Making) -> Iterator[Planned]:
    """The list and every lesson this audience may read; nothing where there is none."""
    lessons = lessons_shown(making.catalogue)
    if lessons:
        yield Planned.of(_all)
    for lesson in lessons:
        yield Planned.of(_lesson, lesson.id)


def _list() -> Link:
    return Link(_("Lessons"), addresses.LESSONS)


@kept
def _prose(making: Making, lesson_id: str) -> Prose:
    lesson = making.catalogue.studio.techniques[lesson_id]
    return making.writer.prose(lesson.markdown, addresses.of_lesson(lesson_id))


@kept
def _all(making: Making) -> Page:
    lessons = lessons_shown(making.catalogue)
    prose = {lesson.id: _prose(making, lesson.id) for lesson in lessons}
    above = _list()
    about = _("What to learn, in the order to take it.")
    frame = making.frame(above.href, "lessons.html", SECTION, above.label, about)
    return Page(frame, lessons_view(making.catalogue, prose), _("Page"))


@kept
def _lesson(making: Making, lesson_id: str) -> Page:
    lesson = making.catalogue.studio.techniques[lesson_id]
    view = lesson_view(making.catalogue, lesson, _prose(making, lesson_id))
    frame = making.frame(
        view.href, "lesson.html", SECTION, view.title, view.summary, crumbs=[_list()]
    )
    return Page(frame, view, _("Lesson"), making.writer.words(lesson.markdown))
