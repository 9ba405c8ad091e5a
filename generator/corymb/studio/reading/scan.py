"""Which slips of the hand stand in these lines? Asked only when the text can't be read as YAML.

A tolerant reader of lines: it knows keys, dashes, quotes and brackets, and calls out what people
get wrong, as much as it finds in one go.
"""

import re

from corymb.studio.reading.fault import (
    GLUED,
    KEY_LINE,
    MOST_FAULTS,
    Fault,
    in_quotes,
    indent_of,
    is_blank,
)
from corymb.studio.reading.flow import Flow
from corymb.studio.suggest import quoted

_TEXT_BLOCK = re.compile(r"[|>][+-]?[1-9]?[+-]? *(?:#.*)?")
_SPECIAL = "@`%&*!?|>,]}"
_QUOTED_KEY = re.compile(r"(?P<key>\"[^\"]*\"|'[^']*'):(?P<rest>[^\s/:].*)")
_TAB = re.compile(r" *\t|(?: *- +)* *-\t")
_DASHES = re.compile(r"(?: *- +)*")


class Scan:
    """Goes through the lines once; `faults` has what it found."""

    def __init__(self, lines: list[str]) -> None:
        self.lines = lines
        self.faults: list[Fault] = []
        self._flow = Flow(lines)
        self._text_block: int | None = None

    def run(self) -> list[Fault]:
        """All slips found, in the order of the lines."""
        for at, line in enumerate(self.lines):
            if len(self.faults) > MOST_FAULTS:
                return sorted(self.faults)
            self._line(at, line)
        self.faults += self._flow.finish()
        return sorted(self.faults)

    def _line(self, at: int, line: str) -> None:
        if self._in_text_block(line):
            return
        if self._flow.is_open and not self._flow.gave_up(at, line):
            self._flow.go_on(at, line, 0)
            self.faults += self._flow.take_faults()
            return
        self.faults += self._flow.take_faults()
        if line.strip() and _TAB.match(line):
            self.faults.append(_tab(at, line))
        elif not is_blank(line):
            self._block_line(at, line)

    def _in_text_block(self, line: str) -> bool:
        """Whether the line belongs to a text that was started with | or >."""
        if self._text_block is None:
            return False
        if not line.strip() or len(line) - len(line.lstrip(" ")) > self._text_block:
            return True
        self._text_block = None
        return False

    def _block_line(self, at: int, line: str) -> None:
        key = KEY_LINE.match(line)
        dashes = _DASHES.match(line)
        start = key.end() if key else dashes.end() if dashes else 0
        value = line[start:].lstrip()
        column = len(line) - len(value)
        if _TEXT_BLOCK.fullmatch(value):
            self._text_block = indent_of(line)
        elif value[:1] in ("'", '"', "[", "{") and not _QUOTED_KEY.match(value):
            self._flow.go_on(at, line, column, is_value=True)
            self.faults += self._flow.take_faults()
        elif value:
            self._plain(at, line, column, value, key is not None)

    def _plain(self, at: int, line: str, column: int, value: str, has_key: bool) -> None:
        bare = re.split(r"\s#", value, maxsplit=1)[0].rstrip()
        if has_key and re.match(r"-(?: |$)", bare):
            self.faults.append(_list_on_line(at, line, column, self._goes_on(at)))
        elif bare[:1] in _SPECIAL and not re.match(r"\?\S", bare):
            self.faults.append(_special(at, line, column, bare, has_key))
        elif has_key and re.search(r":(?:\s|$)", bare):
            self.faults.append(_colon_inside(at, line, column, bare, self._goes_on(at)))
        elif not has_key:
            fault = _glued(at, line, column, bare)
            self.faults += [fault] if fault else []

    def _goes_on(self, at: int) -> bool:
        """Whether what comes below belongs to this line."""
        below = next((line for line in self.lines[at + 1 :] if not is_blank(line)), "")
        return indent_of(below) > indent_of(self.lines[at])


def _tab(at: int, line: str) -> Fault:
    start = line[: len(line) - len(line.lstrip(" \t-"))]
    if "-" in start:
        message = "A tab stands beside this dash. Put a space in its place."
    else:
        message = "This line is moved in with a tab. Use spaces, two for each step."
    mended = start.replace("-\t", "- ").replace("\t", "  ") + line[len(start) :]
    return Fault(at, start.index("\t"), message, mended)


def _list_on_line(at: int, line: str, column: int, goes_on: bool) -> Fault:
    return Fault(
        at,
        column,
        "A list with dashes starts on the line below its key, moved in by two spaces. "
        "If this is text, put it in quotes.",
        line[:column] + ("" if goes_on else in_quotes(line[column:].strip())),
        sure=not goes_on,
    )


def _special(at: int, line: str, column: int, value: str, has_key: bool) -> Fault:
    sign = value[0]
    if not has_key and KEY_LINE.match(value[1:]):
        message = f"A key can't start with {sign}: take it out."
        return Fault(at, column, message, line[:column] + line[column + 1 :])
    return Fault(
        at,
        column,
        f"A text that starts with {sign} can't stand bare: write it in quotes, {in_quotes(value)}.",
        line[:column] + in_quotes(value),
    )


def _colon_inside(at: int, line: str, column: int, value: str, goes_on: bool) -> Fault:
    colon = re.search(r":(?:\s|$)", value)
    assert colon is not None
    if goes_on and value.endswith(":"):
        message = (
            "A second colon ends this line, but its key has its value already: take out either "
            f"{quoted(value)} or what stands below it."
        )
        return Fault(at, column, message, line[:column], sure=False)
    return Fault(
        at,
        column + colon.start(),
        "A colon with a space after it makes a key, so a text that holds one goes in quotes: "
        f"write {in_quotes(value)}.",
        line[:column] + in_quotes(value),
    )


def _glued(at: int, line: str, column: int, value: str) -> Fault | None:
    """`count:7` where a key should be; and `-7` is left alone."""
    found = GLUED.match(value) or _QUOTED_KEY.match(value)
    if found:
        key = found["key"]
        right = f"{key}: {found['rest']}"
        return Fault(
            at,
            column + len(key),
            f"After the colon comes a space: write {quoted(right)}.",
            line[:column] + right,
        )
    dash = re.match(r"-[^\s\-0-9.]|-[0-9]+ [a-z]", value)
    if dash:
        right = f"- {value[1:]}"
        message = f"After the dash comes a space: write {quoted(right)}."
        return Fault(at, column, message, line[:column] + right)
    return None
