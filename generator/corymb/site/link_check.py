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
class Addresses:
    """The addresses that a page names, and the anchors on it that can be led to."""

    named: tuple[str, ...]
    anchors: frozenset[str]


def dead_links(pages: Mapping[str, bytes], files: set[str], base_path: str) -> list[DeadLink]:
    """Every address on `pages` (path to HTML) that is neither a page nor one of `files`.

    `base_path` is where the site begins on its host, for addresses that start with `/`.
    """
    read = {path: addresses_in(html) for path, html in pages.items()}
    there = files | set(pages)
    found = {
        DeadLink(path, address)
        for path, addresses in read.items()
        for address in addresses.named
        if not _leads_on(path, address, read, there, base_path)
    }
    return sorted(found)


def addresses_in(html: bytes) -> Addresses:
    """What a page leads to, and where on it one can be led."""
    named: list[str] = []
    anchors: set[str] = set()
    for tag in TAG.findall(html.decode()):
        for name, value in ATTRIBUTE.findall(tag):
            value = unescape(value)
            if name == "id":
                anchors.add(value)
            elif name in SEVERAL:
                named += [each.split()[0] for each in value.split(",") if each.strip()]
            else:
                named.append(value)
    return Addresses(tuple(named), frozenset(anchors))


def _leads_on(
    page: str, address: str, read: Mapping[str, Addresses], there: set[str], base_path: str
) -> bool:
    parts = urlsplit(address)
    if parts.scheme or parts.netloc:
        return True
    if address.startswith(base_path):
        parts, page = urlsplit(address.removeprefix(base_path) or "index.html"), "index.html"
    target = normpath(join(dirname(page), unquote(parts.path))) if parts.path else page
    if target not in there:
        return False
    anchor = unquote(parts.fragment)
    return not anchor or target not in read or anchor in read[target].anchors
