"""A table for a spreadsheet: words, whole numbers and exact amounts, not yet written as text."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

Cell = str | int | Decimal | None
"""None is an empty cell."""


@dataclass(frozen=True)
class Table:
    """A head and its rows, each as long as the head."""

    head: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]
