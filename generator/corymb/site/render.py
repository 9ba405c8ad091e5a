"""How does a view become a page? The theme's templates, in an environment of our own.

MkDocs' own environment does not escape what it prints; this one escapes everything that comes
from the studio's files, and stumbles over a name that a view does not have.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from functools import cache, lru_cache
from pathlib import Path
from posixpath import dirname, relpath
from typing import Any
from urllib.parse import quote

from jinja2 import Environment, FileSystemLoader, StrictUndefined, pass_context
from jinja2.runtime import Context
from markupsafe import Markup, escape

import corymb.theme
from corymb.language import gettext, ngettext, pgettext
from corymb.language.locales import and_list, locale_spoken
from corymb.views.compose.asking import on_one_line
from corymb.views.compose.states import words_of_states
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import percent_words
from corymb.views.frame import PageFrame, SiteFrame
from corymb.views.pieces import Link

THEME = Path(str(corymb.theme.__file__)).parent
TEMPLATES = THEME / "templates"
CAPITAL_NOUNS = ("de", "lb")  # German and Luxembourgish; from memory
APOSTROPHE = re.compile(r"(?<=\w)'(?=\w)(?!\S*@)|(?<=s)'(?=\s|$)")
"""Not one in an e-mail address, which would be another address."""
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
    _give_words(templates)
    templates.policies["json.dumps_kwargs"] = {"sort_keys": False}  # the order of ways is told
    return templates


def _give_words(templates: Environment) -> None:
    """What templates say, asked anew at each word, so that one environment serves every language.

    What is put into a sentence is typeset and escaped like all else; the sentence is ours.
    """
    templates.policies["ext.i18n.trimmed"] = True
    templates.install_gettext_callables(  # type: ignore[attr-defined]
        gettext, ngettext, newstyle=True, pgettext=pgettext
    )
    words: dict[str, Any] = templates.globals
    words |= {name: _typeset_within(words[name]) for name in ("gettext", "ngettext", "pgettext")}
    words |= {"state_words": words_of_states, "trade_word": trade_word}
    templates.filters |= {
        "and_list": in_one_list,
        "linked": linked,
        "one_line": on_one_line,
        "capital": with_capital,
        "small": without_capital,
        "noun_within": noun_within,
        "in_percent": in_percent,
    }


def _typeset_within(say: Callable[..., Any]) -> Callable[..., Any]:
    @pass_context
    def said(context: Context, *words: Any, **put_in: object) -> Any:
        return say(context, *words, **{name: typeset(value) for name, value in put_in.items()})

    return said


def linked(link: Link, url: Callable[[str], str]) -> Markup:
    """A link to stand within a sentence."""
    return Markup('<a href="{}">{}</a>').format(url(link.href), typeset(link.label))


def in_one_list(values: Iterable[object]) -> Markup:
    """Names or links as a sentence lists them: `a, b and c`."""
    return Markup(and_list(str(escape(typeset(value))) for value in values))


def with_capital(words: str) -> str:
    """Words at the head of a sentence; what stands behind the first letter stays as it is."""
    return words[:1].upper() + words[1:]


def without_capital(words: str) -> str:
    """The same within a sentence."""
    return words[:1].lower() + words[1:]


def noun_within(noun: str) -> str:
    """A noun within a sentence: with its capital where nouns have one."""
    return noun if locale_spoken().language in CAPITAL_NOUNS else without_capital(noun)


def in_percent(share: float) -> str:
    """`33 %`; `under 1 %` of what is there, but would be rounded to nothing."""
    if share > 0 and not round(share):
        return gettext("under {percent}").format(percent=percent_words(1))
    return percent_words(round(share))


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
