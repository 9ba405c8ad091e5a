"""How do visitors and search engines find a page? The search index, the sitemap, robots.txt."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from xml.sax.saxutils import escape

from corymb.site.pages import Page
from corymb.views.pieces import Audience

LONGEST = 600  # characters of a page's text that the index holds


def search_index(pages: Iterable[Page]) -> bytes:
    """What the site's own search reads: what it shows of every page, and its other words."""
    entries = [
        {
            "title": page.frame.title,
            "href": page.frame.path,
            "kind": page.kind,
            "about": page.frame.description,
            "text": _plain(page.text)[:LONGEST],
        }
        for page in pages
        if page.kind
    ]
    return json.dumps(entries, ensure_ascii=False, separators=(",", ":")).encode()


def sitemap(pages: Iterable[Page]) -> bytes:
    """The addresses for search engines (sitemaps.org, protocol 0.9)."""
    urls = [
        f"  <url><loc>{escape(page.frame.canonical)}</loc></url>"
        for page in pages
        if page.frame.indexed and page.frame.canonical
    ]
    return "\n".join(
        [
            '<?xml version="1.0" encoding="UTF-8"?>',
            '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
            *urls,
            "</urlset>",
            "",
        ]
    ).encode()


def robots(audience: Audience, site_url: str) -> bytes:
    """What search engines may read (RFC 9309): all of the clients' site, none of the staff's."""
    if audience == "staff":
        return b"User-agent: *\nDisallow: /\n"
    where = f"Sitemap: {site_url}sitemap.xml\n" if site_url else ""
    return f"User-agent: *\nAllow: /\n{where}".encode()


def _plain(markdown: str) -> str:
    """Markdown without its marks, on one line."""
    text = re.sub(r"\]\([^)]*\)", "", markdown)
    return " ".join(re.sub(r"[#*_`>\[\]|]", " ", text).split())
