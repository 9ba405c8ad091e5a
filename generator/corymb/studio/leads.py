"""What does a text in Markdown lead to, and where in it can one be led?

Read with the library that makes the pages, so that code, references and headings are seen alike.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache
from html import unescape
from typing import Any
from xml.etree.ElementTree import Element

import markdown
from markdown.extensions import Extension
from markdown.extensions.toc import slugify_unicode
from markdown.inlinepatterns import HTML_RE, InlineProcessor
from markdown.treeprocessors import Treeprocessor

from corymb.studio.comments import leave_out_comments

SAFE_SCHEMES = ("", "https", "http", "mailto", "tel")
"""What an address may begin with; any other could be a script."""

ALWAYS = ("tables", "toc", "sane_lists", "smarty")
"""The library's extensions that every text is read with."""

LIKELY = ("fenced_code", "attr_list")
"""MkDocs adds the first of its own accord, a studio may add the second; both bear on links."""

ANCHORS: dict[str, Any] = {"slugify": slugify_unicode, "separator": "-"}
"""How headings become anchors, the same for every studio: `#for-the-cat`, `#für-die-katze`."""

LATE = 4
"""After the library's own work on links, headings and attributes (5 and more)."""

BEFORE_EMPHASIS = 90
"""Where the library itself would look for tags: after code, links and escaped letters."""

_HELD = re.compile("\x02(?:(?P<code>\\d+)|amp)\x03")
"""How the library holds an escaped letter, or an `&`, until it writes the page."""


@dataclass(frozen=True)
class Leads:
    """The addresses that a text names, each once, and its anchors."""

    addresses: tuple[str, ...]
    anchors: frozenset[str]
    images: tuple[str, ...] = ()
    """Those of the addresses that would be shown, not followed."""
    tags: tuple[str, ...] = ()
    """What is written as in HTML, each once: `<iframe src="x">`."""


class NoRawHtml(Extension):
    """A text's author is trusted with words, not with scripts: tags are shown, not obeyed.

    Comments are left out.
    """

    def extendMarkdown(self, md: markdown.Markdown) -> None:  # noqa: N802 (the library's name)
        """Called by the library once, when the maker is set up."""
        md.preprocessors.deregister("html_block")
        leave_out_comments(md)
        md.inlinePatterns.deregister("html")


@lru_cache(maxsize=512)  # the live server asks again at every save, and few texts have changed
def leads_of(text: str) -> Leads:
    """Where a text leads, and where in it one can be led."""
    maker = markdown.Markdown(
        extensions=[*ALWAYS, *LIKELY, NoRawHtml()], extension_configs={"toc": ANCHORS}
    )
    seen = _Seen(maker)
    maker.treeprocessors.register(seen, "corymb_leads", LATE)
    tags = _Tags(HTML_RE, maker)
    maker.inlinePatterns.register(tags, "corymb_tags", BEFORE_EMPHASIS)
    maker.convert(text)
    return Leads(
        tuple(dict.fromkeys(seen.addresses)),
        frozenset(seen.anchors),
        tuple(dict.fromkeys(seen.images)),
        tuple(dict.fromkeys(tags.seen)),
    )


def as_browsers_read(address: str) -> str:
    """An address out of the library's tree: letters let go, entities resolved, no controls."""
    let_go = _HELD.sub(lambda held: chr(int(held["code"])) if held["code"] else "&", address)
    return re.sub(r"[\x00-\x1f\x7f]", "", unescape(let_go)).strip()


class _Seen(Treeprocessor):
    def __init__(self, md: markdown.Markdown) -> None:
        super().__init__(md)
        self.addresses: list[str] = []
        self.images: list[str] = []
        self.anchors: list[str] = []

    def run(self, root: Element) -> None:
        """Called by the library once for each text."""
        for element in root.iter():
            for name in ("href", "src"):
                if (address := element.get(name)) is not None:
                    self.addresses.append(as_browsers_read(address))
                    if element.tag == "img":
                        self.images.append(self.addresses[-1])
            if anchor := element.get("id"):
                self.anchors.append(anchor)


class _Tags(InlineProcessor):
    """Sees tags go by, and leaves them to be shown as they are written."""

    def __init__(self, pattern: str, md: markdown.Markdown) -> None:
        super().__init__(pattern, md)
        self.seen: list[str] = []

    def handleMatch(  # type: ignore[override]  # noqa: N802 (the library's name)
        self, m: re.Match[str], data: str
    ) -> tuple[None, None, None]:
        """Called by the library for whatever looks like one."""
        if re.match("</?[a-zA-Z]", m[0]):
            self.seen.append(m[0])
        return None, None, None
