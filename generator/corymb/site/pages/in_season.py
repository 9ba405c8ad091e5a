"""The year at a glance."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.in_season import in_season_view

SECTION = "in-season"
ABOUT = "The year at a glance: what can be made in each week, and which flowers decide it."


def pages(making: Making) -> Iterator[Page]:
    """One page, found by the names of the months too."""
    frame = making.frame(
        addresses.IN_SEASON, "in_season.html", SECTION, "In season: the year at a glance", ABOUT
    )
    view = in_season_view(making.catalogue)
    words = f"season calendar weeks months {' '.join(month.name for month in view.months)}"
    yield Page(frame, view, "Page", words)
