"""How does a view become a page? The theme's templates, in an environment of our own.

MkDocs' own environment does not escape what it prints; this one escapes everything that comes
from the studio's files, and stumbles over a name that a view does not have.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from pathlib import Path
from posixpath import dirname, relpath
from typing import Any
from urllib.parse import quote

from jinja2 import Environment, FileSystemLoader, StrictUndefined

import corymb.theme
from corymb.views.frame import PageFrame, SiteFrame

THEME = Path(str(corymb.theme.__file__)).parent
TEMPLATES = THEME / "templates"
ELSEWHERE = ("mailto:", "tel:", "https:", "http:", "data:", "#")


@cache
def environment() -> Environment:
    """The templates of the theme."""
    return Environment(
        loader=FileSystemLoader(TEMPLATES),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )


def render(site: SiteFrame, page: PageFrame, view: object) -> bytes:
    """One page in UTF-8."""
    template = environment().get_template(page.template)
    context: dict[str, Any] = {"site": site, "page": page, "view": view, "url": url_from(page.path)}
    return template.render(context).encode()


def url_from(page_path: str) -> Callable[[str], str]:
    """A function that gives the address of a place on the site as seen from `page_path`.

    Addresses elsewhere (`https:`, `mailto:`) and within the page (`#...`) stay as they are.
    """
    here = dirname(page_path)

    def url(address: str) -> str:
        if address.startswith(ELSEWHERE):
            return address
        path, mark, anchor = address.partition("#")
        return quote(relpath(path or ".", here or "."), safe="/.~-_") + mark + anchor

    return url
