"""Lines and beds for the tests of swaps."""

from __future__ import annotations

from typing import Any

from corymb.studio.models import Stem
from corymb.trade.changes import LookLine
from tests.trade.making import stem


def line(count: int = 6, stem_id: str = "rose", role: str = "accent", **keys: Any) -> LookLine:
    """A line of a look."""
    own = {"use": None, "essential": False, "note": "", **keys}
    return LookLine(stem_id, count, role, own["use"], own["essential"], own["note"])


def bed(*stems: Stem) -> dict[str, Stem]:
    """The rose of `tests.trade.making` and others, by id."""
    return {each.id: each for each in (stem(), *stems)}
