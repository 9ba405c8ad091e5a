"""Styles, lines and stems for the tests of swaps."""

from __future__ import annotations

from typing import Any

from corymb.studio.models import Stem, Style
from corymb.trade.changes import LookLine
from tests.trade.making import stem

STYLE: dict[str, Any] = {
    "name": "Posy",
    "plural": "Posies",
    "about": "Small and rounded.",
    "place": "table with food",
    "stem length": "12-30 cm",
    "heaviest stem": "30 g",
    "excludes": ["poisonous if eaten", "thorns"],
}


def style(known_as: str = "posy", **keys: Any) -> Style:
    """A style with some keys of its own."""
    own = {key.rstrip("_").replace("_", " "): value for key, value in keys.items()}
    return Style.model_validate({**STYLE, **own}).with_id(known_as)


def line(count: int = 6, stem_id: str = "rose", role: str = "accent", **keys: Any) -> LookLine:
    """A line of a look."""
    own = {"use": None, "essential": False, "note": "", **keys}
    return LookLine(stem_id, count, role, own["use"], own["essential"], own["note"])


def bed(*stems: Stem) -> dict[str, Stem]:
    """The rose of `tests.trade.making` and others, by id."""
    return {each.id: each for each in (stem(), *stems)}
