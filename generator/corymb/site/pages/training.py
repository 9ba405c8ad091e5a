"""For staff: the path of learning, each look made step by step, questions, and the record."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.bands import band_of
from corymb.views.compose.tint import tint_of
from corymb.views.compose.training.path import learnt_looks, path_view
from corymb.views.compose.training.practice import practice_view
from corymb.views.compose.training.questions import questions_view
from corymb.views.compose.training.record import record_view
from corymb.views.pieces import Link

SECTION = "learning"


def pages(making: Making) -> Iterator[Planned]:
    """On the staff's site alone: every look of every recipe but drafts.

    A search leads to the recipe, and from there to its practice.
    """
    if not making.catalogue.staff:
        return
    yield Planned.of(_path)
    yield Planned.of(_questions)
    yield Planned.of(_record)
    for look in learnt_looks(making.catalogue):
        yield Planned.of(_practice, look.recipe, look.variant)


def _above() -> Link:
    return Link(_("Learning"), addresses.LEARNING)


@kept
def _path(making: Making) -> Page:
    above = _above()
    about = _("Lessons and recipes in the order to take them, from the first bucket on.")
    frame = making.frame(above.href, "learning.html", SECTION, above.label, about)
    # L10N: what else the page is looked for by, in a search of the site.
    return Page(frame, path_view(making.catalogue), _("Page"), _("training helper path practice"))


@kept
def _questions(making: Making) -> Page:
    about = _("Ten at a time, from what the studio really makes, each with its reason.")
    frame = making.frame(
        addresses.QUESTIONS, "questions.html", SECTION, _("Questions"), about, crumbs=[_above()]
    )
    return Page(frame, questions_view(making.catalogue), _("Page"))


@kept
def _record(making: Making) -> Page:
    about = _("What you have made and answered. It stays on this telephone until you send it.")
    frame = making.frame(
        addresses.RECORD, "record.html", SECTION, _("My record"), about, crumbs=[_above()]
    )
    return Page(frame, record_view(making.catalogue), _("Page"))


@kept
def _practice(making: Making, recipe_id: str, variant_id: str) -> Page:
    look = making.catalogue.looks[recipe_id][variant_id]
    view = practice_view(making.catalogue, look)
    frame = making.frame(
        addresses.of_practice(look),
        "practice.html",
        SECTION,
        _("{name}, step by step").format(name=view.name),
        view.expected.words,
        crumbs=[_above(), view.look],
        tint=tint_of(band_of(making.catalogue, look)),
    )
    return Page(frame, view, "")
