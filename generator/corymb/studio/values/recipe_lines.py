"""How are a recipe's lines written short? Stems, swaps, drops and sundries."""

import re
from dataclasses import dataclass
from decimal import Decimal

from corymb.studio.saying import or_list
from corymb.studio.suggest import did_you_mean, quoted
from corymb.studio.values.money import parse_money, print_money
from corymb.studio.values.number import plain, read_decimal
from corymb.studio.values.pieces import (
    COUNTED,
    comma,
    count_and_id,
    maybe_count_and_id,
    pieces,
    some,
)
from corymb.studio.values.text import slug
from corymb.studio.words import ESSENTIAL, ROLES, USES

UNITS = ("m", "cm", "mm", "kg", "g", "L", "l", "ml")
"""Units a sundry can be measured in; without one it is counted."""


@dataclass(frozen=True)
class RecipeLineText:
    """`3 dahlia-shell, light, essential`: how many of a stem, and the parts it plays."""

    count: int
    stem: str
    role: str | None = None
    use: str | None = None
    essential: bool = False

    def __str__(self) -> str:
        words = (self.role, self.use, ESSENTIAL if self.essential else None)
        return comma(f"{self.count} {self.stem}", *words)


@dataclass(frozen=True)
class SwapText:
    """`3 dahlia-shell -> 5 cosmos-white, accent`: one stem for another."""

    out: str
    into: str
    out_count: int | None = None
    into_count: int | None = None
    role: str | None = None

    def __str__(self) -> str:
        out, into = some(self.out_count, self.out), some(self.into_count, self.into)
        return comma(f"{out} -> {into}", self.role)


@dataclass(frozen=True)
class DropText:
    """`wild-carrot` (all of it) or `2 dahlia-shell` (two fewer)."""

    stem: str
    count: int | None = None

    def __str__(self) -> str:
        return some(self.count, self.stem)


@dataclass(frozen=True)
class SundryText:
    """`0.3 m jute twine, 0.05`: how much of a thing that isn't a stem, and its cost."""

    count: Decimal
    name: str
    cost: Decimal
    unit: str = ""

    def __str__(self) -> str:
        what = f"{self.unit} {self.name}" if self.unit else self.name
        return f"{plain(self.count)} {what}, {print_money(self.cost)}"


def parse_recipe_line(text: str) -> RecipeLineText:
    """Reads `3 dahlia-shell, light, essential`. Raises ValueError."""
    head, *words = pieces(text)
    _not_by_its_name(head, words)
    count, stem = count_and_id(head, "3 dahlia-shell")
    role = use = None
    essential = False
    for word in (w.casefold() for w in words):
        if word == ESSENTIAL and not essential:
            essential = True
        elif word in ROLES and role is None:
            role = word
        elif word in USES and use is None:
            use = word
        else:
            raise ValueError(_not_a_part(word, (role, use, ESSENTIAL)))
    return RecipeLineText(count, stem, role, use, essential)


def parse_swap(text: str) -> SwapText:
    """Reads `a -> b`, `3 a -> 5 b`, `a -> b, accent`. Raises ValueError."""
    head, *words = pieces(text)
    sides = re.split(r"\s*(?:->|→|=>|⇒)\s*", head)
    if len(sides) != 2 or not all(sides):
        raise ValueError(
            f"{quoted(text)} is not a swap: write what goes out, an arrow and what comes in, "
            "like ‘3 dahlia-shell -> 5 cosmos-white’."
        )
    (out_count, out), (into_count, into) = (maybe_count_and_id(side) for side in sides)
    if out == into and out_count == into_count:
        raise ValueError(f"{quoted(text)} swaps a stem for itself: name another after the arrow.")
    role = None
    for word in (w.casefold() for w in words):
        if word not in ROLES or role is not None:
            raise ValueError(
                f"{quoted(word)} can't stand in a swap.{did_you_mean(word, ROLES)} "
                f"After the comma goes a role: {or_list(ROLES)}."
            )
        role = word
    return SwapText(out, into, out_count, into_count, role)


def parse_drop(text: str) -> DropText:
    """Reads `wild-carrot` or `2 dahlia-shell`. Raises ValueError."""
    head, *words = pieces(text)
    if words:
        raise ValueError(f"{quoted(text)} names more than one thing: put each on its own line.")
    count, stem = maybe_count_and_id(head)
    return DropText(stem, count)


def parse_sundry(text: str) -> SundryText:
    """Reads `1 pint jar, 1.20` or `0.3 m jute twine, 0.05`. Raises ValueError."""
    flat = " ".join(text.split())
    if with_comma := re.search(r"(?<!\S)\d+,\d+$", flat):
        # `1 jug, 0,50` would otherwise be a ‘jug, 0’ for 50.
        parse_money(with_comma[0])
    head, apart, cost = flat.rpartition(",")
    found = COUNTED.fullmatch(head.strip())
    if not apart or not found:
        raise ValueError(
            f"{quoted(flat)} should be how many, what, and its cost after a comma, "
            "like ‘1 pint jar, 1.20’."
        )
    count = read_decimal(found["count"], "a number", "1 pint jar, 1.20")
    if count <= 0:
        raise ValueError(f"{quoted(flat)}: none of a thing needs no line; take it out.")
    unit, _, name = found["rest"].partition(" ")
    if unit not in UNITS or not name:
        unit, name = "", found["rest"]
    return SundryText(count, name, parse_money(cost), unit)


def _not_by_its_name(head: str, words: list[str]) -> None:
    """Names hold commas, `Scabious, lilac`; ids don't. Raises ValueError."""
    counted = COUNTED.fullmatch(head)
    if not counted or not words or words[0].casefold() in (*ROLES, *USES, ESSENTIAL):
        return
    if counted["rest"] != counted["rest"].casefold():
        name, *others = f"{counted['rest']}, {words[0]}", *words[1:]
        right = comma(f"{counted['count']} {slug(name)}", *others)
        raise ValueError(
            f"{quoted(name)} is a stem's name for readers; here goes its id. "
            f"If that was made from the name, write {quoted(right)}."
        )


def _not_a_part(word: str, taken: tuple[str | None, str | None, str]) -> str:
    role, use, _ = taken
    if word in ROLES:
        return f"A line plays one role; this one has {quoted(role or '')} and {quoted(word)}."
    if word in USES:
        return f"A line plays one part; this one has {quoted(use or '')} and {quoted(word)}."
    if word == ESSENTIAL:
        return "‘essential’ stands here twice: once will do."
    words = (*ROLES, *USES, ESSENTIAL)
    return (
        f"{quoted(word)} is not a word of a recipe line.{did_you_mean(word, words)} "
        f"After the stem go its role ({or_list(ROLES)}), a use, or ‘{ESSENTIAL}’."
    )
