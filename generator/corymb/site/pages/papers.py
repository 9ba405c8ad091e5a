"""For staff: the papers of each order, ready to print."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site.pages.page import Making, Page
from corymb.trade.orders.due import Due
from corymb.views.compose import addresses
from corymb.views.compose.orders.bench_sheets import bench_sheets_view
from corymb.views.compose.orders.collection import collection_view
from corymb.views.compose.orders.cuts import with_papers
from corymb.views.compose.orders.labels import labels_view
from corymb.views.compose.orders.load_sheet import load_sheet_view
from corymb.views.compose.orders.packing import order_link
from corymb.views.compose.orders.when import day_in_full
from corymb.views.pieces import Link

SECTION = "orders"


def pages(making: Making) -> Iterator[Page]:
    """Four papers for every order whose cut is planned, on the staff's site alone."""
    if not making.catalogue.staff:
        return
    for due in with_papers(making.catalogue):
        yield from _of_due(making, due)


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
