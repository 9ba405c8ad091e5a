"""For staff: the papers of each order, the care cards of each style and the price list."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from corymb.language import gettext as _
from corymb.language import noted
from corymb.ledger import kept
from corymb.site.pages.arrangements import SECTION as ARRANGEMENTS
from corymb.site.pages.page import Making, Page, Planned
from corymb.trade.orders.due import Due
from corymb.views.compose import addresses
from corymb.views.compose.care_cards import order_cards, style_cards
from corymb.views.compose.orders.bench_sheets import bench_sheets_view
from corymb.views.compose.orders.collection import collection_view
from corymb.views.compose.orders.cuts import with_papers
from corymb.views.compose.orders.labels import labels_view
from corymb.views.compose.orders.load_sheet import load_sheet_view
from corymb.views.compose.orders.packing import order_link
from corymb.views.compose.orders.when import day_in_full
from corymb.views.compose.prices import price_list_view
from corymb.views.pieces import Link

SECTION = "orders"


def pages(making: Making) -> Iterator[Planned]:
    """The papers of every order whose cut is planned, and those of no order, for staff alone."""
    if not making.catalogue.staff:
        return
    for due in with_papers(making.catalogue):
        for paper in PAPERS:
            yield Planned.of(_of_due, due.id, paper)
    for style in making.catalogue.studio.styles.values():
        if style_cards(making.catalogue, style).sheets:
            yield Planned.of(_cards_of, style.id)
    yield Planned.of(_prices)


@dataclass(frozen=True)
class _Paper:
    """One of an order's papers: what it is called and about, where it stands, what is on it."""

    name: str
    about: str
    address: Callable[[str], str]
    template: str
    view: Callable[[Making, Due], object]


PAPERS = {
    "bench": _Paper(
        noted("Bench sheets"),
        noted("Bench sheets of {order}, {day}."),
        addresses.of_bench,
        "bench_sheets.html",
        lambda making, due: bench_sheets_view(making.catalogue, due, making.bench_drawings),
    ),
    "labels": _Paper(
        noted("Bucket labels"),
        noted("Bucket labels of {order}, {day}."),
        addresses.of_labels,
        "labels.html",
        lambda making, due: labels_view(making.catalogue, due, making.staff_url),
    ),
    "load": _Paper(
        noted("Load sheet"),
        noted("Load sheet of {order}, {day}."),
        addresses.of_load,
        "load_sheet.html",
        lambda making, due: load_sheet_view(making.catalogue, due),
    ),
    "collection": _Paper(
        noted("For the client"),
        noted("For the client of {order}, {day}."),
        addresses.of_collection,
        "collection.html",
        lambda making, due: collection_view(making.catalogue, due),
    ),
    "cards": _Paper(
        noted("Care cards"),
        noted("Care cards of {order}, {day}."),
        addresses.of_cards,
        "care_cards.html",
        lambda making, due: order_cards(making.catalogue, due),
    ),
}


@kept
def _of_due(making: Making, due_id: str, kind: str) -> Page:
    due = next(each for each in with_papers(making.catalogue) if each.id == due_id)
    paper = PAPERS[kind]
    frame = making.frame(
        paper.address(due.id),
        paper.template,
        SECTION,
        f"{_(paper.name)}: {due.name}",
        _(paper.about).format(order=due.name, day=day_in_full(due.day)),
        crumbs=[Link(_("Orders"), addresses.ORDERS), order_link(due)],
    )
    return Page(frame, paper.view(making, due), "")


@kept
def _cards_of(making: Making, style_id: str) -> Page:
    style = making.catalogue.studio.styles[style_id]
    frame = making.frame(
        addresses.of_style_cards(style_id),
        "care_cards.html",
        ARRANGEMENTS,
        _("Care cards: {style}").format(style=style.plural),
        _("Care cards to go with each of them."),
        crumbs=[_arrangements(), Link(style.plural, addresses.of_style(style_id))],
    )
    return Page(frame, style_cards(making.catalogue, style), "")


@kept
def _prices(making: Making) -> Page:
    frame = making.frame(
        addresses.PRICES,
        "prices.html",
        ARRANGEMENTS,
        _("Price list"),
        _("Every arrangement with its sizes, guide prices and season, to be handed over."),
        crumbs=[_arrangements()],
    )
    return Page(frame, price_list_view(making.catalogue), "")


def _arrangements() -> Link:
    return Link(_("Arrangements"), addresses.ARRANGEMENTS)
