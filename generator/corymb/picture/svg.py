"""How is a drawing written down? A small writer of SVG: short numbers, escaped text, paths."""

from functools import lru_cache
from html import escape

Attribute = str | float | int


def number(value: float) -> str:
    """One decimal at most, and no more characters than needed: `.5`, `-3`, `12.1`."""
    return tenths(round(value * 10))


@lru_cache(maxsize=65536)
def tenths(count: int) -> str:
    """So many tenths; a picture writes the same few thousand numbers a million times."""
    whole, rest = divmod(abs(count), 10)
    sign = "-" if count < 0 else ""
    if not rest:
        return f"{sign}{whole}"
    return f"{sign}{whole or ''}.{rest}"


def fine(value: float) -> str:
    """Three decimals, for the parts of a matrix, where one would be too coarse."""
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def _attribute(name: str, value: Attribute) -> str:
    written = escape(value, quote=True) if isinstance(value, str) else number(value)
    return f' {_name(name)}="{written}"'


@lru_cache(maxsize=256)
def _name(name: str) -> str:
    """`class_` and `stroke_width` as SVG has them."""
    return name.rstrip("_").replace("_", "-")


def element(name: str, *inside: str, **attributes: Attribute) -> str:
    """`element("path", d=..., stroke_width=2)`; what is inside must be SVG already."""
    start = f"<{name}{''.join(_attribute(key, value) for key, value in attributes.items())}"
    return f"{start}>{''.join(inside)}</{name}>" if inside else f"{start}/>"


def text_element(name: str, text: str, **attributes: Attribute) -> str:
    """An element holding words from the studio's files: escaped, control characters dropped."""
    printable = "".join(letter if letter.isprintable() else " " for letter in text)
    return element(name, escape(printable, quote=False) or " ", **attributes)


def safe_id(text: str) -> str:
    """Words fit for an id inside a page: letters, digits and hyphens only."""
    return "".join(letter if letter.isascii() and letter.isalnum() else "-" for letter in text)
