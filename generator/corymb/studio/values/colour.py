"""Which colour, what is it called, and how much of the flower is it?"""

import re
from dataclasses import dataclass, replace
from decimal import Decimal

from corymb.studio.suggest import quoted
from corymb.studio.values.number import plain
from corymb.studio.values.share import parse_share

_SHARE = re.compile(r"(?<![0-9.,])(?P<share>[0-9.,]+\s*(?:%|percent|per cent))$", re.IGNORECASE)
_HEX = re.compile(r"#?[0-9a-fA-F]{6}")
_NEARLY = re.compile(r"#[0-9a-zA-Z]+|(?=[a-zA-Z]*[0-9])[0-9a-zA-Z]+|[0-9a-fA-F]{3}")
_NAME = re.compile(r"[^\W\d_]+(?:[\s'’/&.-]+[^\W\d_]+)*\.?")


@dataclass(frozen=True)
class NamedColour:
    """A colour by its name and its sRGB value, `#f4efe6`."""

    name: str
    hex: str

    def __str__(self) -> str:
        return f"{self.name} {self.hex[1:]}".strip()


@dataclass(frozen=True)
class ColourPart:
    """One colour of a stem; its share is of one, and None means all that the others leave."""

    name: str
    hex: str
    share: Decimal | None = None

    def __str__(self) -> str:
        colour = str(NamedColour(self.name, self.hex))
        return colour if self.share is None else f"{colour} {plain(self.share * 100)} %"

    def with_share(self, share: Decimal) -> "ColourPart":
        """The same colour, so much of it."""
        return replace(self, share=share)


def parse_colour_part(text: str) -> ColourPart:
    """Reads `shell e8c2b4 80 %`; the name and the share may be left out. Raises ValueError."""
    flat = " ".join(text.split())
    found = _SHARE.search(flat)
    share = parse_share(found["share"]).fraction if found else None
    colour = parse_named_colour(flat[: found.start()] if found else flat)
    return ColourPart(colour.name, colour.hex, share)


def parse_named_colour(text: str) -> NamedColour:
    """Reads `white linen f4efe6`; the name may be left out. Raises ValueError."""
    flat = " ".join(text.split())
    name, _, number = flat.rpartition(" ")
    if not _HEX.fullmatch(number):
        raise ValueError(_not_a_colour(flat, number))
    if name and not _NAME.fullmatch(name):
        raise ValueError(
            f"{quoted(flat)} is out of order: first the name, then the colour's number, "
            "then the share, like ‘shell e8c2b4 80 %’."
        )
    return NamedColour(name, parse_hex(number))


def parse_hex(text: str) -> str:
    """Reads a colour's number with or without #; gives `#e8c2b4`. Raises ValueError."""
    number = text.strip()
    if not _HEX.fullmatch(number):
        raise ValueError(_not_a_colour(number, number))
    return f"#{number.lstrip('#').lower()}"


def _not_a_colour(flat: str, number: str) -> str:
    digits = number.lstrip("#")
    if not number or not _NEARLY.fullmatch(number):
        given = quoted(flat) if flat else "The colour"
        return (
            f"{given} has no colour number: write six of 0-9 and a-f after the name, "
            "as a colour picker gives them, like ‘shell e8c2b4’."
        )
    if re.fullmatch(r"[0-9a-fA-F]{3}", digits):
        long = "".join(c * 2 for c in digits).lower()
        return f"{quoted(number)} is a colour in short: write all six, {quoted(long)}."
    if re.fullmatch(r"[0-9a-fA-F]{8}", digits):
        return f"{quoted(number)} has two signs too many: write {quoted(digits[:6].lower())}."
    wrong = sorted(set(re.sub(r"[0-9a-fA-F]", "", digits)))
    if wrong:
        return (
            f"{quoted(number)} is not a colour: {', '.join(quoted(c) for c in wrong)} can't be in "
            "it. A colour is six of 0-9 and a-f, like ‘e8c2b4’."
        )
    return f"{quoted(number)} has {len(digits)} signs; a colour has six, like ‘e8c2b4’."
