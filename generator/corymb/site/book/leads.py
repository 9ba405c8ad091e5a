"""Where do a book's links lead? To its own pages, to the world outside, or nowhere."""

from __future__ import annotations

import re
from collections.abc import Mapping

from corymb.site.one_file.tags import Attributes, each_tag, path_of, tag_of
from corymb.views.compose import addresses
from corymb.views.compose.book import LESSONS, of_chapter, of_lesson, of_recipe
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.prose import Prose

OUTSIDE = ("mailto:", "tel:", "https:", "http:")
HEADING = re.compile(r"<(/?)h([2-5])\b[^<>]*>")
BELOW = 2
"""A lesson's own parts are two levels below those that it has on its page: its name is a third."""


def anchors_of(catalogue: Catalogue) -> dict[str, str]:
    """What in the book stands for each page of the site."""
    found = {addresses.LESSONS: LESSONS}
    for recipe_id, looks in catalogue.looks.items():
        found |= {addresses.of_look(look): of_recipe(recipe_id) for look in looks.values()}
    found |= {addresses.of_style(style): of_chapter(style) for style in catalogue.studio.styles}
    found |= {addresses.of_lesson(each): of_lesson(each) for each in catalogue.studio.techniques}
    return found


def in_book(prose: Prose, page_path: str, anchors: Mapping[str, str]) -> Prose:
    """A lesson's text with its headings below its name, and its links within the book."""

    def lead(attributes: Attributes) -> str:
        address = attributes.get("href") or ""
        if address.startswith(OUTSIDE):
            return tag_of("a", attributes)
        anchor = anchors.get(path_of(address, page_path)) if address[:1] != "#" else None
        return tag_of("a", {"href": f"#{anchor}"} if anchor else {})

    html = HEADING.sub(lambda found: f"<{found[1]}h{int(found[2]) + BELOW}>", prose.html)
    return Prose(each_tag(html, "a", lead), ())


def without_dead(html: str) -> str:
    """The book without those leads whose place isn't in it, as in a book of some styles alone."""
    there = set(re.findall(r'\sid="([^"]+)"', html))

    def kept(attributes: Attributes) -> str | None:
        address = attributes.get("href") or ""
        dead = address.startswith("#") and address[1:] not in there
        return tag_of("a", {}) if dead else None

    return each_tag(html, "a", kept)
