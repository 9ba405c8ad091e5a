"""What can be made on a day."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.your_date import your_date_view

SECTION = "your-date"


def pages(making: Making) -> Iterator[Planned]:
    """One page that holds the answers for every week."""
    yield Planned.of(_page)


@kept
def _page(making: Making) -> Page:
    about = _(
        "Choose a day, and see what can be made then, how it will look, and how sure that is."
    )
    frame = making.frame(addresses.YOUR_DATE, "your_date.html", SECTION, _("Your date"), about)
    # L10N: what else the page is looked for by, in a search of the site.
    words = _("day week date wedding party when")
    return Page(frame, your_date_view(making.catalogue), _("Page"), words)
