"""For staff: what the coming weeks bring, and where the year is thin."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.weeks_ahead import weeks_ahead_view

SECTION = "weeks-ahead"
ABOUT = "What comes on in the beds and goes over, the last chances of recipes, and thin weeks."


def pages(making: Making) -> Iterator[Page]:
    """One page, on the staff's site alone."""
    if not making.catalogue.staff:
        return
    frame = making.frame(addresses.WEEKS_AHEAD, "weeks_ahead.html", SECTION, "Weeks ahead", ABOUT)
    yield Page(frame, weeks_ahead_view(making.catalogue), "Page", "coming on going over season")
