"""What changed between a parent's lines and a variant's, one sentence a change?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from corymb.trade.changes import LookLine


@dataclass(frozen=True)
class Difference:
    """A stem whose count changed: `before` or `after` is 0 where it is new or gone."""

    stem: str
    role: str
    before: int
    after: int

    @property
    def kind(self) -> str:
        """added | dropped | more | fewer."""
        if self.before == 0:
            return "added"
        if self.after == 0:
            return "dropped"
        return "more" if self.after > self.before else "fewer"


def differences(parent: Sequence[LookLine], child: Sequence[LookLine]) -> list[Difference]:
    """Every stem and role whose count differs, in the order of the parent, then what is new."""
    before = {(line.stem, line.role): line.count for line in parent}
    after = {(line.stem, line.role): line.count for line in child}
    return [
        Difference(stem, role, before.get((stem, role), 0), after.get((stem, role), 0))
        for stem, role in dict.fromkeys([*before, *after])
        if before.get((stem, role), 0) != after.get((stem, role), 0)
    ]
