"""What do staff see of style links: what each shows, to whom, until when, and where to open it?"""

from __future__ import annotations

from datetime import date, timedelta

from corymb.language import gettext as _
from corymb.studio.models.link import StyleLink
from corymb.trade.order_lines import REGULAR
from corymb.trade.style_links import ShownLook, shown_looks, stands
from corymb.views.compose import addresses
from corymb.views.compose.answers import look_name, state_words
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.when import day_in_full
from corymb.views.compose.trade_words import size_words
from corymb.views.compose.week_words import day_words
from corymb.views.links import LinksView, ListedLink, ListedLook
from corymb.views.pieces import Link

AHEAD = timedelta(weeks=3)
"""How far off the day of the sample is."""


def links_view(catalogue: Catalogue, site_url: str) -> LinksView:
    """The list: the next date first, and of those that are over the last one."""
    links = sorted(catalogue.studio.links.values(), key=lambda link: (link.date, link.id))
    today = catalogue.today
    return LinksView(
        standing=tuple(
            _listed(catalogue, link, site_url, today) for link in links if stands(link, today)
        ),
        over=tuple(
            _listed(catalogue, link, site_url, today)
            for link in reversed(links)
            if not stands(link, today)
        ),
        sample=next((recipe.id for recipe in catalogue.recipes() if not recipe.draft), ""),
        sample_day=(today + AHEAD).isoformat(),
        has_host=bool(site_url),
    )


def _listed(catalogue: Catalogue, link: StyleLink, site_url: str, today: date) -> ListedLink:
    shown = shown_looks(link, catalogue.studio.recipes, catalogue.looks, catalogue.makeable)
    return ListedLink(
        title=link.title,
        client=link.for_,
        day=day_in_full(link.date),
        last_day=day_words(link.expires),
        address=f"{site_url}{addresses.of_link(link.code)}",
        looks=tuple(_look(catalogue, each) for each in shown),
    )


def _look(catalogue: Catalogue, shown: ShownLook) -> ListedLook:
    asked, made = shown.asked, shown.best.look
    if shown.is_draft:
        state = _("a draft: not on the client’s page")
    elif shown.instead:
        name = look_name(catalogue, made)
        state = _("not then; {name} in its place").format(name=name)
    else:
        state = _(state_words(catalogue, shown.best, asked.look))
    return ListedLook(
        look=Link(look_name(catalogue, asked.look), addresses.of_look(asked.look)),
        size="" if asked.size == REGULAR else size_words(asked.size),
        state=state,
        warns=shown.is_draft or shown.instead or not shown.can,
    )
