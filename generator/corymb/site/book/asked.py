"""Which book is asked for: whose, on which paper, and with which chapters?"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from corymb.views.pieces import Audience

Paper = Literal["a4", "a5"]
PAPERS: tuple[Paper, ...] = ("a4", "a5")


class NothingInBookError(ValueError):
    """No recipe would be in the book; the text says why."""


@dataclass(frozen=True)
class Asked:
    """A book; without `styles` it has a chapter for each style with recipes."""

    audience: Audience = "clients"
    paper: Paper = "a4"
    styles: tuple[str, ...] = ()
