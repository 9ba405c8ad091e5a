"""For staff: what the coming weeks bring, and where the year is thin."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.weeks_ahead import weeks_ahead_view

SECTION = "weeks-ahead"


def pages(making: Making) -> Iterator[Planned]:
    """One page, on the staff's site alone."""
    if making.catalogue.staff:
        yield Planned.of(_page)


@kept
def _page(making: Making) -> Page:
    about = _(
        "What comes on in the beds and goes over, the last chances of recipes, and thin weeks."
    )
    title, path = _("Weeks ahead"), addresses.WEEKS_AHEAD
    frame = making.frame(path, "weeks_ahead.html", SECTION, title, about)
    # L10N: what else the page is looked for by, in a search of the site.
    words = _("coming on going over season")
    return Page(frame, weeks_ahead_view(making.catalogue), _("Page"), words)
