"""The year at a glance."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.in_season import in_season_view

SECTION = "in-season"


def pages(making: Making) -> Iterator[Planned]:
    """One page."""
    yield Planned.of(_page)


@kept
def _page(making: Making) -> Page:
    """Found by the names of the months too."""
    title = _("In season: the year at a glance")
    about = _("The year at a glance: what can be made in each week, and which flowers decide it.")
    frame = making.frame(addresses.IN_SEASON, "in_season.html", SECTION, title, about)
    view = in_season_view(making.catalogue)
    # L10N: what else the page is looked for by, in a search of the site.
    words = (_("season calendar weeks months"), *(month.name for month in view.months))
    return Page(frame, view, _("Page"), " ".join(words))
