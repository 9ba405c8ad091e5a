"""For staff: the papers of each order, the care cards of each style and the price list."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site.pages.arrangements import SECTION as ARRANGEMENTS
from corymb.site.pages.page import Making, Page
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


def pages(making: Making) -> Iterator[Page]:
    """The papers of every order whose cut is planned, and those of no order, for staff alone."""
    if not making.catalogue.staff:
        return
    for due in with_papers(making.catalogue):
        yield from _of_due(making, due)
    for style in making.catalogue.studio.styles.values():
        yield from _cards_of(making, style.id)
    yield _prices(making)


def _of_due(making: Making, due: Due) -> Iterator[Page]:
    catalogue = making.catalogue
    kinds = (
        (
            _("Bench sheets"),
            _("Bench sheets of {order}, {day}."),
            addresses.of_bench,
            "bench_sheets.html",
            bench_sheets_view(catalogue, due, making.bench_drawings),
        ),
        (
            _("Bucket labels"),
            _("Bucket labels of {order}, {day}."),
            addresses.of_labels,
            "labels.html",
            _labels(making, due),
        ),
        (
            _("Load sheet"),
            _("Load sheet of {order}, {day}."),
            addresses.of_load,
            "load_sheet.html",
            load_sheet_view(catalogue, due),
        ),
        (
            _("For the client"),
            _("For the client of {order}, {day}."),
            addresses.of_collection,
            "collection.html",
            collection_view(catalogue, due),
        ),
        (
            _("Care cards"),
            _("Care cards of {order}, {day}."),
            addresses.of_cards,
            "care_cards.html",
            order_cards(catalogue, due),
        ),
    )
    for name, about, address, template, view in kinds:
        frame = making.frame(
            address(due.id),
            template,
            SECTION,
            f"{name}: {due.name}",
            about.format(order=due.name, day=day_in_full(due.day)),
            crumbs=[Link(_("Orders"), addresses.ORDERS), order_link(due)],
        )
        yield Page(frame, view, "")


def _labels(making: Making, due: Due) -> object:
    return labels_view(making.catalogue, due, making.staff_url)


def _cards_of(making: Making, style_id: str) -> Iterator[Page]:
    """The care cards of a style's looks; nothing where it has none."""
    style = making.catalogue.studio.styles[style_id]
    view = style_cards(making.catalogue, style)
    if view.sheets:
        frame = making.frame(
            addresses.of_style_cards(style_id),
            "care_cards.html",
            ARRANGEMENTS,
            _("Care cards: {style}").format(style=style.plural),
            _("Care cards to go with each of them."),
            crumbs=[_arrangements(), Link(style.plural, addresses.of_style(style_id))],
        )
        yield Page(frame, view, "")


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
