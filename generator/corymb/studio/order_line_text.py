"""How does one line of an order's file ask for another variant, in its short or long form?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

from corymb.studio.rewriting import Rewriting
from corymb.studio.values.order_lines import parse_order_line

REGULAR = "regular"


@dataclass(frozen=True)
class LineChange:
    """What changes in the line of this number, from 1. None leaves the variant as it is."""

    number: int
    variant: str | None = None
    """Its new variant, '' for the recipe itself."""
    size: str = REGULAR
    """The size it is wanted in, which stays."""
    remarks: Sequence[str] = ()
    """Comments that go below it."""


def change_line(file: Rewriting, data: dict[str, Any], change: LineChange) -> None:
    """Change a line in the file, and in what it should read back as."""
    lines = file.value("lines")
    node = lines.value[change.number - 1]
    data["lines"] = list(data["lines"])
    old = data["lines"][change.number - 1]
    if change.variant is not None and isinstance(old, str):
        text = short(old, change.variant, change.size)
        file.replace(node, text, in_flow=lines.flow_style)
        data["lines"][change.number - 1] = text
    elif change.variant is not None:
        data["lines"][change.number - 1] = _long(file, node, dict(old), change)
    _remark(file, lines, change)


def short(text: str, variant: str, size: str) -> str:
    """`12 hedgerow-jar, later` with another variant."""
    sized = [] if size == REGULAR else [size]
    words = tuple([variant, *sized] if variant else sized)
    return str(replace(parse_order_line(text), words=words))


def _long(file: Rewriting, node: Any, old: dict[str, Any], change: LineChange) -> dict[str, Any]:
    """The keys of a line in its long form, changed in the file as well."""
    keys = [(name.value, name, value) for name, value in node.value]
    there = {key: value for key, _, value in keys}
    wanted = {"variant": change.variant, "size": "" if change.size == REGULAR else change.size}
    for key, text in wanted.items():
        if key in there and text:
            file.replace(there[key], text)
        elif key in there and key == "variant":
            _comment_out(file, node, key)
        elif text:
            _put_in(file, node, there["recipe"], f"{key}: {text}")
        else:
            continue
        old = {**old, key: text} if text else {k: v for k, v in old.items() if k != key}
    return old


def _put_in(file: Rewriting, node: Any, after: Any, pair: str) -> None:
    """Put a key behind the recipe of a line."""
    if node.flow_style:
        file.edit(after.end_mark.index, after.end_mark.index, f", {pair}")
    else:
        file.put_after(after.end_mark.line + 1, [f"{' ' * node.start_mark.column}{pair}"])


def _comment_out(file: Rewriting, node: Any, key: str) -> None:
    """Take a key out of a line."""
    names = [name.value for name, _ in node.value]
    at = names.index(key)
    name, value = node.value[at]
    if at + 1 < len(names) and (node.flow_style or at == 0):
        file.edit(name.start_mark.index, node.value[at + 1][0].start_mark.index, "")
    elif node.flow_style:
        file.edit(node.value[at - 1][1].end_mark.index, value.end_mark.index, "")
    else:
        start = name.start_mark.index
        file.edit(start, value.end_mark.index, f"# {file.text[start : value.end_mark.index]}")


def _remark(file: Rewriting, lines: Any, change: LineChange) -> None:
    """Comments below a line of a list, or above a list in brackets."""
    if not change.remarks:
        return
    if lines.flow_style:
        first = file.span("lines").first
        told = [f"{file.margin}# Line {change.number}: {each}" for each in change.remarks]
        file.put_after(first, told)
        return
    last = file.end_of_item(lines, change.number - 1)
    margin = " " * (lines.start_mark.column + 2)
    file.put_after(last, [f"{margin}# {each}" for each in change.remarks])
