"""Does every link in a page or a lesson lead somewhere, for everyone who may read it?

Links to other sites (`https:`, `mailto:`) are taken as they are: nothing is looked up.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from posixpath import dirname, join, normpath, splitext
from urllib.parse import unquote, urlsplit

from corymb.checks.reached import Reached, Text, page_of
from corymb.ledger import kept
from corymb.studio.leads import SAFE_SCHEMES
from corymb.studio.problems import Problem
from corymb.studio.saying import and_list
from corymb.studio.studio import Studio
from corymb.studio.suggest import FEW, nearest, quoted

OF_PAGES = ("", ".md", ".html")


def dead_links(studio: Studio) -> list[Problem]:
    """Every link that leads nowhere, or leads clients to what is for staff alone."""
    return list(_dead_links(studio))


@kept
def _dead_links(studio: Studio) -> tuple[Problem, ...]:
    reached = Reached(studio)
    return tuple(
        problem
        for text in reached.texts.values()
        for written in text.leads.addresses
        if (fault := _fault(reached, text, written))
        for problem in _told(text, written, fault)
    )


def _fault(reached: Reached, text: Text, written: str) -> str:
    """What is wrong with a link, in a sentence; nothing when it is right."""
    if not written:
        return "This link is empty: write where it leads between the round brackets."
    try:
        parts = urlsplit(written)
    except ValueError:  # square brackets where a host's name would be
        return f"{quoted(written)} is not an address: copy it anew."
    if parts.scheme not in SAFE_SCHEMES:
        return (
            f"{quoted(written)} can't be followed from a page: an address elsewhere begins with "
            "https:, mailto: or tel:."
        )
    if parts.scheme or parts.netloc:
        return ""
    link = _Link(reached, text, written, unquote(parts.path))
    return link.fault() or link.lost_anchor(unquote(parts.fragment))


@dataclass(frozen=True)
class _Link:
    """A link within the site, and the part of it that names a page."""

    reached: Reached
    text: Text
    written: str
    path: str

    @property
    def _file(self) -> str:
        """The Markdown file that is meant; empty where a page of the site is."""
        md = self.path.endswith(".md")
        return normpath(join(dirname(self.text.file), self.path)) if md else ""

    @property
    def _address(self) -> str:
        if not self.path:
            return self.text.address
        if self._file:
            return page_of(self._file)
        return normpath(join(dirname(self.text.address), self.path))

    @property
    def _target(self) -> Text | None:
        texts = self.reached.texts if self._file else self.reached.by_address
        return texts.get(self._file or self._address)

    def fault(self) -> str:
        """Why the page that is meant can't be reached."""
        if self.path.startswith("/"):
            return (
                f"{quoted(self.written)} begins with a slash, which leads elsewhere when the site "
                f"is moved: name the page as it is seen from here.{self._meant()}"
            )
        if splitext(self.path)[1] not in OF_PAGES:
            return (
                f"{quoted(self.written)} isn't on the site: a text leads to pages, lessons and "
                "other sites, not to files. A photo goes with "
                "a recipe or made work, under `photos`."
            )
        if self._target is not None:
            return self._for_others(self._target.reader == "staff")
        if self._address in self.reached.unread:
            return ""
        return self._no_text()

    def _no_text(self) -> str:
        hint = self._meant() or " Write it first, or take the link out."
        if self._file:
            return f"There is no page or lesson {quoted(self.written)}.{hint}"
        if self.reached.sites is None:
            return ""
        staff, clients = self.reached.sites
        if self._address not in staff:
            return f"There is no page {quoted(self.written)}.{hint}"
        return self._for_others(self._address not in clients)

    def _for_others(self, is_for_staff: bool) -> str:
        if not is_for_staff or self.text.reader != "everyone":
            return ""
        return (
            f"{quoted(self.written)} is for staff alone, and clients read this too: take the link "
            "out, or write `for: staff` in the heading here."
        )

    def lost_anchor(self, anchor: str) -> str:
        """Why the place in the text that is meant can't be found."""
        target = self._target
        if target is None or not anchor or anchor in target.leads.anchors:
            return ""
        where = f"{quoted(self.path)} has" if self.path else "This text has"
        known = sorted(target.leads.anchors)
        near = nearest(anchor, known, limit=1)
        there = f" It has {and_list(known)}." if known and len(known) <= FEW else ""
        hint = f" Did you mean ‘#{near[0]}’?" if near else there
        return f"{where} no heading ‘#{anchor}’.{hint or ' Take it out.'}"

    def _meant(self) -> str:
        near = self.reached.near(self.text, self.path)
        return f" Did you mean ‘{near}’?" if near else ""


def _told(text: Text, written: str, fault: str) -> Iterator[Problem]:
    """The fault wherever the link is written; at the text's beginning where it can't be found."""
    source = text.source
    link = re.compile(
        rf"(?:\]\(|^ {{0,3}}\[[^\]]+\]:)\s*+<?+(?P<at>){re.escape(written)}(?=[\s>)]|$)"
    )
    places = [
        (number, found.start("at") + 1)
        for number, line in enumerate(source.lines[text.first_line - 1 :], text.first_line)
        for found in link.finditer(line)
    ]
    for line, column in places or [(text.first_line, 1)]:
        yield Problem(source.file, line, column, fault, source.line_of(line))
