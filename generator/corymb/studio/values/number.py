"""How many, or how much? Plain numbers, and numbers with a unit behind them."""

import re
from collections.abc import Mapping
from decimal import Decimal

from corymb.studio.saying import or_list
from corymb.studio.suggest import did_you_mean, quoted

LONGEST = 12
"""Digits a number may have; a longer one is a slip of the hand."""

NUMBER = r"[0-9]+(?:\.[0-9]+)?|\.[0-9]+"
_MEASURE = re.compile(rf"(?P<number>[+\-−]?(?:[0-9]+,[0-9]+|{NUMBER}))\s*(?P<unit>[^\s0-9].*)?")
_COMMA = re.compile(r"[+\-−]?[0-9]+,[0-9]+")
_COUNTED = {
    "a": 1, "an": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7,
    "eight": 8, "nine": 9, "ten": 10, "eleven": 11, "twelve": 12, "dozen": 12, "a dozen": 12,
    "twenty": 20, "half": 0.5, "a half": 0.5, "½": 0.5, "¼": 0.25, "¾": 0.75,
}  # fmt: skip


def read_decimal(text: str, wanted: str, example: str) -> Decimal:
    """A plain decimal number, exactly. Raises ValueError: a comma, a word, too long."""
    number = text.strip()
    if re.fullmatch(rf"[+\-−]?(?:{NUMBER})", number):
        if sum(c.isdigit() for c in number) > LONGEST:
            raise ValueError(f"{quoted(number)} is too long a number for {wanted}.")
        return Decimal(number.replace("−", "-"))
    if _COMMA.fullmatch(number):
        raise ValueError(f"{quoted(number)} has a comma in it: write {or_list(uncomma(number))}.")
    in_figures = _COUNTED.get(number.casefold())
    if in_figures is not None:
        raise ValueError(f"Write {quoted(number)} in figures: {in_figures}.")
    raise ValueError(f"{quoted(number)} is not {wanted}: write it like {quoted(example)}.")


def uncomma(number: str) -> list[str]:
    """What a number with a comma can have meant: `1,5` is 1.5; `1,200` is 1200 or 1.200."""
    whole, part = number.split(",")
    return [whole + part, f"{whole}.{part}"] if len(part) == 3 else [f"{whole}.{part}"]


def read_measure(text: str, units: Mapping[str, Decimal], wanted: str, example: str) -> Decimal:
    """A number with its unit, in the unit whose factor is 1.

    `units` maps each accepted spelling to its factor; the first spelling of a factor is the one
    named in messages. Raises ValueError: no number, no unit, or a unit that isn't known.
    """
    flat = " ".join(text.split())
    found = _MEASURE.fullmatch(flat)
    if not found:
        raise ValueError(f"{quoted(flat)} is not {wanted}: write it like {quoted(example)}.")
    number, unit = found["number"], (found["unit"] or "").rstrip(".")
    value = read_decimal(number, wanted, example)
    if not unit:
        raise ValueError(
            f"{quoted(flat)} has no unit: write for instance "
            f"{quoted(f'{number} {example.split()[-1]}')}. The units are {_names(units)}."
        )
    factor = units.get(unit, units.get(unit.casefold()))
    if factor is None:
        raise ValueError(
            f"{quoted(unit)} in {quoted(flat)} is not a unit here."
            f"{did_you_mean(unit, units)} The units are {_names(units)}."
        )
    return value * factor


def plain(value: Decimal | float) -> str:
    """A number as a person writes it: no exponent, no trailing zeros."""
    exact = value if isinstance(value, Decimal) else Decimal(repr(float(value)))
    text = format(exact, "f")
    return (text.rstrip("0").rstrip(".") if "." in text else text) or "0"


def _names(units: Mapping[str, Decimal]) -> str:
    first = {factor: name for name, factor in reversed(list(units.items()))}
    return or_list(name for name in units if first[units[name]] == name)
