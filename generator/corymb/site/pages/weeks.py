"""For staff: a week of the calendar, day by day."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.orders.weeks import week_views
from corymb.views.pieces import Link

SECTION = "week"
ABOUT = "What is cut, made, handed over and in use, day by day."


def pages(making: Making) -> Iterator[Page]:
    """Every week with something to do, this one and its neighbours; on the staff's site alone."""
    if not making.catalogue.staff:
        return
    for week, view in week_views(making.catalogue):
        frame = making.frame(
            addresses.of_week(str(week)),
            "week.html",
            SECTION,
            f"{view.title}, {view.when}",
            ABOUT,
            crumbs=[Link("Orders", addresses.ORDERS)],
        )
        yield Page(frame, view, "Week" if view.now else "", "this week orders cut make go")
