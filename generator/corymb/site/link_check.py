"""Does every link and image of a site lead to something that is there?

MkDocs checks links in Markdown alone; this reads the finished pages, before they are published.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from html.parser import HTMLParser
from posixpath import dirname, join, normpath
from urllib.parse import unquote, urlsplit

SINGLE = ("href", "src", "poster", "action")
SEVERAL = ("srcset", "imagesrcset")


@dataclass(frozen=True, order=True)
class DeadLink:
    """An address on a page that leads nowhere."""

    page: str
    address: str

    def __str__(self) -> str:
        return f"{self.page}: ‘{self.address}’ leads nowhere"


class _Reader(HTMLParser):
    """Collects a page's addresses and the anchors that can be led to."""

    def __init__(self) -> None:
        super().__init__()
        self.addresses: list[str] = []
        self.anchors: set[str] = set()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        for name, value in attrs:
            if value is None:
                continue
            if name == "id":
                self.anchors.add(value)
            elif name in SINGLE:
                self.addresses.append(value)
            elif name in SEVERAL:
                self.addresses += [each.split()[0] for each in value.split(",") if each.strip()]


def dead_links(pages: Mapping[str, bytes], files: set[str], site_url: str) -> list[DeadLink]:
    """Every address on `pages` (path to HTML) that is neither a page nor one of `files`."""
    readers = {path: _read(html) for path, html in pages.items()}
    there = files | set(pages)
    found = {
        DeadLink(path, address)
        for path, reader in readers.items()
        for address in reader.addresses
        if not _leads_on(path, address, readers, there, site_url)
    }
    return sorted(found)


def _read(html: bytes) -> _Reader:
    reader = _Reader()
    reader.feed(html.decode())
    return reader


def _leads_on(
    page: str, address: str, readers: Mapping[str, _Reader], there: set[str], site_url: str
) -> bool:
    if site_url and address.startswith(site_url):
        address, page = address.removeprefix(site_url) or "index.html", "index.html"
    parts = urlsplit(address)
    if parts.scheme or parts.netloc:
        return True
    target = normpath(join(dirname(page), unquote(parts.path))) if parts.path else page
    if target not in there:
        return False
    anchor = unquote(parts.fragment)
    return not anchor or target not in readers or anchor in readers[target].anchors


def external_addresses(html: bytes) -> Iterator[str]:
    """The addresses on other hosts that a page names."""
    for address in _read(html).addresses:
        if urlsplit(address).netloc:
            yield address
