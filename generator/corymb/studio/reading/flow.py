"""Do the quotes and brackets close? Followed over lines, as a person's eye would."""

import re
from dataclasses import dataclass

from corymb.studio.reading.fault import (
    DEEPEST,
    KEY_LINE,
    MOST_FAULTS,
    Fault,
    in_quotes,
    indent_of,
)
from corymb.studio.reading.traps import TOO_DEEP

CLOSING = {"[": "]", "{": "}"}

_SIGN = re.compile(r"[\[\]{}'\",:#]")

_NO_LETTER = re.compile(
    r"(?<!\\)(?:\\\\)*(?P<sign>\\u(?:[dD][89a-fA-F]|(?![0-9a-fA-F]{4}))|"
    r"\\U(?:0000[dD][89a-fA-F]|(?!00(?:0[0-9a-fA-F]|10)[0-9a-fA-F]{4})))"
)
"""A letter by its number (YAML 1.2, 5.7) where Unicode has none."""

NEAR = 400
"""How far back on a line is looked for where an entry starts; so long lines stay quick."""


@dataclass
class _Opened:
    """A quote or bracket, where it stands, and how far its line is moved in."""

    sign: str
    line: int
    column: int
    indent: int


class Flow:
    """Quotes and brackets that are open while the lines go by."""

    def __init__(self, lines: list[str]) -> None:
        self.lines = lines
        self._brackets: list[_Opened] = []
        self._quote: _Opened | None = None
        self._value_column = 0
        self._last = 0
        self._faults: list[Fault] = []

    @property
    def is_open(self) -> bool:
        """Whether the last line left a quote or a bracket open."""
        return self._quote is not None or bool(self._brackets)

    def take_faults(self) -> list[Fault]:
        """What was found since this was last asked."""
        faults, self._faults = self._faults, []
        return faults

    def gave_up(self, at: int, line: str) -> bool:
        """Whether a line shows that what is open was never closed: a key or dash as far out."""
        first = self._quote or self._brackets[0]
        if self._brackets:
            first = min(self._brackets[0], first, key=lambda o: (o.line, o.column))
        starts = KEY_LINE.match(line) or re.match(r" *- ", line)
        if not starts or indent_of(line) > first.indent:
            return False
        self._unclosed()
        return True

    def finish(self) -> list[Fault]:
        """What is still open at the end of the file."""
        if self.is_open:
            self._unclosed()
        return self.take_faults()

    def go_on(self, at: int, line: str, column: int, is_value: bool = False) -> None:
        """Reads a line from a column on."""
        if is_value:
            self._value_column = column
        self._last = at
        while column < len(line) and len(self._faults) <= MOST_FAULTS:
            if self._quote is not None:
                column = self._to_quote_end(at, line, column)
            elif self._brackets:
                column = self._in_brackets(at, line, column)
            elif is_value and line[column] in "'\"[{":
                column = self._open(at, line, column)
                is_value = False
            else:
                self._behind(at, line, column)
                return

    def _open(self, at: int, line: str, column: int) -> int:
        if len(self._brackets) == DEEPEST - 1:
            self._faults.append(Fault(at, column, TOO_DEEP))
            self._brackets = []
            return len(line)
        opened = _Opened(line[column], at, column, indent_of(line))
        if line[column] in CLOSING:
            self._brackets.append(opened)
        else:
            self._quote = opened
        return column + 1

    def _to_quote_end(self, at: int, line: str, column: int) -> int:
        assert self._quote is not None
        pattern = r"(?:[^']|'')*'(?!')" if self._quote.sign == "'" else r'(?:[^"\\]|\\.)*"'
        end = re.compile(pattern).match(line, column)
        if not end:
            return len(line)
        if self._quote.sign == '"':
            self._escapes(at, line, column, end.end())
        self._quote = None
        return end.end()

    def _escapes(self, at: int, line: str, start: int, end: int) -> None:
        """A backslash in double quotes that isn't one of those that mean something."""
        wrong = _NO_LETTER.search(line, start, end)
        if wrong:
            message = (
                "A backslash with u or U stands for a letter by its number, and there is no letter "
                "with this one. Write two backslashes, or use single quotes."
            )
            mended = line[: wrong.start("sign")] + "\\" + line[wrong.start("sign") :]
            self._faults.append(Fault(at, wrong.start("sign"), message, mended))
            return
        for slash in re.finditer(r"\\(.)", line[start:end]):
            if slash[1] not in '0abtnvfre "/\\N_LPxuU\t':
                column = start + slash.start()
                message = (
                    "In double quotes a backslash changes what follows: "
                    "use single quotes, or write two backslashes."
                )
                mended = line[: column + 1] + "\\" + line[column + 1 :]
                self._faults.append(Fault(at, column, message, mended))
                return

    def _in_brackets(self, at: int, line: str, column: int) -> int:
        found = _SIGN.search(line, column)
        if not found:
            return len(line)
        sign, column = found[0], found.start()
        before = line[max(0, column - NEAR) : column].rstrip()
        if sign in "'\"" and before[-1:] in ("[", "{", ",", ":", ""):
            return self._open(at, line, column)
        if sign in CLOSING:
            return self._open(at, line, column)
        if sign in "]}":
            self._close(at, line, column)
        elif sign == "#" and line[column - 1 : column] in ("", " "):
            return len(line)
        elif sign == "," and before[-1:] in ("[", "{", ","):
            message = "There is nothing before this comma: take it out, or fill in what is missing."
            self._faults.append(Fault(at, column, message, line[:column] + line[column + 1 :]))
        elif sign == ":" and line[column + 1 : column + 2] in ("", " "):
            self._second_colon(at, line, column)
        return column + 1

    def _close(self, at: int, line: str, column: int) -> None:
        opened = self._brackets.pop()
        right = CLOSING[opened.sign]
        if line[column] == right:
            return
        if self._brackets and CLOSING[self._brackets[-1].sign] == line[column]:
            self._brackets.pop()
            message = f"The bracket that opens here is never closed: add {right} at its end."
            mended = line[:column] + right + line[column:] if opened.line == at else None
            self._faults.append(Fault(opened.line, opened.column, message, mended))
            return
        message = f"This bracket should be {right}, since it was opened with {opened.sign}."
        self._faults.append(Fault(at, column, message, line[:column] + right + line[column + 1 :]))

    def _second_colon(self, at: int, line: str, column: int) -> None:
        """`{alt: A jar: small}`: in one entry, a second colon belongs to the text."""
        entry = re.split(r"[,\[\]{}]", line[max(0, column - NEAR) : column])[-1]
        first = re.match(r"\s*[^:'\"]*:\s+(?P<text>[^'\"]+)$", entry)
        if not first:
            return
        start = column - len(entry) + first.start("text")
        end = start + len(re.split(r"[,\]}]", line[start : start + NEAR])[0].rstrip())
        right = in_quotes(line[start:end])
        word = re.split(r"[\s,{]", line[start:column])[-1]
        message = (
            f"A text that holds a colon goes in quotes: write {right}. "
            f"If ‘{word}’ is a key, put a comma before it."
        )
        self._faults.append(Fault(at, column, message, line[:start] + right + line[end:]))

    def _behind(self, at: int, line: str, column: int) -> None:
        """What stands on the line after the closing quote or bracket."""
        rest = line[column:]
        if re.match(r"\s*$|\s+#", rest):
            return
        value = line[self._value_column :].strip()
        closed = line[column - 1]
        whole = value[1:-1] if value and value[0] == value[-1] and value[0] in "'\"" else value
        right = in_quotes(whole.replace("''", "'") if value[:1] == "'" else whole)
        spot = column + len(rest) - len(rest.lstrip())
        if closed in "]}" and rest.strip() in ("]", "}", "]]", "}}"):
            message = f"One bracket too many: take the last {rest.strip()[-1]} out."
            mended = line[:column]
        elif closed in "]}":
            message = (
                "Text goes on after the closing bracket. If the bracket is part of the text, "
                f"put the whole text in quotes: {right}."
            )
            mended = line[: self._value_column] + right
        else:
            message = (
                f"The quote is closed here by {closed}, but the text goes on: "
                f"write the whole as {right}."
            )
            spot, mended = column - 1, line[: self._value_column] + right
        self._faults.append(Fault(at, spot, message, mended))

    def _unclosed(self) -> None:
        """The first thing left open, and the lines mended so that the rest can be read."""
        opened = self._quote if not self._brackets else self._brackets[0]
        if self._quote is not None and self._brackets:
            opened = self._quote
        assert opened is not None
        line = self.lines[opened.line]
        if opened is self._quote:
            text = line[opened.column + 1 :].strip()
            message = f"The quote that opens here is never closed: add a {opened.sign} at its end."
            if opened.sign == "'":
                message += f" If it is an apostrophe, write {in_quotes(opened.sign + text)}."
            mended = None if self._brackets else line[: opened.column] + in_quotes(text)
        else:
            closing = "".join(CLOSING[o.sign] for o in reversed(self._brackets))
            message = f"The bracket that opens here is never closed: add {closing} at its end."
            mended = line.rstrip().rstrip(",") + closing if self._last == opened.line else None
        self._faults.append(Fault(opened.line, opened.column, message, mended))
        self._quote, self._brackets = None, []
