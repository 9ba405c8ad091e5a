"""What stands around every page of one audience's site: name, menu, foot."""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.studio.values.dates import IsoWeek
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.prose import lessons_shown, pages_shown
from corymb.views.frame import MenuItem, SiteFrame
from corymb.views.pieces import Link


def site_frame(catalogue: Catalogue, base_path: str) -> SiteFrame:
    """The frame of all pages; `base_path` is where the site begins on its host."""
    house = catalogue.studio.house
    pages = pages_shown(catalogue)
    return SiteFrame(
        name=house.name,
        tagline=house.tagline,
        language=house.language,
        audience=catalogue.audience,
        menu=_menu(catalogue),
        foot=tuple(Link(page.heading.title, addresses.of_page(page.id)) for page in pages),
        email=house.contact.email,
        phone=house.contact.phone,
        place=house.place.name,
        base_path=base_path,
    )


def _menu(catalogue: Catalogue) -> tuple[MenuItem, ...]:
    items = [
        MenuItem(_("Arrangements"), addresses.ARRANGEMENTS, "arrangements"),
        MenuItem(_("In season"), addresses.IN_SEASON, "in-season"),
        MenuItem(_("Your date"), addresses.YOUR_DATE, "your-date"),
        MenuItem(_("Flowers"), addresses.FLOWERS, "flowers"),
    ]
    if catalogue.made():
        items.append(MenuItem(_("Made here"), addresses.MADE, "made"))
    if catalogue.staff:
        this_week = addresses.of_week(str(IsoWeek.of(catalogue.today)))
        items.append(MenuItem(_("This week"), this_week, "week"))
        items.append(MenuItem(_("Orders"), addresses.ORDERS, "orders"))
        items.append(MenuItem(_("Style links"), addresses.LINKS, "links"))
        items.append(MenuItem(_("Weeks ahead"), addresses.WEEKS_AHEAD, "weeks-ahead"))
        items.append(MenuItem(_("Learning"), addresses.LEARNING, "learning"))
    if lessons_shown(catalogue):
        items.append(MenuItem(_("Lessons"), addresses.LESSONS, "lessons"))
    items += [
        MenuItem(page.heading.menu, addresses.of_page(page.id), page.id)
        for page in pages_shown(catalogue)
        if page.heading.menu and (not catalogue.staff or page.heading.for_ == "staff")
    ]
    return tuple(items)
