"""How do a page's images come along, none larger than a phone shows it?

A photo comes in the JPEG of the width that serves, since every phone's mail can show that; a
drawing as pixels, since most of them are many times the size when drawn.
"""

from __future__ import annotations

import re
from functools import cache

from corymb.site.one_file.tags import Attributes, Files, data_uri, each_tag, path_of, tag_of
from corymb.site.raster import raster_of

WIDTHS = (960, 800, 640, 480, 360, 280)
"""Pixels, the widest that fits into the file first: 960 are more than a phone's 390 points."""

UNDER = re.compile(r'<img class="photo-under"[^<>]*>|<svg class="photo-under".*?</svg>', re.DOTALL)
SOURCE = re.compile(r"<source [^<>]*>\n?")
LATE = ("srcset", "sizes", "loading", "decoding", "fetchpriority")


def with_images(html: str, seen_from: str, files: Files, width_px: int) -> str:
    """The page with every image in it, none wider than so many pixels."""

    def held(attributes: Attributes) -> str | None:
        source = attributes.get("src") or ""
        if source.startswith("data:"):
            return None
        new = {key: value for key, value in attributes.items() if key not in LATE}
        return tag_of("img", new | {"src": _data(attributes, seen_from, files, width_px)})

    return each_tag(SOURCE.sub("", UNDER.sub("", html)), "img", held)


def _data(attributes: Attributes, seen_from: str, files: Files, width_px: int) -> str:
    source = path_of(attributes["src"] or "", seen_from)
    if source.endswith(".svg"):
        return data_uri(_drawn(files[source].decode(), width_px), "image/jpeg")
    return data_uri(files[_of_width(attributes, seen_from, source, width_px)], "image/jpeg")


@cache
def _drawn(svg: str, width_px: int) -> bytes:
    return raster_of(svg, width_px, "jpeg")


def _of_width(attributes: Attributes, seen_from: str, source: str, width_px: int) -> str:
    """The widest of an image's files that isn't wider, or the narrowest there is."""
    widths = {}
    for each in (attributes.get("srcset") or "").split(","):
        address, _, width = each.strip().partition(" ")
        if width.endswith("w"):
            widths[int(width[:-1])] = path_of(address, seen_from)
    fitting = [width for width in widths if width <= width_px]
    return widths[max(fitting) if fitting else min(widths)] if widths else source
