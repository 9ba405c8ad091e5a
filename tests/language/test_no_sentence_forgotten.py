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
from corymb.studio.words import FORMS, HANDOVERS, HAZARDS, LIGHTS, SETTINGS, VESSELS

PACKAGE = Path(corymb.__file__).parent

PLACES = (
    "views/*.py",
    "views/compose/*.py",
    "views/compose/orders/*.py",
    "views/compose/training/*.py",
    "site/pages/*.py",
    "site/structured_data.py",
    "picture/words.py",
    "trade/*.py",
    "trade/colour/*.py",
    "trade/cut/*.py",
    "trade/hours/*.py",
    "trade/light/*.py",
    "trade/load/*.py",
    "trade/money/*.py",
    "trade/orders/*.py",
    "trade/season/*.py",
    "trade/swaps/*.py",
    "cli/*_sheet.py",
    "cli/sheet.py",
    "cli/strip.py",
    "cli/then.py",
    "site/tables.py",
)
"""Where sentences for pages and reports are put together. Another folder is another line."""

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
    "compile",
    "replace",
}
"""Calls that look into a text for what they are given."""

NO_SENTENCES = {
    "views/compose/addresses.py": "addresses",
    "views/compose/tint.py": "names of colour spaces",
    "trade/changes.py": "what is said of a mistake in a recipe",
    "trade/colour/words.py": "families of colours, as filters have them",
    "trade/cut/problem.py": "what is said of a cut that nobody can plan",
    "trade/load/packing.py": "how rows run, which nobody is told",
    "trade/load/trips.py": "what a studio's own notes are searched for",
    "trade/orders/as_made.py": "a variant that nobody reads the name of",
    "trade/swaps/fitting.py": "what is said of a mistake in a style",
    "trade/swaps/made.py": "a variant that nobody reads the name of",
    "trade/written_places.py": "keys of files",
}

NOT_FOR_READING = {
    "SECTION": "the section of the menu, as it stands in addresses",
    "BEHIND": "English words that a stem's name is searched for, in English alone",
    "AFTER_SOMEBODY": "the same",
    "GRAVER": "hazards, as files have them",
    "TOLD": "kinds of work and of what is loaded, in the order in which they are told",
    "PARTS": "English words that a step is searched for, in English alone",
    "VAGUE": "the same",
    "FLOOR_TO_TAILGATE": "heights, as their table names them",
    "__all__": "names in the code",
}
"""Names of tables and constants of keys."""

KEYS = {
    "accent depth light": "roles",
    "staff clients everyone nobody": "audiences",
    "pictured variant swaps none": "states of a week",
    "narrow middling wide": "how wide a card is, for its filter",
    "noon shade canvas window": "lights, as the addresses of pictures name them",
    "worn carried": "places of a style, as files have them",
    "outside essential variant": "what speaks against a swap, as a table of sentences has it",
    "standard": "CLDR's name for a form of money",
    "home": "the front page",
    "lessons index": "parts of the book, beside its styles",
}
"""Single words that are values of a view, which scripts, filters and styles go by."""
KEY_WORDS = {word for words in KEYS for word in words.split()}

FIXED = {*FORMS, *HAZARDS, *LIGHTS, *SETTINGS, *HANDOVERS, *VESSELS}
"""Words of the studio's files, which `trade` goes by and `views` say."""

OF_TRADE = {
    "cut, condition, make, hand over, use": "steps of an order's work",
    "vase life, too late": "kinds of what won't do",
    "experienced, helper": "kinds of hands",
    "men, women, close to the body": "whom a filter is for, and how far they reach",
    "piece, bucket, empty vessel": "how something travels",
    "nothing, one, touch and go": "why a visit is thin",
    "sure, likely, not then": "how sure something is, which `views` say",
    "added, dropped, more, fewer": "how a line differs, which `views` say",
    "warm, cool, neutral": "tempers of a colour",
    "flowers, grasses and leaves, bare wood, fruit, hanging": "what a stem is to a swap",
    "dusk, dark, low sun": "lights that no file names",
    "oklch, srgb": "spaces of colours",
    "green": "a family of colours",
    "regular": "the size that is everyone's",
    "stems, asked": "columns of an order's money, by their names in the code",
    "time ": "a key of a recipe, before the value to write there",
    "variants, builds on": "keys of a recipe",
}
"""Words that `trade` and the reports tell things apart by, and nobody reads so."""
TRADE_WORDS = FIXED | {word for words in OF_TRADE for word in words.split(", ")}

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
    keys = set() if module.startswith(("views/", "site/", "picture/")) else TRADE_WORDS
    found = forgotten((PACKAGE / module).read_text("utf-8"))
    assert [text for text in found if text not in keys] == []


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
        ('LENGTH = re.compile(r"(inches|feet)")', []),
        ('state == "not then" or state in ("none", "swaps at most")', []),
        ('frame("orders.html", f"orders/{id}-bench.html#line")', []),
        ('{"@type": "Florist", "name": "Flowers"}', ["Flowers"]),
    ],
)
def test_a_sentence_is_told_from_a_key(code: str, found: list[str]) -> None:
    assert forgotten(code) == found
