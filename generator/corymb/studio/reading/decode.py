"""Is it text at all? Bytes of a file to clean text, with the characters nobody can see refused."""

import re
import unicodedata

from corymb.studio.reading.fault import Fault

LARGEST = 2_000_000
"""Bytes of the largest file that is read: a photo or a list of everything, not a studio's file."""

MOST_HIDDEN = 20
"""With more unseen characters than this a file isn't text."""

LONGEST_LINE = 20_000
"""Letters of the longest line: three thousand words. More is something else, pasted in."""

MOST_LINES = 100_000
"""Lines of the longest file: with a word on each it has a megabyte."""

MARKS = {
    b"\xff\xfe\x00\x00": "UTF-32",
    b"\x00\x00\xfe\xff": "UTF-32",
    b"\xff\xfe": "UTF-16",
    b"\xfe\xff": "UTF-16",
}
"""What a file of another encoding begins with; UTF-32 first, which begins like UTF-16."""

BOM = "\N{ZERO WIDTH NO-BREAK SPACE}"
_CONTROLS = (
    "\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f"
    "\u2028-\u202e\u2066-\u206f\ufeff\ufff0-\ufffc\ufffe\uffff"
    "\ud800-\udfff\U000e0000-\U000e0fff"
)
"""Characters that aren't text, and those that turn about the letters beside them (Unicode's
technical report 36, 2.1)."""

_BLANKS = "\xad\u034f\u061c\u115f\u1160\u180e\u200b\u200e\u200f\u2060-\u2065\u3164\uffa0"
"""Letters without a shape, hints for breaking lines and for directions: they have their place in
prose, but two names that differ by one look alike."""

_JOINERS = "(?<![^\x00-\x7f])[\u200c\u200d]"
"""What joins letters and parts them: in many scripts a part of spelling, never behind `a`."""

HIDDEN = re.compile(f"[{_CONTROLS}{_BLANKS}\ufffd]|{_JOINERS}")
_HIDDEN_IN_PROSE = re.compile(f"[{_CONTROLS}]")
_HARD_SPACE = re.compile(
    "^(?:[ ]*(?:- )*|[ ]*(?:- )*[^\\W\\d_][\\w ]*:|[ ]*-)([\u00a0\u2007\u202f]+)"
)


def to_text(raw: bytes) -> str | Fault:
    """The text of a file's bytes (UTF-8), its line ends made alike; or why it isn't text."""
    if len(raw) > LARGEST:
        return Fault(
            0,
            0,
            f"This file is {len(raw) / 1e6:.1f} MB; a studio's file has at most 2 MB. Split it.",
        )
    other = next((name for mark, name in MARKS.items() if raw.startswith(mark)), _unmarked(raw))
    if other:
        return Fault(0, 0, f"This file is saved as {other}. {_SAVE}")
    if raw.count(b"\x00") > MOST_HIDDEN:
        return Fault(0, 0, "This is not a text file. Only text can stand here.")
    try:
        text = raw.decode("utf-8")
    except UnicodeDecodeError as wrong:
        return _not_utf8(raw, wrong.start)
    text = one_line_end(text.removeprefix(BOM))
    return _too_long(text) or text


def one_line_end(text: str) -> str:
    """A text whose lines end as on all machines of today."""
    return text.replace("\r\n", "\n").replace("\r", "\n")


def _unmarked(raw: bytes) -> str:
    """UTF-16 or UTF-32 that doesn't say so: most letters have empty bytes beside them."""
    start = raw[:400]
    for name, width in (("UTF-32", 4), ("UTF-16", 2)):
        for at in {0, width - 1}:
            letters, empty = start[at::width], start.count(0)
            written = len(letters) > 3 and letters.isascii() and 0 not in letters
            if written and empty >= len(start) * (width - 1) // width * 9 // 10:
                return name
    return ""


def _too_long(text: str) -> Fault | None:
    """Lines that nobody wrote by hand, by their number or by one's length."""
    lines = text.split("\n")
    if len(lines) > MOST_LINES:
        message = f"This file has over {MOST_LINES:,} lines. Split it."
        return Fault(MOST_LINES, 0, message)
    for at, line in enumerate(lines):
        if len(line) > LONGEST_LINE:
            message = (
                f"This line goes on for {len(line):,} letters; {LONGEST_LINE:,} are read at most. "
                "Take out what doesn't belong here, or break the line."
            )
            return Fault(at, LONGEST_LINE, message)
    return None


_SAVE = "Save it again as UTF-8: most editors offer that as ‘encoding’ when saving."


def _not_utf8(raw: bytes, at: int) -> Fault:
    """Where the first byte stands that can't be UTF-8, and the letter it probably was."""
    before = raw[:at].replace(b"\r\n", b"\n").replace(b"\r", b"\n").decode("utf-8", "replace")
    line, column = before.count("\n"), len(before) - before.rfind("\n") - 1
    letter = bytes([raw[at]]).decode("cp1252", "replace")
    meant = f" (probably ‘{letter}’)" if letter.isalpha() or letter in "€‘’“”–" else ""
    return Fault(
        line,
        column,
        f"This file isn't saved as UTF-8: here stands a letter{meant} that can't be read. {_SAVE}",
    )


def hidden_characters(lines: list[str]) -> list[Fault]:
    """The characters that can't be seen, one fault a line, each with the line without them."""
    found = [fault for at, line in enumerate(lines) if (fault := _hidden(at, line))]
    if len(found) > MOST_HIDDEN:
        return [
            Fault(
                found[0].line,
                found[0].column,
                "This is not a text file: it is full of characters that can't be seen.",
            )
        ]
    return found


def hidden_in_prose(at: int, line: str) -> Fault | None:
    """A character in a line of prose that isn't text, or turns about the letters beside it."""
    hidden = _HIDDEN_IN_PROSE.search(line)
    return Fault(at, hidden.start(), _stands_here(hidden[0])) if hidden else None


def _stands_here(sign: str) -> str:
    return f"A character that can't be seen stands here ({named(sign)}). Delete it."


def named(sign: str) -> str:
    """A character by its number and Unicode's name for it: `U+200B, zero width space`."""
    return f"U+{ord(sign):04X}, {unicodedata.name(sign, 'control character').lower()}"


def _hidden(at: int, line: str) -> Fault | None:
    hidden = HIDDEN.search(line)
    if hidden:
        return Fault(at, hidden.start(), _stands_here(hidden[0]), HIDDEN.sub("", line))
    hard = _HARD_SPACE.match(line)
    if hard:
        message = (
            "This space is a hard space, as copied from a letter or a web page. "
            "Put an ordinary space in its place."
        )
        mended = line[: hard.start(1)] + " " * len(hard[1]) + line[hard.end(1) :]
        return Fault(at, hard.start(1), message, mended)
    return None
