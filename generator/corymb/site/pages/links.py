"""Style links: a page each for clients, where no other page leads; their list for staff."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned, Share
from corymb.views.compose import addresses, lists
from corymb.views.compose.links import standing_links, style_link_view
from corymb.views.compose.links_list import links_view
from corymb.views.compose.tint import tint_of
from corymb.views.links import StyleLinkView

SECTION = "links"


def pages(making: Making) -> Iterator[Planned]:
    """None of the clients' is found by a search, here or elsewhere."""
    if making.catalogue.staff:
        yield Planned.of(_list)
        return
    links = standing_links(making.catalogue)
    for link in links:
        yield Planned.of(_link, link.code)
    if links:
        yield Planned.of(_nothing_here)


@kept
def _link(making: Making, code: str) -> Page:
    link = next(each for each in standing_links(making.catalogue) if each.code == code)
    return link_page(making, style_link_view(making.catalogue, link, making.link_drawings))


def link_page(making: Making, view: StyleLinkView, template: str = "style_link.html") -> Page:
    """The page of one link."""
    frame = making.frame(
        view.href,
        template,
        SECTION,
        view.title,
        _about(view),
        share=Share.of_image(view.share) if view.share else Share(),
        tint=tint_of(view.looks[0].band) if view.looks else None,
        indexed=False,
    )
    return Page(frame, view, "")


def _about(view: StyleLinkView) -> str:
    """What a message says below the title: nothing that the studio wrote to the client alone."""
    many = len(view.looks)
    return ngettext(
        "{number} arrangement for {day}.", "{number} arrangements for {day}.", many
    ).format(number=many, day=view.day)


@kept
def _nothing_here(making: Making) -> Page:
    """What a host shows for the folder itself, in place of a list of all that is in it."""
    title = _("There is nothing here")
    frame = making.frame(addresses.NO_LINKS, "404.html", "", title, "", indexed=False)
    return Page(frame, lists.not_found_view(making.catalogue), "")


@kept
def _list(making: Making) -> Page:
    view = links_view(making.catalogue, making.site_url)
    about = _("Pages that were made for one client, who may open them, and until when.")
    frame = making.frame(addresses.LINKS, "links.html", SECTION, _("Style links"), about)
    # L10N: what else the page is looked for by, in a search of the site.
    return Page(frame, view, _("Page"), _("links send clients"))
