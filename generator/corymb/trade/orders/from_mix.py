"""What does a line `from the mix` get, that nothing is cut for?

It is made from the order's other flowers: first from what is left over of the cut, then from the
order's own spare. What it still lacks is told: so many more to cut, or so many that the other
pieces go without.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from corymb.trade.cut import CutPlan
from corymb.trade.orders.due import Due, DueLine


@dataclass(frozen=True)
class Mixed:
    """One line made from the mix: stems by id, as many as all its pieces take."""

    order: str
    line: int
    wanted: dict[str, int]
    left_over: dict[str, int]
    """Taken from what was cut and no order had asked for."""
    spare: dict[str, int]
    """Taken from the order's own spare."""

    @property
    def missing(self) -> dict[str, int]:
        """What neither of them has."""
        got = Counter(self.left_over) + Counter(self.spare)
        return dict(Counter(self.wanted) - got)


def mixed(dues: Sequence[Due], plan: CutPlan, left: Counter[str]) -> tuple[Mixed, ...]:
    """Every line from the mix in turn; `left` is what is left over of the cut, by stem."""
    left = Counter(left)
    made = []
    for due in dues:
        spare = _spare_of(due, plan)
        for line in due.lines:
            if line.piece.from_the_mix:
                made.append(_one(due, line, left, spare))
                left -= Counter(made[-1].left_over)
                spare -= Counter(made[-1].spare)
    return tuple(made)


def _one(due: Due, line: DueLine, left: Counter[str], spare: Counter[str]) -> Mixed:
    wanted: Counter[str] = Counter()
    for look_line, count in zip(line.piece.look.lines, line.counts, strict=True):
        wanted[look_line.stem] += count * line.quantity
    over = wanted & left
    return Mixed(due.id, line.number, dict(wanted), dict(over), dict((wanted - over) & spare))


def _spare_of(due: Due, plan: CutPlan) -> Counter[str]:
    spare: Counter[str] = Counter()
    for each in plan.filled:
        if each.order == due.id:
            for fill in each.spare:
                spare[fill.stem] += fill.count
    return spare
