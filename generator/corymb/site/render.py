"""How does a view become a page? The theme's templates, in an environment of our own.

MkDocs' own environment does not escape what it prints; this one escapes everything that comes
from the studio's files, and stumbles over a name that a view does not have.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache, lru_cache
from pathlib import Path
from posixpath import dirname, relpath
from typing import Any
from urllib.parse import quote

from jinja2 import Environment, FileSystemLoader, StrictUndefined

import corymb.theme
from corymb.language import gettext, ngettext, pgettext
from corymb.views.compose.states import STATE_WORDS
from corymb.views.frame import PageFrame, SiteFrame

THEME = Path(str(corymb.theme.__file__)).parent
TEMPLATES = THEME / "templates"
APOSTROPHE = re.compile(r"(?<=\w)'(?=\w)|(?<=s)'(?=\s|$)")
ELSEWHERE = ("mailto:", "tel:", "https:", "http:", "data:", "#")


def typeset(value: object) -> object:
    """A name or a sentence with the apostrophes that print uses; everything else as it is."""
    if type(value) is str and "'" in value:
        return APOSTROPHE.sub("’", value)
    return value


@cache
def environment() -> Environment:
    """The templates of the theme, and the words that all of them share."""
    templates = Environment(
        loader=FileSystemLoader(TEMPLATES),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
        finalize=typeset,
        extensions=["jinja2.ext.i18n"],
    )
    # Asked anew at each word, so one environment serves every language.
    templates.install_gettext_callables(  # type: ignore[attr-defined]
        gettext, ngettext, newstyle=True, pgettext=pgettext
    )
    templates.policies["json.dumps_kwargs"] = {"sort_keys": False}  # the order of ways is told
    templates.globals["state_words"] = dict(STATE_WORDS)
    return templates


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
        return _from_folder(here, path) + mark + anchor

    return url


@lru_cache(maxsize=65536)
def _from_folder(here: str, path: str) -> str:
    """The same few addresses are asked for on every page."""
    return quote(relpath(path or ".", here or "."), safe="/.~-_")
