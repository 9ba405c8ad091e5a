"""From a studio's Markdown to HTML that is safe to show, with its links turned into the site's.

Raw HTML in the text is shown as text, not obeyed: a page's author is trusted with words, not with
scripts. Attributes that an extension lets it name are taken away, beyond those that words need: a
style or a handler within a page would ask for an exception from its policy.

Links to other Markdown files (`care.md`, `../techniques/conditioning.md`) lead to
the pages made of them; links with a script in their address lead nowhere.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from pathlib import Path
from posixpath import normpath
from typing import Any
from urllib.parse import urlsplit
from xml.etree.ElementTree import Element

import markdown
from markdown.extensions import Extension
from markdown.postprocessors import Postprocessor
from markdown.treeprocessors import Treeprocessor

from corymb.site.one_file.tags import TAG, attributes_of, tag_of
from corymb.site.render import url_from
from corymb.studio.comments import without_comments
from corymb.studio.leads import ALWAYS, ANCHORS, SAFE_SCHEMES, NoRawHtml, as_browsers_read
from corymb.views.compose import addresses
from corymb.views.compose.prose import Prose
from corymb.views.pieces import Link

WORDS_NEED = (
    *("href", "src", "alt", "title", "id", "class", "lang", "dir", "width", "height"),
    *("start", "type", "reversed", "value", "colspan", "rowspan", "headers", "scope"),
    *("abbr", "cite", "datetime", "role"),
)
"""The attributes that a text's tags keep, with what is said to readers' programs (`aria-`).

Not `data-`, which the pages' own scripts go by."""

ALIGNED = {"text-align: center;": "to-middle", "text-align: right;": "to-right"}
"""The class for each way in which the library aligns a table's column; most are to the left."""

LAST = -1
"""After everything that the library and its extensions still put into a finished text."""


@dataclass
class Writer:
    """Makes Markdown into HTML with a studio's chosen extensions."""

    extensions: tuple[str, ...] = ()
    configs: dict[str, Any] = field(default_factory=dict)

    def prose(self, text: str, page_path: str) -> Prose:
        """A Markdown text as it stands on the page at `page_path`."""
        names = dict.fromkeys([*ALWAYS, *self.extensions])
        toc = {"toc_depth": "2-3", **self.configs.get("toc", {}), **ANCHORS}
        maker = markdown.Markdown(
            extensions=[*names, NoRawHtml(), _SiteLinks(page_path)],
            extension_configs={**self.configs, "toc": toc},
            output_format="html",
        )
        html = maker.convert(text)
        tokens: list[dict[str, Any]] = getattr(maker, "toc_tokens", [])
        return Prose(html, tuple(Link(t["name"], f"#{t['id']}") for t in tokens))

    @staticmethod
    def words(text: str) -> str:
        """A Markdown text for a search to find: without what its author wrote to themselves."""
        return without_comments(text)


class _SiteLinks(Extension):
    """Links become the site's, and none holds a script."""

    def __init__(self, page_path: str) -> None:
        super().__init__()
        self.page_path = page_path

    def extendMarkdown(self, md: markdown.Markdown) -> None:  # noqa: N802 (the library's name)
        """Called by the library once, when the maker is set up."""
        md.treeprocessors.register(_Links(md, self.page_path), "corymb_links", 5)
        md.postprocessors.register(_Bare(md), "corymb_bare", LAST)


class _Links(Treeprocessor):
    """Runs late, when all links stand in the tree."""

    def __init__(self, md: markdown.Markdown, page_path: str) -> None:
        super().__init__(md)
        self.page_path = page_path

    def run(self, root: Element) -> None:
        """Turn every address in the text."""
        for element in root.iter():
            for name in ("href", "src"):
                if (address := element.get(name)) is not None:
                    element.set(name, site_address(address, self.page_path))


class _Bare(Postprocessor):
    """Takes away every attribute but those that words need."""

    def run(self, text: str) -> str:
        """Called by the library once, with the text's HTML."""
        return TAG.sub(_bare, text)


def _bare(tag: re.Match[str]) -> str:
    written = attributes_of(tag["rest"])
    kept = {name: value for name, value in written.items() if _is_kept(name.lower())}
    if aligned := ALIGNED.get(written.get("style") or ""):
        kept["class"] = f"{kept.get('class') or ''} {aligned}".strip()
    return tag[0] if kept == written else tag_of(tag["name"], kept)


def _is_kept(name: str) -> bool:
    return name in WORDS_NEED or name.startswith("aria-")


def site_address(address: str, page_path: str) -> str:
    """An address written in Markdown as it leads from `page_path`."""
    parts = urlsplit(as_browsers_read(address))
    if parts.scheme not in SAFE_SCHEMES:
        return "#"
    if parts.scheme or parts.netloc or not parts.path.endswith(".md"):
        return address
    target = _page_of(parts.path, page_path)
    anchor = f"#{parts.fragment}" if parts.fragment else ""
    return url_from(page_path)(target) + anchor


def _page_of(path: str, page_path: str) -> str:
    """The site's page for a Markdown file named from another one."""
    name = Path(path).stem
    folders = normpath(path).split("/")[:-1]
    in_lessons = page_path.startswith("lessons/")
    if "techniques" in folders or (in_lessons and "pages" not in folders):
        return addresses.of_lesson(name)
    return addresses.of_page(name)
