"""What the short forms have in common: a count, a name to refer by, words after commas."""

import re

from corymb.studio.suggest import quoted
from corymb.studio.values.text import parse_count, parse_id

COUNTED = re.compile(r"(?P<count>[0-9][0-9.,]*)(?:\s*[x×])?\s+(?P<rest>.+)", re.IGNORECASE)
"""How many (or how much), then what: `3 dahlia-shell`, `3 x dahlia-shell`, `0.3 m twine`."""

FIGURES = dict(
    zip(
        ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"),
        range(1, 11),
        strict=True,
    )
) | {"a": 1, "an": 1, "eleven": 11, "twelve": 12, "fifteen": 15, "twenty": 20}
"""Numbers that are written out, as one says them."""

_GLUED = re.compile(r"(?P<count>[0-9]+)x?(?P<rest>[a-z-]{3,})", re.IGNORECASE)
_TURNED = re.compile(r"(?P<rest>\D.*?)\s*[x×]?\s*(?P<count>[0-9]+)", re.IGNORECASE)


def pieces(text: str) -> list[str]:
    """What stands between the commas. Raises ValueError: nothing there."""
    flat = " ".join(text.split())
    parts = [part.strip() for part in flat.split(",")]
    if not all(parts):
        raise ValueError(f"{quoted(flat)} has a comma with nothing beside it: take it out.")
    return parts


def count_and_id(text: str, example: str) -> tuple[int, str]:
    """`3 dahlia-shell`. Raises ValueError: no count, or the wrong way round."""
    found = COUNTED.fullmatch(text)
    if found:
        return parse_count(found["count"]), parse_id(found["rest"])
    word, _, rest = text.partition(" ")
    if rest and word.casefold() in FIGURES:
        right = f"{FIGURES[word.casefold()]} {rest}"
        raise ValueError(f"{quoted(text)} counts in words: write it in figures, {quoted(right)}.")
    glued, turned = _GLUED.fullmatch(text), _TURNED.fullmatch(text)
    near = glued or turned
    if near and (glued or " " in text):
        wrong = "lacks a space" if glued else "is the wrong way round"
        right = f"{near['count']} {near['rest']}"
        raise ValueError(f"{quoted(text)} {wrong}: write {quoted(right)}.")
    raise ValueError(f"{quoted(text)} doesn't say how many: write it like {quoted(example)}.")


def maybe_count_and_id(text: str) -> tuple[int | None, str]:
    """`3 dahlia-shell`, or `dahlia-shell` with no count. Raises ValueError."""
    found = COUNTED.fullmatch(text)
    if not found:
        return None, parse_id(text)
    return parse_count(found["count"]), parse_id(found["rest"])


def variant_and_size(words: list[str], text: str) -> tuple[str, ...]:
    """The words after a recipe, at most two. Raises ValueError."""
    if len(words) > 2:
        raise ValueError(
            f"{quoted(text)} has too much after the recipe: "
            "at most a variant and a size, like ‘hedgerow-jar, later, small’."
        )
    return tuple(parse_id(word) for word in words)


def some(count: int | None, stem: str) -> str:
    """A stem, with its count where there is one."""
    return stem if count is None else f"{count} {stem}"


def comma(*parts: str | None) -> str:
    """The parts that are there, set apart by commas."""
    return ", ".join(part for part in parts if part)
