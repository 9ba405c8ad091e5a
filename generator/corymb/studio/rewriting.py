"""How is something changed in a studio's file, with every other letter left where it stands?

The text is never written anew from what was read of it. Only the places that change are cut out,
and all else (comments, empty lines, quotes, folds, order) stays because nobody touches it.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass, field
from io import StringIO
from typing import Any, NamedTuple

import yaml
from ruamel.yaml import YAML

from corymb.studio.new_files import MODELINE

WIDER_THAN_ANY_LINE = 100_000


class Edit(NamedTuple):
    """From one letter of the text up to another, and what comes there instead."""

    start: int
    end: int
    text: str


class Span(NamedTuple):
    """The lines of a key with its value, the last not included; counted from 0."""

    first: int
    last: int


@dataclass
class Rewriting:
    """A file's text on its way to become another; it has been read without an error before."""

    text: str
    _edits: list[Edit] = field(default_factory=list)

    def __post_init__(self) -> None:
        root = _composed(self.text)
        if root.flow_style:
            self.text = _out_of_braces(self.text)
            root = _composed(self.text)
        self.text = self.text.rstrip("\n") + "\n"
        self._root = root
        self._lines = self.text.splitlines(keepends=True)
        self._starts = [0]
        for line in self._lines:
            self._starts.append(self._starts[-1] + len(line))

    def result(self) -> str:
        """The text with all changes made."""
        done, at = [], 0
        for edit in sorted(self._edits, key=lambda edit: edit.start):
            done += [self.text[at : edit.start], edit.text]
            at = max(at, edit.end)
        return "".join([*done, self.text[at:]])

    def has(self, key: str) -> bool:
        """Whether the file has this key, on its outermost level."""
        return any(name.value == key for name, _ in self._root.value)

    def value(self, key: str) -> Any:
        """The YAML node of a key's value."""
        return next(value for name, value in self._root.value if name.value == key)

    def replace(self, node: Any, text: str, in_flow: bool = False) -> None:
        """Put another text in the place of a value, in the same quotes."""
        end = node.end_mark.index
        if node.style in ("|", ">"):
            end = self._starts[self._last_line(node)] - 1
        elif node.style == "'":
            text = "'" + text.replace("'", "''") + "'"
        elif node.style == '"' or (in_flow and "," in text):
            text = json.dumps(text, ensure_ascii=False)
        self.edit(node.start_mark.index, end, text)

    def take_out(self, key: str, leaving: Sequence[str] = (), remarks_too: bool = False) -> None:
        """Put lines in the place of a key and its value; also of the comment right above it."""
        span = self.span(key)
        first = self._above(span.first) if remarks_too else span.first
        self.edit(self._starts[first], self._starts[span.last], "".join(f"{x}\n" for x in leaving))

    def put_after(self, line: int, lines: Sequence[str]) -> None:
        """Put lines before the line of this number, which is the last of a span."""
        self.edit(self._starts[line], self._starts[line], "".join(f"{each}\n" for each in lines))

    def edit(self, start: int, end: int, text: str) -> None:
        """Put a text in the place of another."""
        self._edits.append(Edit(start, end, text))

    def span(self, key: str) -> Span:
        """The lines of a key. Empty lines and comments after it belong to what follows."""
        names = [name.start_mark.line for name, _ in self._root.value]
        first = next(n.start_mark.line for n, _ in self._root.value if n.value == key)
        after = [line for line in names if line > first]
        last = min(after, default=len(self._lines))
        while last > first + 1 and self._is_between(last - 1):
            last -= 1
        return Span(first, last)

    def end_of_item(self, items: Any, index: int) -> int:
        """The line after the last of one thing in a list."""
        node = items.value[index]
        while isinstance(node, yaml.CollectionNode) and not node.flow_style:
            last = node.value[-1]
            node = last[1] if isinstance(last, tuple) else last
        return int(node.end_mark.line) + 1

    def remark(self, key: str) -> str:
        """The comment in the line of a key, with its sign; empty without one."""
        name = next(name for name, _ in self._root.value if name.value == key)
        node, line = self.value(key), self.span(key).first
        if node.end_mark.line == line:
            start = node.end_mark.index
        elif node.start_mark.line == line:  # a text that goes on below: what follows is its own
            return ""
        else:
            start = name.end_mark.index + 1
        return self.text[start : self._starts[line + 1]].strip()

    def lines_of(self, key: str) -> list[str]:
        """A key's lines as they are written."""
        span = self.span(key)
        return [line.rstrip("\n") for line in self._lines[span.first : span.last]]

    @property
    def margin(self) -> str:
        """What stands before each of the outermost keys."""
        return " " * int(self._root.value[0][0].start_mark.column)

    def _is_between(self, number: int) -> bool:
        """Whether a line belongs to no key: empty, a comment at the margin, or the end's sign."""
        line = self._lines[number].rstrip()
        bare = line.lstrip()
        near = len(line) - len(bare) <= len(self.margin)
        return not bare or (near and bare.startswith("#")) or line == "..."

    def _above(self, first: int) -> int:
        """The first line of the comment right above a line."""
        while first and self._is_remark(first - 1):
            first -= 1
        return first

    def _is_remark(self, number: int) -> bool:
        line = self._lines[number].rstrip()
        remark = line.startswith(f"{self.margin}#")
        return remark and MODELINE.fullmatch(line.strip()) is None

    def _last_line(self, node: Any) -> int:
        """The line after the last of a text in a block."""
        last = int(node.end_mark.line)
        while last - 1 > node.start_mark.line and self._is_between(last - 1):
            last -= 1
        return last


def _composed(text: str) -> Any:
    return yaml.compose(text, yaml.SafeLoader)


def _out_of_braces(text: str) -> str:
    """A file that is one pair of braces, with a line for each of its outermost keys."""
    reader, out = YAML(), StringIO()
    reader.preserve_quotes = True
    reader.width = WIDER_THAN_ANY_LINE
    data = reader.load(text)
    data.fa.set_block_style()
    reader.dump(data, out)
    return out.getvalue()
