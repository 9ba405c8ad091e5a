"""What stands around every page of one audience's site: name, menu, foot."""

from __future__ import annotations

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
        MenuItem("Arrangements", addresses.ARRANGEMENTS, "arrangements"),
        MenuItem("In season", addresses.IN_SEASON, "in-season"),
        MenuItem("Your date", addresses.YOUR_DATE, "your-date"),
        MenuItem("Flowers", addresses.FLOWERS, "flowers"),
    ]
    if catalogue.made():
        items.append(MenuItem("Made here", addresses.MADE, "made"))
    if catalogue.staff:
        this_week = addresses.of_week(str(IsoWeek.of(catalogue.today)))
        items.append(MenuItem("This week", this_week, "week"))
        items.append(MenuItem("Orders", addresses.ORDERS, "orders"))
        items.append(MenuItem("Weeks ahead", addresses.WEEKS_AHEAD, "weeks-ahead"))
    if lessons_shown(catalogue):
        items.append(MenuItem("Lessons", addresses.LESSONS, "lessons"))
    items += [
        MenuItem(page.heading.menu, addresses.of_page(page.id), page.id)
        for page in pages_shown(catalogue)
        if page.heading.menu and (not catalogue.staff or page.heading.for_ == "staff")
    ]
    return tuple(items)
