"""At which addresses does one audience's site have a page?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.ledger import kept
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cuts import with_papers
from corymb.views.compose.orders.packing import papers_of
from corymb.views.compose.orders.shown import shown_dues
from corymb.views.compose.orders.weeks import weeks_shown
from corymb.views.compose.training.path import looks_learnt


@kept
def pages_of(catalogue: Catalogue) -> frozenset[str]:
    """The address of every page of the catalogue's audience that is there whatever the day.

    A text may lead to these. Weeks and visits come and go (`pages_of_the_day`).
    """
    return frozenset(_pages_of(catalogue))


def pages_of_the_day(catalogue: Catalogue) -> frozenset[str]:
    """The address of every page that is there only around the day of the build."""
    visits = (due for due in shown_dues(catalogue) if due.id not in catalogue.studio.orders)
    weeks = weeks_shown(catalogue) if catalogue.staff else ()
    return frozenset(
        (
            *(addresses.of_due(due.id) for due in visits),
            *(addresses.of_week(str(week)) for week in weeks),
            *(addresses.of_cut(day.day) for day in catalogue.cut_days),
            *(paper.href for due in with_papers(catalogue) for paper in papers_of(catalogue, due)),
        )
    )


def _pages_of(catalogue: Catalogue) -> Iterator[str]:
    yield from (addresses.HOME, addresses.ARRANGEMENTS, addresses.FLOWERS)
    yield from (addresses.IN_SEASON, addresses.YOUR_DATE)
    if catalogue.staff:
        yield from (addresses.WEEKS_AHEAD, addresses.ORDERS, addresses.LINKS)
        yield from (addresses.THIS_WEEK, addresses.NO_SIGNAL)
        yield from (addresses.LEARNING, addresses.QUESTIONS, addresses.RECORD, addresses.PRICES)
        yield from map(addresses.of_style_cards, catalogue.styles_seen())
        yield from map(addresses.of_practice_of, looks_learnt(catalogue))
        yield from map(addresses.of_due, catalogue.studio.orders)
        yield from map(addresses.of_standing, catalogue.studio.standing_orders)
    else:
        yield addresses.KEPT
    yield from (addresses.SEARCH, addresses.NOT_FOUND)
    yield from map(addresses.of_style, catalogue.styles_seen())
    yield from map(addresses.of_look_called, catalogue.look_ids())
    yield from map(addresses.of_stem, catalogue.studio.stems)
    made = [addresses.of_made(piece.id) for piece in catalogue.made()]
    yield from [addresses.MADE, *made] if made else []
    studio = catalogue.studio
    lessons = [k for k, each in studio.techniques.items() if catalogue.may_read(each.heading)]
    yield from [addresses.LESSONS, *map(addresses.of_lesson, lessons)] if lessons else []
    for known_as, page in studio.pages.items():
        if catalogue.may_read(page.heading):
            yield addresses.of_page(known_as)
