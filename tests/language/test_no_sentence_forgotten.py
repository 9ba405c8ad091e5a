"""Every word that Python puts on a page can be said in another language.

A text in the code passes where it isn't for reading on a page: a docstring, an error, a key, what
something is compared with, an address, a file's name. What else is no sentence is listed here, with
why. Templates and scripts have tests of their own.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

import corymb

PACKAGE = Path(corymb.__file__).parent

PLACES = (
    "views/*.py",
    "views/compose/*.py",
    "views/compose/orders/*.py",
    "site/pages/*.py",
    "site/structured_data.py",
    "picture/words.py",
)
"""Where sentences for pages are put together. Another folder is another line."""

MARKS = {"_", "gettext", "ngettext", "pgettext", "noted"}
"""What a sentence has to go through (`corymb.language`)."""

BY_NAME = {"trade_word", "told", "steps", "written", "get", "getattr", "_named", "pop", "Literal"}
"""Calls that are given a key, not a sentence."""

LOOKED_AT = {
    "split",
    "partition",
    "startswith",
    "endswith",
    "removeprefix",
    "removesuffix",
    "replace",
}
"""Calls that look into a text for what they are given."""

NO_SENTENCES = {
    "views/compose/addresses.py": "addresses",
    "views/compose/tint.py": "names of colour spaces",
}

NOT_FOR_READING = {
    "SECTION": "the section of the menu, as it stands in addresses",
    "BEHIND": "English words that a stem's name is searched for, in English alone",
    "AFTER_SOMEBODY": "the same",
    "GRAVER": "hazards, as files have them",
    "TOLD": "kinds of work and of what is loaded, in the order in which they are told",
    "__all__": "names in the code",
}
"""Names of tables and constants of keys."""

KEYS = {
    "accent depth light": "roles",
    "staff clients everyone nobody": "audiences",
    "pictured variant swaps none": "states of a week",
    "narrow middling wide": "how wide a card is, for its filter",
    "noon shade canvas": "lights, as the addresses of pictures name them",
    "worn carried": "places of a style, as files have them",
    "outside essential variant": "what speaks against a swap, as a table of sentences has it",
    "standard": "CLDR's name for a form of money",
    "home": "the front page",
    "lessons index": "parts of the book, beside its styles",
}
"""Single words that are values of a view, which scripts, filters and styles go by."""
KEY_WORDS = {word for words in KEYS for word in words.split()}

ADDRESS = re.compile(r"[\w./#:?=&@%-]*[./#:?=&@_-][\w./#:?=&@%-]*")
PLACEHOLDER = re.compile(r"\{[^{}]*\}")
WORD = re.compile(r"[^\W\d_]{2,}")


def forgotten(code: str) -> list[str]:
    """The texts of a module that are for reading and go through none of the marks."""
    tree = ast.parse(code)
    passed = {id(node) for group in _not_for_reading(tree) for node in ast.walk(group)}
    return [
        node.value
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str)
        if id(node) not in passed and _is_for_reading(node.value)
    ]


def _is_for_reading(text: str) -> bool:
    bare = PLACEHOLDER.sub("", text)
    return bool(WORD.search(bare)) and not ADDRESS.fullmatch(bare) and text not in KEY_WORDS


def _not_for_reading(tree: ast.Module) -> Iterator[ast.AST]:
    """The parts of a module in which no text is for reading."""
    for node in ast.walk(tree):
        match node:
            case ast.Expr(value=ast.Constant()):
                yield node  # a docstring, or a line below a constant
            case ast.Raise() | ast.keyword(arg="key"):
                yield node
            case ast.Call(func=ast.Name(id="MenuItem"), args=[_, _, section]):
                yield section
            case ast.Call(func=func):
                if _name(func) in MARKS | BY_NAME | LOOKED_AT:
                    yield from node.args
            case ast.Dict(keys=keys, values=values):
                yield from (key for key in keys if key)
                yield from (v for k, v in zip(keys, values, strict=True) if _is_type(k))
            case ast.Subscript(slice=index):
                yield index
            case ast.Compare(left=left, comparators=others):
                yield from (left, *others)
            case (
                ast.Assign(targets=[ast.Name(id=name)]) | ast.AnnAssign(target=ast.Name(id=name))
            ) if name in NOT_FOR_READING:
                yield node
            case ast.AnnAssign(annotation=annotation) | ast.arg(annotation=annotation):
                if annotation:
                    yield annotation


def _is_type(key: ast.expr | None) -> bool:
    """What schema.org calls a thing is the same in every language."""
    return isinstance(key, ast.Constant) and key.value == "@type"


def _name(func: ast.expr) -> str:
    return func.id if isinstance(func, ast.Name) else getattr(func, "attr", "")


def _modules() -> Iterator[str]:
    for place in PLACES:
        for file in sorted(PACKAGE.glob(place)):
            path = str(file.relative_to(PACKAGE))
            if path not in NO_SENTENCES:
                yield path


@pytest.mark.parametrize("module", list(_modules()))
def test_every_sentence_for_a_page_can_be_translated(module: str) -> None:
    assert forgotten((PACKAGE / module).read_text("utf-8")) == []


@pytest.mark.parametrize(
    ("code", "found"),
    [
        ('"""What is it?"""\nwords = "as pictured"', ["as pictured"]),
        ('words = _("as pictured")', []),
        ('words = f"{count} stems"', [" stems"]),
        ('words = ngettext("{n} stem", "{n} stems", n).format(n=n)', []),
        ('Fact(value, "grown")', ["grown"]),
        ('Fact(value, noted("grown"))', []),
        ('{"grown": 1}["grown"]', []),
        ('raise ValueError("nobody is there")', []),
        ('state == "not then" or state in ("none", "swaps at most")', []),
        ('frame("orders.html", f"orders/{id}-bench.html#line")', []),
        ('{"@type": "Florist", "name": "Flowers"}', ["Flowers"]),
    ],
)
def test_a_sentence_is_told_from_a_key(code: str, found: list[str]) -> None:
    assert forgotten(code) == found
