"""What can YAML read without a murmur, though the writer meant something else?"""

import re
from typing import Any

from corymb.studio.reading.decode import named
from corymb.studio.reading.fault import GLUED, Fault, in_quotes, indent_of
from corymb.studio.suggest import quoted

SEVERAL = "A second document starts here (the line of three dashes). Put it in a file of its own."
DIRECTIVE = "A line that starts with % is an order to the computer: take it out."
TAG = "A word with ! before a value changes what it means: take it out, or put the text in quotes."
NO_KEY = "There is no key before this colon: write ‘key: value’."
MERGE = "‘<<’ copies keys from elsewhere: write them out here instead."
MANY = "So much is wrong up to here that the rest of this file is not read."
TOO_MUCH = "This file holds over 100,000 keys and values. Split it: the rest is not read."
TOO_LONG = "This list goes on for over 3,000 entries. Split it: the rest is not read."
TOO_DEEP = "Things are nested more than 40 deep here: some brackets or dashes are too many."
LIST_ON_TOP = "This file should start with a key, like ‘name: …’, not with a list or a value."
LIST_AS_KEY = "A list or a table can't be a key: a key is a word or two before a colon."

_HEX = re.compile(r"#(?P<hex>[0-9a-fA-F]{6}|[0-9a-fA-F]{3})\b")
_BEHIND = re.compile(r"\s+(?P<swallowed>#[^\s#!=*-].*)")
_NUMBER = re.compile(r"-[0-9.]+")


def alias(name: str) -> str:
    """For `*name`."""
    return f"‘*{name}’ points to a value elsewhere: write it out here, or put the text in quotes."


def anchor(name: str) -> str:
    """For `&name`."""
    return (
        f"‘&{name}’ names a value to be used elsewhere: take it out, and write the value out "
        "in each place. A text that starts with & goes in quotes."
    )


def unseen(sign: str) -> str:
    """For `"\\u202e"`: a backslash in double quotes that makes what can't be seen."""
    return f"A backslash makes a character here that can't be seen ({named(sign)}): take it out."


def twice(key: str, line: int) -> str:
    """For a key that stands in the same table twice."""
    return f"{quoted(key)} stands here twice: the first is in line {line}. Keep one of them."


def empty(lines: list[str], at: tuple[int, int], key: str | None, flow: bool) -> Fault:
    """A key or a dash with nothing behind it. A comment may have swallowed what was meant."""
    line, column = at
    if key is None:
        comment = re.match(r"\s*(?P<swallowed>#\S.*)", lines[line][column:])
        if comment:
            return _swallowed(line, column + comment.start("swallowed"), comment["swallowed"])
        column = max(lines[line].rfind("-", 0, column), 0)
        message = "This dash has nothing after it: fill it in, or take the line out."
        return Fault(line, column, message)
    glued = GLUED.fullmatch(key)
    if flow and glued:
        right = f"{glued['key']}: {glued['rest']}"
        return Fault(
            line, column, f"{quoted(key)} lacks a space after its colon: write {quoted(right)}."
        )
    if flow:
        return Fault(
            line,
            column,
            f"{quoted(key)} has no value. Between {{ and }} a comma starts a new key: "
            "if it is part of a text, put the text in quotes.",
        )
    comment = re.match(r"[^#]*:\s+(?P<swallowed>#\S.*)", lines[line][column:])
    if comment:
        return _swallowed(line, column + comment.start("swallowed"), comment["swallowed"])
    return Fault(
        line,
        column,
        f"Nothing stands after ‘{key}:’. Fill it in (what belongs to it is moved in by two spaces "
        "below it), or take the line out.",
    )


def after_value(lines: list[str], event: Any) -> list[Fault]:
    """A # right behind a value that was meant to be part of it: `shell #e8c2b4 80 %`."""
    mark = event.end_mark
    if event.style in ("|", ">") or mark.line >= len(lines):
        return []
    rest = _BEHIND.match(lines[mark.line], mark.column)
    if not rest:
        return []
    column = rest.start("swallowed")
    if _HEX.match(rest["swallowed"]):
        return [_swallowed(mark.line, column, rest["swallowed"], f"{event.value} ")]
    message = (
        f"Everything from # on is taken as a comment. If {quoted(rest['swallowed'])} belongs to "
        "the value, put the whole value in quotes; if not, put a space after the #."
    )
    return [Fault(mark.line, column, message, advice=True)]


def in_plain_text(lines: list[str], event: Any, flow: bool) -> list[Fault]:
    """Keys and dashes that were taken for text, since a space or a step was missing."""
    first, last = event.start_mark.line, event.end_mark.line
    if flow:
        return []
    found = []
    before = lines[first][: event.start_mark.column]
    if not before.replace("-", "").strip():
        found.append(_taken_for_text(first, lines[first][len(before) :], len(before)))
    for line in range(first + 1, min(last + 1, len(lines))):
        text = lines[line].strip()
        if line < last or event.end_mark.column > indent_of(lines[line]):
            found.append(_taken_for_text(line, text, indent_of(lines[line]), goes_on=True))
    return [fault for fault in found if fault]


def _taken_for_text(line: int, text: str, column: int, goes_on: bool = False) -> Fault | None:
    glued = GLUED.match(text)
    if glued:
        right = quoted(f"{glued['key']}: {glued['rest']}")
        return Fault(
            line,
            column + glued.end("key"),
            f"After the colon comes a space: write {right}. If it is text, put it in quotes.",
        )
    if re.match(r"-[^\s-]", text) and not _NUMBER.fullmatch(text.strip()):
        right = quoted(f"- {text[1:].strip()}")
        return Fault(line, column, f"After the dash comes a space: write {right}.")
    if goes_on and re.match(r"- ", text):
        return Fault(
            line,
            column,
            "This dash is taken as part of the text above it. Line it up with the other dashes; "
            "if it is text, put the whole text in quotes.",
        )
    return None


def _swallowed(line: int, column: int, comment: str, before: str = "") -> Fault:
    colour = _HEX.match(comment)
    value = f"Leave the # out ({quoted(colour['hex'])})" if colour else "Leave the # out"
    return Fault(
        line,
        column,
        f"The # starts a comment, so nothing after it is read. {value}, "
        f"or put the whole value in quotes, like {in_quotes(before + comment.strip())}.",
    )
