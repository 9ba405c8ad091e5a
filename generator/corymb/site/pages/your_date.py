"""What can be made on a day."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.your_date import your_date_view

SECTION = "your-date"
ABOUT = "Choose a day, and see what can be made then, how it will look, and how sure that is."


def pages(making: Making) -> Iterator[Page]:
    """One page that holds the answers for every week."""
    frame = making.frame(addresses.YOUR_DATE, "your_date.html", SECTION, "Your date", ABOUT)
    yield Page(frame, your_date_view(making.catalogue), "Page", "day week date wedding party when")
