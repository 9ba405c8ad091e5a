"""All lessons, and each."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.prose import lesson_view, lessons_shown, lessons_view
from corymb.views.pieces import Link

SECTION = "lessons"


def pages(making: Making) -> Iterator[Page]:
    """The list and every lesson this audience may read; nothing where there is none."""
    lessons = lessons_shown(making.catalogue)
    if not lessons:
        return
    prose = {
        each.id: making.writer.prose(each.markdown, addresses.of_lesson(each.id))
        for each in lessons
    }
    above = Link(_("Lessons"), addresses.LESSONS)
    about = _("What to learn, in the order to take it.")
    frame = making.frame(above.href, "lessons.html", SECTION, above.label, about)
    yield Page(frame, lessons_view(making.catalogue, prose), _("Page"))
    for lesson in lessons:
        view = lesson_view(making.catalogue, lesson, prose[lesson.id])
        frame = making.frame(
            view.href, "lesson.html", SECTION, view.title, view.summary, crumbs=[above]
        )
        yield Page(frame, view, _("Lesson"), making.writer.words(lesson.markdown))
