"""For staff: a week of the calendar, day by day."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.orders.weeks import week_views
from corymb.views.frame import PageFrame
from corymb.views.pieces import Link
from corymb.views.week import WeekView

SECTION = "week"


def pages(making: Making) -> Iterator[Planned]:
    """Every week with something to do, this one and its neighbours; on the staff's site alone."""
    if making.catalogue.staff:
        for week, view in _views(making).items():
            yield Planned.of(_week, week)
            if view.now:  # again where the phone's home screen leads to, whichever week it is
                yield Planned.of(_this_week, week)


@kept
def _views(making: Making) -> dict[str, WeekView]:
    return {str(week): view for week, view in week_views(making.catalogue)}


@kept
def _week(making: Making, week: str) -> Page:
    view = _views(making)[week]
    # L10N: what else the page of a week is looked for by, in a search of the site.
    words = _("this week orders cut make go")
    frame = _frame(making, addresses.of_week(week), view)
    return Page(frame, view, _("Week") if view.now else "", words)


@kept
def _this_week(making: Making, week: str) -> Page:
    view = _views(making)[week]
    return Page(_frame(making, addresses.THIS_WEEK, view), view, "")


def _frame(making: Making, address: str, view: WeekView) -> PageFrame:
    return making.frame(
        address,
        "week.html",
        SECTION,
        f"{view.title}, {view.when}",
        _("What is cut, made, handed over and in use, day by day."),
        crumbs=[Link(_("Orders"), addresses.ORDERS)],
    )
