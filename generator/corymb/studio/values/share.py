"""What part of the whole, and how many times as much? Both exact, never floats."""

from dataclasses import dataclass
from decimal import Decimal

from corymb.studio.suggest import quoted
from corymb.studio.values.number import plain, read_decimal

MOST_TIMES = 20
"""A bare number above this is a percentage whose sign was forgotten."""


@dataclass(frozen=True, order=True)
class Share:
    """A part of the whole: 0.85 prints as `85 %`."""

    fraction: Decimal

    def __str__(self) -> str:
        return f"{plain(self.fraction * 100)} %"


@dataclass(frozen=True, order=True)
class Scale:
    """How many times as much: 1.2 prints as `120 %`."""

    factor: Decimal

    def __str__(self) -> str:
        return f"{plain(self.factor * 100)} %"


def parse_share(text: str) -> Share:
    """Reads `85 %`, `85%`, `13.5 percent`, `0.85`. Raises ValueError."""
    fraction = _fraction(text, "a share", "85 %")
    flat = " ".join(text.split())
    if _is_bare(flat) and fraction >= 1:
        meant = "‘1 %’ or ‘100 %’" if fraction == 1 else f"‘{plain(fraction)} %’"
        raise ValueError(f"{quoted(flat)} has no sign of percent: write {meant}.")
    if not 0 <= fraction <= 1:
        raise ValueError(f"{quoted(flat)} is not a share: it lies between 0 % and 100 %.")
    return Share(fraction)


def parse_mark_up(text: str) -> Decimal:
    """Reads what a cost is multiplied by to make a price, `2.6`. Raises ValueError."""
    times = read_decimal(text, "a number", "2.6")
    if not 0 <= times <= MOST_TIMES:
        raise ValueError(
            f"{quoted(text.strip())} is not a mark-up: 1 asks what it cost, 2 twice that; it lies "
            f"between 0 and {MOST_TIMES}."
        )
    return times


def parse_scale(text: str) -> Scale:
    """Reads `120 %`, `1.2`, `2`. Raises ValueError."""
    factor = _fraction(text, "a scale", "120 %")
    flat = " ".join(text.split())
    if factor <= 0:
        raise ValueError(f"{quoted(flat)} would leave nothing: a scale is above 0, like ‘120 %’.")
    if factor > MOST_TIMES:
        hint = f": write {quoted(f'{plain(factor)} %')}." if _is_bare(flat) else "."
        raise ValueError(f"{quoted(flat)} is more than {MOST_TIMES} times as much{hint}")
    return Scale(factor)


def _is_bare(flat: str) -> bool:
    return flat[-1:].isdigit()


def _fraction(text: str, wanted: str, example: str) -> Decimal:
    flat = " ".join(text.split())
    for sign in ("%", "percent", "per cent"):
        if flat.casefold().endswith(sign):
            number = flat[: -len(sign)].strip()
            return read_decimal(number, f"the number of {wanted}", example.split()[0]) / 100
    return read_decimal(flat, wanted, example)
