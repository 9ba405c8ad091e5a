"""Is it plain text, a name to refer by, yes or no, a number, an address?"""

import re
import unicodedata
from decimal import Decimal

from corymb.studio.reading.decode import HIDDEN
from corymb.studio.suggest import did_you_mean, quoted
from corymb.studio.values.number import read_decimal
from corymb.studio.written import Written

YES = ("yes", "true", "on")
NO = ("no", "false", "off")
EMPTY = ("null", "~")
_ID = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")
_EMAIL = re.compile(r"[^\s@<>,;:\"?#%]+@[^\s@<>,;:\"?#%/.]+(?:\.[^\s@<>,;:\"?#%/.]+)+")
LONGEST_ID = 80
"""Ids become file names and addresses, which have an end."""

OF_WINDOWS = re.compile(r"con|prn|aux|nul|(?:com|lpt)[1-9]")
"""What no file can be called there, whatever its ending (Microsoft, Naming Files)."""


def parse_text(text: str) -> str:
    """Any text. Raises ValueError: nothing in it, or an unquoted yes, no or the like.

    In quotes YAML writes a character that nobody can see as `\\e` or `\\u202e`: none is taken.
    """
    bare = text.strip()
    if not bare:
        raise ValueError("There is nothing here: write some text, or take the line out.")
    if hidden := HIDDEN.search(bare):
        raise ValueError(
            f"A character that can't be seen is written here (U+{ord(hidden[0]):04X}): take it out."
        )
    if isinstance(text, Written) and not text.quoted and bare.casefold() in (*YES, *NO, *EMPTY):
        raise ValueError(
            f"A bare {quoted(bare)} would be read as a switch, not as text: "
            f'put it in quotes, "{bare}".'
        )
    return str(bare)


def parse_yes_no(text: str) -> bool:
    """Reads `yes` or `no`. Raises ValueError."""
    word = text.strip().casefold()
    if word in YES or word in NO:
        return word in YES
    raise ValueError(
        f"{quoted(text)} is neither yes nor no.{did_you_mean(word, ('yes', 'no'))} Write yes or no."
    )


def print_yes_no(value: bool) -> str:
    """`yes` or `no`."""
    return "yes" if value else "no"


def parse_id(text: str) -> str:
    """Reads the name by which other files refer to a thing, `dahlia-shell`. Raises ValueError."""
    word = text.strip()
    if not word:
        raise ValueError("There is nothing here: write a name to refer by, like ‘dahlia-shell’.")
    if len(word) > LONGEST_ID:
        raise ValueError(f"{quoted(word)} is too long: use at most {LONGEST_ID} letters.")
    if OF_WINDOWS.fullmatch(word):
        raise ValueError(
            f"{quoted(word)} can't be referred to: no file can have this name on Windows. "
            f"Say more, like ‘{word}-1’."
        )
    if not _ID.fullmatch(word) or word.isdigit():
        right = slug(word)
        hint = f" Write {quoted(right)}." if right and not right.isdigit() else ""
        hint = hint if right else " Letters are a to z here."
        raise ValueError(
            f"{quoted(word)} can't be referred to: use small letters and figures, "
            f"words joined by one hyphen.{hint}"
        )
    return str(word)


def slug(text: str) -> str:
    """The id that a name would have: `Dahlia, Shell` is `dahlia-shell`, `Rosé` is `rose`."""
    letters = unicodedata.normalize("NFKD", text.replace("ß", "ss").replace("’", "")).casefold()
    plain = "".join(c for c in letters if not unicodedata.combining(c)).replace("'", "")
    return re.sub(r"[^a-z0-9]+", "-", plain).strip("-")


MOST = 100_000
"""Of anything that is counted in a studio; more is a slip of the hand. House value, no source."""


def id_from(name: str, otherwise: str = "") -> str:
    """An id after a name, at its longest half of what may be; `otherwise` where none can be made.

    Of a name in other letters than a to z none can.
    """
    try:
        return parse_id(slug(name)[: LONGEST_ID // 2].rstrip("-"))
    except ValueError:
        return otherwise


def parse_whole(text: str) -> int:
    """Reads a whole number, `7`. Raises ValueError."""
    flat = text.strip()
    if re.fullmatch(r"0+[0-9]+", flat) and len(flat) <= 12:
        raise ValueError(f"{quoted(flat)} starts with a nought: write {int(flat)}.")
    number = read_decimal(flat, "a whole number", "7")
    if number < 0:
        raise ValueError(f"{quoted(flat)} is below nothing: write 0 or more.")
    if number % 1:
        raise ValueError(f"{quoted(flat)} is not whole: write {int(number)} or {int(number) + 1}.")
    if number > MOST:
        raise ValueError(f"{quoted(flat)} is more than this can be: it is {MOST} at most.")
    return int(number)


def parse_count(text: str) -> int:
    """Reads a whole number of one or more. Raises ValueError."""
    count = parse_whole(text)
    if count == 0:
        raise ValueError("A count of 0 needs no line: write 1 or more, or take it out.")
    return count


def parse_decimal(text: str) -> Decimal:
    """Reads `2.6` or `-7.1`, exactly. Raises ValueError."""
    return read_decimal(text, "a number", "2.6")


def parse_number(text: str) -> float:
    """Reads `2.6` or `-7.1`. Raises ValueError."""
    return float(parse_decimal(text))


def parse_email(text: str) -> str:
    """Looks over an e-mail address; only sending to it would prove it. Raises ValueError.

    One with ? # or % could be had, but a link to it would bring along what stands behind them
    (RFC 6068: other receivers, for one).
    """
    address = text.strip()
    if not _EMAIL.fullmatch(address):
        raise ValueError(
            f"{quoted(address)} is not an e-mail address: write it like ‘name@garden.example’."
        )
    return str(address)
