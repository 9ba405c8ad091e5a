"""What stands in a finished page's tags, and what do its addresses mean?

In pages that our templates make, `<` and `>` stand in tags alone (as `link_check` goes by, too).
"""

from __future__ import annotations

import re
from base64 import b64encode
from collections.abc import Callable, Mapping
from html import escape, unescape
from posixpath import dirname, join, normpath
from urllib.parse import unquote

Files = Mapping[str, bytes]
"""What a page is made of, by path from the site's root."""

TAG = re.compile(r"<(?P<name>[a-zA-Z][\w-]*)(?P<rest>[^<>]*)>")
ATTRIBUTE = re.compile(r'\s([\w:-]+)(?:="([^"]*)")?')

Attributes = dict[str, str | None]
"""As they are meant; None for one without a value."""


def attributes_of(rest: str) -> Attributes:
    """The attributes of a tag, from what follows its name."""
    return {name: unescape(value) if value else value for name, value in _pairs(rest)}


def _pairs(rest: str) -> list[tuple[str, str | None]]:
    return [(m[1], m[2]) for m in ATTRIBUTE.finditer(rest)]


def tag_of(name: str, attributes: Attributes) -> str:
    """The tag again."""
    said = (
        f" {key}" if value is None else f' {key}="{escape(value, quote=True)}"'
        for key, value in attributes.items()
    )
    return f"<{name}{''.join(said)}>"


def each_tag(html: str, name: str, said: Callable[[Attributes], str | None]) -> str:
    """The page with each tag of a name said anew; as it was where `said` gives nothing."""

    def anew(found: re.Match[str]) -> str:
        if found["name"].lower() != name:
            return found[0]
        new = said(attributes_of(found["rest"]))
        return found[0] if new is None else new

    return TAG.sub(anew, html)


def path_of(address: str, seen_from: str) -> str:
    """Where an address within the site leads, as seen from a file of it."""
    path = unquote(address.partition("#")[0].partition("?")[0])
    return normpath(join(dirname(seen_from), path))


def data_uri(data: bytes, media_type: str) -> str:
    """A file as an address that holds it whole."""
    return f"data:{media_type};base64,{b64encode(data).decode()}"
