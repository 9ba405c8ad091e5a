"""For staff: the papers of each order, ready to print."""

from __future__ import annotations

from collections.abc import Iterator

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
ORDERS = Link("Orders", addresses.ORDERS)


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
            "Bench sheets",
            addresses.of_bench,
            "bench_sheets.html",
            bench_sheets_view(catalogue, due, making.bench_drawings),
        ),
        ("Bucket labels", addresses.of_labels, "labels.html", _labels(making, due)),
        ("Load sheet", addresses.of_load, "load_sheet.html", load_sheet_view(catalogue, due)),
        (
            "For the client",
            addresses.of_collection,
            "collection.html",
            collection_view(catalogue, due),
        ),
    )
    for name, address, template, view in kinds:
        frame = making.frame(
            address(due.id),
            template,
            SECTION,
            f"{name}: {due.name}",
            f"{name} of {due.name}, {day_in_full(due.day)}.",
            crumbs=[ORDERS, order_link(due)],
        )
        yield Page(frame, view, "")


def _labels(making: Making, due: Due) -> object:
    return labels_view(making.catalogue, due, making.staff_url)
