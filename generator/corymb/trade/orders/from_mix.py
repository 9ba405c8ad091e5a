"""What does a line `from the mix` get, that nothing is cut for?

It is made from the order's other flowers: first from what is left over of the cut, then from the
order's own spare. Where they have too few of a stem that isn't essential to it, it takes what the
day put in that stem's place, if that may go into the piece. What it still lacks is told: so many
more to cut, or so many that the other pieces go without.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field

from corymb.trade.cut import CutPlan, Fill, StandInOption
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.needs import Need, needs_in

Options = Callable[[Need], Iterable[StandInOption]]


@dataclass(frozen=True)
class Mixed:
    """One line made from the mix: stems by id, as many as all its pieces take."""

    order: str
    line: int
    wanted: dict[str, int]
    left_over: dict[str, int]
    """Taken from what was cut and no order had asked for; what stands in is among it."""
    spare: dict[str, int]
    """Taken from the order's own spare; what stands in is among it."""
    fills: tuple[tuple[Fill, ...], ...]
    """What goes in for each line of its look, in turn."""
    missing: dict[str, int]
    """What none of them does for."""


def mixed(
    dues: Sequence[Due], plan: CutPlan, left: Counter[str], options: Options
) -> tuple[Mixed, ...]:
    """Every line from the mix in turn; `left` is what is left over of the cut, by stem."""
    swaps = set(_swaps(plan))
    left = Counter(left)
    made = []
    for due in dues:
        rest = _Rest(left, _spare_of(due, plan))
        for line in due.lines:
            if line.piece.from_the_mix:
                made.append(_one(due, line, rest, swaps, options))
    return tuple(made)


@dataclass
class _Rest:
    """What there still is, and what one line has taken of it."""

    left: Counter[str]
    spare: Counter[str]
    from_left: Counter[str] = field(default_factory=Counter)
    from_spare: Counter[str] = field(default_factory=Counter)

    def begin(self) -> None:
        """Another line takes from here on."""
        self.from_left, self.from_spare = Counter(), Counter()

    def has(self, stem: str) -> int:
        return self.left[stem] + self.spare[stem]

    def take(self, stem: str, count: int) -> int:
        """As many as there are, what is left over before what is spare."""
        over = min(count, self.left[stem])
        spare = min(count - over, self.spare[stem])
        self.left[stem] -= over
        self.spare[stem] -= spare
        self.from_left[stem] += over
        self.from_spare[stem] += spare
        return over + spare


def _one(
    due: Due, line: DueLine, rest: _Rest, swaps: set[tuple[str, str]], options: Options
) -> Mixed:
    needs = needs_in(due, line)
    rest.begin()
    own = [rest.take(need.look_line.stem, need.count) for need in needs]
    fills = tuple(
        tuple(_fills(need, got, rest, swaps, options)) for need, got in zip(needs, own, strict=True)
    )
    wanted: Counter[str] = Counter()
    met: Counter[str] = Counter()
    for need, some in zip(needs, fills, strict=True):
        wanted[need.look_line.stem] += need.count
        met[need.look_line.stem] += sum(fill.of for fill in some)
    taken = (dict(+rest.from_left), dict(+rest.from_spare))
    return Mixed(due.id, line.number, dict(wanted), *taken, fills, dict(wanted - met))


def _fills(
    need: Need, own: int, rest: _Rest, swaps: set[tuple[str, str]], options: Options
) -> Iterator[Fill]:
    """The stem itself, and then what the day put in its place."""
    stem, lacks = need.look_line.stem, need.count - own
    if own:
        yield Fill(stem, own, own)
    if not lacks:
        return
    for option in options(need):
        if (stem, option.stem) in swaps:
            there = rest.has(option.stem)
            does = next(n for n in range(lacks, -1, -1) if option.stems_for(n) <= there)
            if does:
                count = rest.take(option.stem, option.stems_for(does))
                yield Fill(option.stem, count, does, drift=option.drift, why=option.why)
                lacks -= does


def _swaps(plan: CutPlan) -> Iterator[tuple[str, str]]:
    """What goes out and what comes in for it, that day."""
    for each in plan.filled:
        for fill in (*each.fills, *each.spare):
            if fill.stem != each.stem:
                yield each.stem, fill.stem


def _spare_of(due: Due, plan: CutPlan) -> Counter[str]:
    spare: Counter[str] = Counter()
    for each in plan.filled:
        if each.order == due.id:
            for fill in each.spare:
                spare[fill.stem] += fill.count
    return spare
