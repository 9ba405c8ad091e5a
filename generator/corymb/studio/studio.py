"""A studio as read: everything in its folder, and where each thing is written."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Generic, TypeVar

from corymb.ledger import Ledger
from corymb.studio.mending import Doubts, has_doubts, in_doubt
from corymb.studio.models import (
    CutLog,
    MadeWork,
    Order,
    Page,
    Recipe,
    StandingOrder,
    Stem,
    StudioFile,
    Style,
    StyleLink,
    Technique,
    Walk,
)
from corymb.studio.problems import Problem
from corymb.studio.shape import Step
from corymb.studio.yaml_tree import Tree

__all__ = ["Document", "Source", "Step", "Studio"]

Heading = TypeVar("Heading", Page, Technique)


@dataclass(frozen=True)
class Source:
    """Where a thing is written, so that a problem found later can still name its line."""

    file: Path
    lines: tuple[str, ...]
    tree: Tree
    path: tuple[Step, ...] = ()
    doubts: Doubts = frozenset()
    """The places that aren't known for certain, since the file has a slip there."""

    def line_of(self, number: int) -> str:
        """The text of a line, counted from 1; empty where there is none."""
        return self.lines[number - 1] if 0 < number <= len(self.lines) else ""

    def within(self, *path: Step) -> Source:
        """The same file, further in."""
        return replace(self, path=(*self.path, *path))

    def in_doubt(self, *path: Step) -> bool:
        """Whether what stands at `path` isn't known for certain."""
        return in_doubt(self.doubts, (*self.path, *path))

    def has_doubts(self, *path: Step) -> bool:
        """Whether that, or anything in it, isn't known for certain."""
        return has_doubts(self.doubts, (*self.path, *path))

    def problem(
        self,
        message: str,
        *path: Step,
        advice: bool = False,
        at_key: bool = False,
        word: str = "",
        hurts: bool = False,
    ) -> Problem:
        """A problem at `path` within the thing, or at the nearest place above it.

        With `word`, at that word where the value holds it on its line (`3 dahlia-shell`).
        """
        whole = (*self.path, *path)
        line, column = self.tree.key_place(whole) if at_key else self.tree.place(whole)
        text = self.line_of(line)
        found = re.compile(rf"(?<![\w-]){re.escape(word)}(?![\w-])").search(text, column - 1)
        at = found.start() + 1 if word and found else column
        return Problem(self.file, line, at, message, text, advice, hurts)


@dataclass(frozen=True)
class Document(Generic[Heading]):
    """A Markdown file: its heading, and its text."""

    id: str
    heading: Heading
    markdown: str
    file: Path


@dataclass
class Studio:
    """Everything in a studio's folder, by id."""

    folder: Path
    house: StudioFile
    stems: dict[str, Stem] = field(default_factory=dict)
    groups: dict[str, list[str]] = field(default_factory=dict)
    recipes: dict[str, Recipe] = field(default_factory=dict)
    made: dict[str, MadeWork] = field(default_factory=dict)
    orders: dict[str, Order] = field(default_factory=dict)
    standing_orders: dict[str, StandingOrder] = field(default_factory=dict)
    walks: dict[str, Walk] = field(default_factory=dict)
    logs: dict[str, CutLog] = field(default_factory=dict)
    links: dict[str, StyleLink] = field(default_factory=dict)
    pages: dict[str, Document[Page]] = field(default_factory=dict)
    techniques: dict[str, Document[Technique]] = field(default_factory=dict)
    sources: dict[tuple[str, str], Source] = field(default_factory=dict)
    heard_of: Mapping[str, frozenset[str]] = field(default_factory=dict)
    """Names in files that couldn't be read, by kind: there, but nothing more is known of them."""
    stems_are_lost: bool = False
    """Whether a file of stems couldn't be read at all, so that any stem may be in it."""
    ledger: Ledger = field(default_factory=Ledger, init=False, compare=False, repr=False)
    """Where what is worked out of the studio alone is kept."""
    known_as: str = field(default="studio", init=False, compare=False, repr=False)

    @property
    def styles(self) -> dict[str, Style]:
        """The studio's families of arrangement, in the order of its menus."""
        styles = self.house.styles
        return dict(sorted(styles.items(), key=lambda item: (item[1].order, item[1].name)))
