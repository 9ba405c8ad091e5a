"""What does an order's file look like when it is written once more for another day?

The old text is kept letter by letter, but for what is another order's: its day, what was used and
how long it took. What was learnt goes along as a comment, and a standing order's days off stay as
comments, so that nothing that was once known has to be looked up. Raises ValueError where the
text can't be changed so that it reads back as meant.
"""

from __future__ import annotations

import os
import textwrap
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path, PurePath
from typing import Any

from corymb.studio.new_files import MODELINE
from corymb.studio.order_line_text import LineChange, change_line
from corymb.studio.rewriting import Rewriting
from corymb.studio.yaml_tree import read_tree

BY_HAND = "this file can't be written anew by itself: copy it, and change its day by hand"
REPEATING = ("repeats", "from", "until", "skip", "moved", "rotation")
WIDE = 98

Data = dict[str, Any]
Way = Callable[[Rewriting, Data], None]


@dataclass(frozen=True)
class Learnt:
    """What was noted, and when."""

    text: str
    when: str

    def lines(self, margin: str) -> list[str]:
        """As a comment of the file."""
        told = f"Learnt {self.when}: {' '.join(self.text.split())}"
        return textwrap.wrap(
            told,
            WIDE,
            initial_indent=f"{margin}# ",
            subsequent_indent=f"{margin}# ",
            break_long_words=False,
            break_on_hyphens=False,
        )


@dataclass(frozen=True)
class Again:
    """An order on another day."""

    day: date
    learnt: Learnt | None = None
    visit_of: str = ""
    """The standing order whose visit it is, by id."""
    lines: Sequence[LineChange] = ()
    added: Sequence[str] = ()
    """Lines that are wanted as well, as they are written."""
    remarks: Sequence[Sequence[str]] = ()
    """Comments below each of the added lines."""


def order_again(text: str, again: Again) -> str:
    """A one-off order's text, for another day."""

    def way(file: Rewriting, data: Data) -> None:
        file.replace(file.value("date"), str(again.day))
        data["date"] = str(again.day)
        _visit_of(file, data, again.visit_of)
        for change in again.lines:
            change_line(file, data, change)
        for key in ("used", "minutes"):
            if file.has(key):
                line = f"{file.margin}# {key}:  {file.remark(key)}".rstrip()
                file.take_out(key, [line])
                del data[key]
        _learnt(file, data, again.learnt)

    return _checked(text, way)


def visit_as_order(text: str, again: Again) -> str:
    """A standing order's text, as an order of its own for one of its visits."""

    def way(file: Rewriting, data: Data) -> None:
        data |= {"date": str(again.day), "visit of": again.visit_of}
        new = {"repeats": [f"date: {again.day}", f"visit of: {again.visit_of}"]}
        added = _added(file, again)
        if not file.has("lines"):
            new["rotation"] = ["lines:", *added]
        elif added:
            _extend(file, added, again.added)
        data["lines"] = [*data.get("lines", []), *again.added]
        for change in again.lines:
            change_line(file, data, change)
        for key in filter(file.has, REPEATING):
            leaving = [f"{file.margin}{line}" for line in new.get(key, ())]
            file.take_out(key, leaving, remarks_too=True)
            del data[key]
        _learnt(file, data, again.learnt)

    return _checked(text, way)


def standing_again(text: str, first: date, last: date, learnt: Learnt | None = None) -> str:
    """A standing order's text, for another year."""

    def way(file: Rewriting, data: Data) -> None:
        file.replace(file.value("from"), str(first))
        if file.has("until"):
            file.replace(file.value("until"), str(last))
        else:
            file.put_after(file.span("from").last, [f"{file.margin}until: {last}"])
        data |= {"from": str(first), "until": str(last)}
        for key in filter(file.has, ("skip", "moved")):
            old = [f"{file.margin}# {line[len(file.margin) :]}" for line in file.lines_of(key)]
            file.take_out(key, old)
            del data[key]
        _learnt(file, data, learnt)

    return _checked(text, way)


def with_modeline(text: str, old_file: Path, new_file: Path, kind: str) -> str:
    """The text whose first line tells an editor the schema of `kind`, seen from the new file."""
    lines = text.split("\n")
    for number, line in enumerate(lines):
        found = MODELINE.fullmatch(line.strip())
        if found and "://" not in found["path"]:
            schema = PurePath(found["path"]).with_name(f"{kind}.schema.json")
            there = os.path.relpath(old_file.parent / schema, new_file.parent)
            lines[number] = line.replace(found["path"], PurePath(there).as_posix())
            break
    return "\n".join(lines)


def _visit_of(file: Rewriting, data: Data, standing: str) -> None:
    had = file.has("visit of")
    if had and standing:
        file.replace(file.value("visit of"), standing)
    elif had:
        file.take_out("visit of")
        del data["visit of"]
    elif standing:
        file.put_after(file.span("date").last, [f"{file.margin}visit of: {standing}"])
    if standing:
        data["visit of"] = standing


def _learnt(file: Rewriting, data: Data, learnt: Learnt | None) -> None:
    if file.has("learnt"):
        remark = file.remark("learnt")
        more = [f"{file.margin}{remark}"] if remark else []
        file.take_out("learnt", [*(learnt.lines(file.margin) if learnt else []), *more])
        del data["learnt"]


def _added(file: Rewriting, again: Again) -> list[str]:
    """The added lines with their comments, as a list in the file."""
    remarks = [*again.remarks, *[()] * len(again.added)]
    return [
        line
        for text, told in zip(again.added, remarks, strict=False)
        for line in (f"  - {text}", *(f"    # {each}" for each in told))
    ]


def _extend(file: Rewriting, lines: Sequence[str], texts: Sequence[str]) -> None:
    """Put lines at the end of `lines`, in their indent, or behind a comma in brackets."""
    node = file.value("lines")
    if node.flow_style:
        more = "".join(f', "{text}"' for text in texts)
        file.edit(node.value[-1].end_mark.index, node.value[-1].end_mark.index, more)
        return
    margin = " " * node.start_mark.column
    own = [margin + line[2:] for line in lines]
    file.put_after(file.span("lines").last, own)


def _checked(text: str, way: Way) -> str:
    """The changed text, once it has been read back as what it was meant to become."""
    before, problems = read_tree(text, Path())
    if before is None or any(not problem.advice for problem in problems):
        raise ValueError("this file holds errors; put them right first: corymb check")
    file, data = Rewriting(text), dict(before.data)
    way(file, data)
    done = file.result()
    after, faults = read_tree(done, Path())
    if after is None or any(not fault.advice for fault in faults) or after.data != data:
        raise ValueError(BY_HAND)
    return done
