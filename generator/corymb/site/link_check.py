"""Does every link and image of a site lead to something that is there?

The last net, for slips in the templates: links in the studio's texts have been looked at where
they are written (`corymb.checks.links`). This reads the finished pages, before they are published.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from html import unescape
from posixpath import dirname, join, normpath
from urllib.parse import unquote, urlsplit

TAG = re.compile(r"<[a-zA-Z][^<>]*>")
"""A start tag. In pages made by our templates and by Markdown, `<` and `>` stand nowhere else."""

ATTRIBUTE = re.compile(r'\s(id|href|src|action|srcset|imagesrcset)="([^"]*)"')
SEVERAL = ("srcset", "imagesrcset")


@dataclass(frozen=True, order=True)
class DeadLink:
    """An address on a page that leads nowhere."""

    page: str
    address: str

    def __str__(self) -> str:
        return (
            f"‘{self.address}’ on the finished page {self.page} leads nowhere. The studio's files "
            "have been checked, so look for it in the templates."
        )


@dataclass(frozen=True)
class Leads:
    """What a page leads to, and the anchors on it that can be led to.

    Each address as it is written, with the path that it leads to and the anchor there.
    """

    named: tuple[tuple[str, str, str], ...]
    anchors: frozenset[str]


Known = dict[str, tuple[bytes, Leads]]
"""What was read on each page before, and the page it was read on."""


def dead_links(
    pages: Mapping[str, bytes], files: set[str], base_path: str, known: Known | None = None
) -> list[DeadLink]:
    """Every address on `pages` (path to HTML) that is neither a page nor one of `files`.

    `base_path` is where the site begins on its host, for addresses that start with `/`. A page that
    is `known` already isn't read again.
    """
    known = {} if known is None else known
    read = {path: _read(path, html, base_path, known) for path, html in pages.items()}
    there = files | set(pages)
    found = {
        DeadLink(path, address)
        for path, leads in read.items()
        for address, target, anchor in leads.named
        if target not in there or (anchor and target in read and anchor not in read[target].anchors)
    }
    return sorted(found)


def _read(path: str, html: bytes, base_path: str, known: Known) -> Leads:
    before = known.get(path)
    if before is None or before[0] is not html:
        before = known[path] = html, leads_in(html, path, base_path)
    return before[1]


def leads_in(html: bytes, page: str, base_path: str) -> Leads:
    """Where a page leads within the site, and where on it one can be led."""
    named: dict[str, None] = {}
    anchors: set[str] = set()
    for tag in TAG.findall(html.decode()):
        for name, value in ATTRIBUTE.findall(tag):
            value = unescape(value)
            if name == "id":
                anchors.add(value)
            elif name in SEVERAL:
                named |= dict.fromkeys(each.split()[0] for each in value.split(",") if each.strip())
            else:
                named[value] = None
    within = ((address, _within(page, address, base_path)) for address in named)
    return Leads(tuple((address, *place) for address, place in within if place), frozenset(anchors))


def _within(page: str, address: str, base_path: str) -> tuple[str, str] | None:
    """The path and the anchor that an address leads to; none where it leads elsewhere."""
    parts = urlsplit(address)
    if parts.scheme or parts.netloc:
        return None
    if address.startswith(base_path):
        parts, page = urlsplit(address.removeprefix(base_path) or "index.html"), "index.html"
    target = normpath(join(dirname(page), unquote(parts.path))) if parts.path else page
    return target, unquote(parts.fragment)
