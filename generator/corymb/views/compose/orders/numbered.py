"""How are numbers told that follow each other: as a span?"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from corymb.language import pgettext

FEWEST = 2
"""Numbers that make a span."""


def ranges(numbers: Sequence[int], told: str = "{first}–{last}", fewest: int = FEWEST) -> str:
    """`1–4, 7`: numbers that follow each other as one span, if there are enough of them."""
    runs: list[str] = []
    for _, run in groupby(enumerate(numbers), key=lambda pair: pair[1] - pair[0]):
        span = [number for _, number in run]
        if len(span) < fewest:
            runs += map(str, span)
        else:
            runs.append(told.format(first=span[0], last=span[-1]))
    return ", ".join(runs)


def bucket_numbers(numbers: Sequence[int]) -> str:
    """`1, 2, 28 to 93`, as it is read aloud in the yard."""
    return ranges(numbers, pgettext("numbers", "{first} to {last}"), 3)
