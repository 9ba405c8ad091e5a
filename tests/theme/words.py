"""What does a template say that no translator sees, printed past `_()` and `{% trans %}`?"""

from __future__ import annotations

import re
from collections.abc import Iterator
from html.parser import HTMLParser

from jinja2 import nodes

from corymb.site.render import environment

SAID = ("alt", "title", "aria-label", "aria-description", "placeholder", "summary")
"""Attributes whose words reach people; so does `content`, but in a `meta` for programs."""
TECHNICAL = (
    "viewport",
    "robots",
    "referrer",
    "color-scheme",
    "theme-color",
    "twitter:card",
    "og:type",
    "og:image:type",
)
MUTE = ("script", "style")
SILENT = ("_", "gettext", "ngettext", "pgettext", "url", "trade_word")
"""Functions whose texts are translated, or are ids and addresses."""
LETTERS = re.compile(r"[^\W\d_]")
WORDS = re.compile(r"^[A-Z][a-z]|[A-Za-z,;:] [A-Za-z]")
"""What a text handed to a macro looks like when people read it; `ticks` and `h3` are its kinds."""


def untranslated(source: str) -> list[str]:
    """Every text of a template that people would read in English whatever the site's language."""
    tree = environment().parse(source)
    page = Page()
    page.feed("".join(_printed(tree.body)))
    page.close()
    return [*page.found, *_handed(tree)]


class Page(HTMLParser):
    """Collects the texts and the spoken attributes that hold letters."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.found: list[str] = []
        self.mute = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.mute = tag in MUTE
        named = dict(attrs)
        of_a_name = named.get("name") or named.get("property") or named.get("http-equiv")
        spoken = [*SAID, *(["content"] if tag == "meta" and of_a_name not in TECHNICAL else [])]
        if named.get("http-equiv"):
            return
        self.found += [
            f"{name}={value}"
            for name, value in attrs
            if name in spoken and LETTERS.search(value or "")
        ]

    def handle_endtag(self, tag: str) -> None:
        self.mute = False

    def handle_data(self, data: str) -> None:
        if LETTERS.search(data) and not self.mute:
            self.found.append(" ".join(data.split()))


def _printed(body: list[nodes.Node]) -> Iterator[str]:
    """The template's own text, with the words of every branch, and nothing for what it is given."""
    for node in body:
        if isinstance(node, nodes.Output):
            for part in node.nodes:
                yield from _words_of(part)
        elif not isinstance(node, nodes.Assign):
            for inner in ("body", "elif_", "else_"):
                yield from _printed(getattr(node, inner, []))


def _words_of(part: nodes.Node) -> Iterator[str]:
    """The texts that an expression may come to."""
    if isinstance(part, nodes.TemplateData):
        yield part.data
    elif isinstance(part, nodes.Const):
        yield str(part.value) if isinstance(part.value, str) else ""
    elif isinstance(part, nodes.CondExpr):
        yield from (word for way in (part.expr1, part.expr2) if way for word in _words_of(way))
    elif isinstance(part, (nodes.Or, nodes.And, nodes.Add)):
        yield from (word for way in (part.left, part.right) for word in _words_of(way))
    elif isinstance(part, nodes.Concat):
        yield from (word for each in part.nodes for word in _words_of(each))
    elif isinstance(part, nodes.Filter) and part.node:
        yield from _words_of(part.node)


def _handed(tree: nodes.Template) -> Iterator[str]:
    """Texts handed to a macro, or kept under a name or in a list to be printed."""
    for node in tree.find_all((nodes.Call, nodes.Assign, nodes.For, nodes.Macro)):
        for given in _given(node):
            yield from (text for text in _texts(given) if WORDS.search(text))


def _given(node: nodes.Node) -> list[nodes.Node]:
    if isinstance(node, nodes.Call):
        called = node.node.name if isinstance(node.node, nodes.Name) else ""
        return [] if called in SILENT else [*node.args, *node.kwargs]
    if isinstance(node, nodes.Assign):
        return [node.node]
    if isinstance(node, nodes.For):
        return [node.iter]
    return list(node.defaults) if isinstance(node, nodes.Macro) else []


def _texts(node: nodes.Node) -> Iterator[str]:
    """The literal texts within an expression, but for those that a silent function is given."""
    if isinstance(node, nodes.Const) and isinstance(node.value, str):
        yield node.value
    elif not (
        isinstance(node, nodes.Call)
        and isinstance(node.node, nodes.Name)
        and node.node.name in SILENT
    ):
        for inner in node.iter_child_nodes():
            yield from _texts(inner)
