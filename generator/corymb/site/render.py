"""How does a view become a page? The theme's templates, in an environment of our own.

MkDocs' own environment does not escape what it prints; this one escapes everything that comes
from the studio's files, and stumbles over a name that a view does not have.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import cache, lru_cache, partial
from pathlib import Path
from posixpath import dirname, relpath
from typing import Any
from urllib.parse import quote

from jinja2 import Environment, StrictUndefined
from markupsafe import Markup, escape

import corymb.theme
from corymb.language import gettext, ngettext, pgettext
from corymb.language.locales import and_list, locale_spoken
from corymb.site.quick_templates import QuickEnvironment, SettledLoader, typeset
from corymb.views.compose.asking import on_one_line
from corymb.views.compose.states import words_of_states
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import percent_words
from corymb.views.frame import PageFrame, SiteFrame
from corymb.views.pieces import Link

THEME = Path(str(corymb.theme.__file__)).parent
TEMPLATES = THEME / "templates"
CAPITAL_NOUNS = ("de", "lb")  # German and Luxembourgish; from memory
ELSEWHERE = ("mailto:", "tel:", "https:", "http:", "data:", "#")


@cache
def environment() -> Environment:
    """The templates of the theme, and the words that all of them share."""
    templates = QuickEnvironment(
        loader=SettledLoader(TEMPLATES),
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
    words |= {"_": _gettext, "gettext": _gettext, "ngettext": _ngettext, "pgettext": _pgettext}
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


def _gettext(message: str, /, **put_in: object) -> Markup:
    return _sentence(gettext(message), put_in)


def _ngettext(one: str, many: str, number: int, /, **put_in: object) -> Markup:
    return _sentence(ngettext(one, many, number), {"num": number, **put_in})


def _pgettext(context: str, message: str, /, **put_in: object) -> Markup:
    return _sentence(pgettext(context, message), {"context": context, **put_in})


def _sentence(text: str, put_in: dict[str, object]) -> Markup:
    if not put_in:
        return _as_it_is(text)
    return Markup(text) % {name: typeset(value) for name, value in put_in.items()}


@lru_cache(maxsize=4096)
def _as_it_is(text: str) -> Markup:
    return Markup(text) % {}


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
    return partial(_seen_from, dirname(page_path))


@lru_cache(maxsize=65536)
def _seen_from(here: str, address: str) -> str:
    """The same few addresses are asked for on every page."""
    if address.startswith(ELSEWHERE):
        return address
    path, mark, anchor = address.partition("#")
    return quote(relpath(path or ".", here or "."), safe="/.~-_") + mark + anchor
