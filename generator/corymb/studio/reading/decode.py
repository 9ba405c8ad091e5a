"""Is it text at all? Bytes of a file to clean text, with the characters nobody can see refused."""

import re
import unicodedata

from corymb.studio.reading.fault import Fault

LARGEST = 2_000_000
"""Bytes of the largest file that is read: a photo or a list of everything, not a studio's file."""

MOST_HIDDEN = 20
"""With more unseen characters than this a file isn't text."""

UTF16 = (b"\xff\xfe", b"\xfe\xff")
BOM = "\N{ZERO WIDTH NO-BREAK SPACE}"
HIDDEN = re.compile(
    "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\xad\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f"
    "\ufeff\ufff0-\uffff\ud800-\udfff]"
)
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
    if raw.startswith(UTF16):
        return Fault(0, 0, f"This file is saved as UTF-16. {_SAVE}")
    if raw.count(b"\x00") > MOST_HIDDEN:
        return Fault(0, 0, "This is not a text file. Only text can stand here.")
    try:
        text = raw.decode("utf-8")
    except UnicodeDecodeError as wrong:
        return _not_utf8(raw, wrong.start)
    return text.removeprefix(BOM).replace("\r\n", "\n").replace("\r", "\n")


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


def _hidden(at: int, line: str) -> Fault | None:
    hidden = HIDDEN.search(line)
    if hidden:
        sign = hidden[0]
        name = unicodedata.name(sign, "control character").lower()
        message = (
            f"A character that can't be seen stands here (U+{ord(sign):04X}, {name}). Delete it."
        )
        return Fault(at, hidden.start(), message, HIDDEN.sub("", line))
    hard = _HARD_SPACE.match(line)
    if hard:
        message = (
            "This space is a hard space, as copied from a letter or a web page. "
            "Put an ordinary space in its place."
        )
        mended = line[: hard.start(1)] + " " * len(hard[1]) + line[hard.end(1) :]
        return Fault(at, hard.start(1), message, mended)
    return None
