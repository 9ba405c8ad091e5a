"""For staff: the path of learning, each look made step by step, questions, and the record."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.bands import band_of
from corymb.views.compose.tint import tint_of
from corymb.views.compose.training.path import learnt_looks, path_view
from corymb.views.compose.training.practice import practice_view
from corymb.views.compose.training.questions import questions_view
from corymb.views.compose.training.record import record_view
from corymb.views.pieces import Link

SECTION = "learning"


def pages(making: Making) -> Iterator[Page]:
    """On the staff's site alone."""
    if not making.catalogue.staff:
        return
    above = Link(_("Learning"), addresses.LEARNING)
    about = _("Lessons and recipes in the order to take them, from the first bucket on.")
    frame = making.frame(above.href, "learning.html", SECTION, above.label, about)
    # L10N: what else the page is looked for by, in a search of the site.
    yield Page(frame, path_view(making.catalogue), _("Page"), _("training helper path practice"))
    yield _questions(making, above)
    yield _record(making, above)
    yield from _practice(making, above)


def _questions(making: Making, above: Link) -> Page:
    about = _("Ten at a time, from what the studio really makes, each with its reason.")
    frame = making.frame(
        addresses.QUESTIONS, "questions.html", SECTION, _("Questions"), about, crumbs=[above]
    )
    return Page(frame, questions_view(making.catalogue), _("Page"))


def _record(making: Making, above: Link) -> Page:
    about = _("What you have made and answered. It stays on this telephone until you send it.")
    frame = making.frame(
        addresses.RECORD, "record.html", SECTION, _("My record"), about, crumbs=[above]
    )
    return Page(frame, record_view(making.catalogue), _("Page"))


def _practice(making: Making, above: Link) -> Iterator[Page]:
    """Every look of every recipe but drafts; a search leads to the recipe, and from there here."""
    for look in learnt_looks(making.catalogue):
        view = practice_view(making.catalogue, look)
        frame = making.frame(
            addresses.of_practice(look),
            "practice.html",
            SECTION,
            _("{name}, step by step").format(name=view.name),
            view.expected.words,
            crumbs=[above, view.look],
            tint=tint_of(band_of(making.catalogue, look)),
        )
        yield Page(frame, view, "")
