"""Which of the theme's styles does one page need, and how do its typefaces come along?"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from corymb.site.one_file.tags import TAG, Files, attributes_of, data_uri, path_of

COMMENT = re.compile(r"/\*.*?\*/", re.DOTALL)
URL = re.compile(r'url\("([^"]+)"\)')
FUNCTION = re.compile(r":(?:not|has|is|where)\([^()]*(?:\([^()]*\)[^()]*)*\)")
NAMED = re.compile(r"([.#]?)(-?[a-zA-Z_][\w-]*)")
BESIDE = re.compile(r"\[[^\]]*\]|::?[\w-]+(?:\([^()]*\))?")
"""Attributes and states: they don't tell whether a rule is needed."""

KEPT_WHOLE = ("@page", "@keyframes")
WITHIN = ("@media", "@supports")
TYPEFACE = "@font-face"
FONT_TYPES = {"woff2": "font/woff2"}


@dataclass(frozen=True)
class Words:
    """The names that a page's tags have: of elements, `.class` and `#id`."""

    known: frozenset[str]

    @classmethod
    def of(cls, html: str) -> Words:
        """Those of a page."""
        known: set[str] = {"html", "body"}
        for tag in TAG.finditer(html):
            attributes = attributes_of(tag["rest"])
            known.add(tag["name"].lower())
            known |= {f".{name}" for name in (attributes.get("class") or "").split()}
            known |= {f"#{name}" for name in (attributes.get("id") or "").split()}
        return cls(frozenset(known))

    def meet(self, selector: str) -> bool:
        """Whether a selector may be of something on the page."""
        plain = BESIDE.sub("", FUNCTION.sub("", selector))
        return all(f"{mark}{name}" in self.known for mark, name in NAMED.findall(plain))


def needed(css: str, html: str) -> str:
    """The rules that something on the page may go by, in their order, without comments."""
    return "\n".join(_kept(COMMENT.sub("", css), Words.of(html)))


def _kept(css: str, words: Words) -> Iterator[str]:
    for head, body in rules(css):
        if head.startswith(WITHIN):
            inner = "\n".join(_kept(body, words))
            if inner:
                yield f"{head} {{\n{inner}\n}}"
        elif head.startswith((TYPEFACE, *KEPT_WHOLE)):
            yield f"{head} {{{_tight(body)}}}"
        elif not head.startswith("@"):
            met = [each for each in _selectors(head) if words.meet(each)]
            if met:
                yield f"{', '.join(met)} {{{_tight(body)}}}"


def rules(css: str) -> Iterator[tuple[str, str]]:
    """Each rule's head and what stands between its braces; braces stand in no string of ours."""
    start = at = depth = 0
    head = ""
    for found in re.finditer(r"[{}]", css):
        if found[0] == "{":
            if depth == 0:
                head, start = css[at : found.start()].strip(), found.end()
            depth += 1
        else:
            depth -= 1
            if depth == 0:
                yield " ".join(head.split()), css[start : found.start()]
                at = found.end()


def _selectors(head: str) -> list[str]:
    """Selectors of a list, parted by the commas that stand in no brackets."""
    parts, depth = [""], 0
    for sign in head:
        depth += (sign in "([") - (sign in ")]")
        if sign == "," and not depth:
            parts.append("")
        else:
            parts[-1] += sign
    return [part.strip() for part in parts]


def _tight(body: str) -> str:
    return " ".join(body.split())


def with_typefaces(css: str, seen_from: str, files: Files) -> str:
    """The styles with each typeface in them, whole: the theme's are subsets already."""

    def held(found: re.Match[str]) -> str:
        path = path_of(found[1], seen_from)
        return f'url("{data_uri(files[path], FONT_TYPES[path.rpartition(".")[2]])}")'

    return URL.sub(held, css)
