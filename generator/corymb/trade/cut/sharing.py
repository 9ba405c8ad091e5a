"""Who gets which stems, once it is decided how many of each are cut?

Wanted stems that are alike are served in the order of their keys, each with its own stem before
any stand-in and the nearest colour first; so is what is wished of a stem as spare. So what is
short falls on as few lines as can be. Stems of the garden are given out before those bought.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from corymb.trade.cut.demand import Demand
from corymb.trade.cut.model import Decision, Met
from corymb.trade.cut.plan import Fill, Filled
from corymb.trade.cut.problem import CutProblem, StandInOption, Wanted

Options = Mapping[tuple[str, str], StandInOption]
"""What may stand in, by the key of what is wanted and the stem."""


class _Pool:
    """What a demand's routes still have to give."""

    def __init__(self, demand: Demand, met: Sequence[Met]) -> None:
        self.demand = demand
        self.blocks = {each.route: each.blocks for each in met}
        self.single = {each.route: each.single for each in met}

    def filled(self, options: Options) -> Iterator[Filled]:
        """Every member served: blocks first, from the last member on, so that none is torn."""
        of_blocks = {member.key: self._blocks(member) for member in reversed(self.demand.members)}
        for member in self.demand.members:
            blocks = of_blocks[member.key]
            fills = blocks + self._singly(member.count - _of(blocks))
            yield _filled(member, _told(member, fills, options))

    def _blocks(self, member: Wanted) -> list[Fill]:
        room, fills = self.demand.room(member), []
        for route, there in self.blocks.items():
            blocks = min(there, room // route.out)
            self.blocks[route] -= blocks
            room -= blocks * route.out
            fills.append(Fill(route.stem, blocks * route.in_, blocks * route.out))
        return fills

    def _singly(self, count: int) -> list[Fill]:
        fills = []
        for route, there in self.single.items():
            of = min(there, count)
            self.single[route] -= of
            count -= of
            fills.append(Fill(route.stem, of * route.each, of))
        return fills


def shared(problem: CutProblem, decision: Decision) -> tuple[Filled, ...]:
    """How each wanted stem is met, and what spare goes along, sorted by key."""
    options = {(option.wanted, option.stem): option for option in problem.options}
    pools = (_Pool(demand, met) for demand, met in decision.met)
    filled = {one.key: one for pool in pools for one in pool.filled(options)}
    spare = Counter(decision.spare)
    return tuple(_with_spare(filled[wanted.key], wanted, spare) for wanted in problem.wanted)


def _with_spare(filled: Filled, wanted: Wanted, there: Counter[str]) -> Filled:
    """The same with its part of the spare, as long as any is there."""
    given = min(wanted.spare, there[wanted.stem])
    there[wanted.stem] -= given
    fills = (Fill(wanted.stem, given, given),) if given else ()
    return replace(filled, spare=fills, spare_missed=wanted.spare - given)


def bought_in(filled: Iterable[Filled], cut: Mapping[str, int]) -> tuple[Filled, ...]:
    """The same, with what the cut doesn't cover marked as bought; spare never is."""
    garden = Counter(cut)
    return tuple(replace(each, fills=tuple(_bought(each.fills, garden))) for each in filled)


def _of(fills: Iterable[Fill]) -> int:
    return sum(fill.of for fill in fills)


def _filled(wanted: Wanted, fills: tuple[Fill, ...]) -> Filled:
    return Filled(
        key=wanted.key,
        order=wanted.order,
        stem=wanted.stem,
        count=wanted.count,
        essential=wanted.essential,
        fills=fills,
        short=wanted.count - _of(fills),
    )


def _told(wanted: Wanted, fills: Iterable[Fill], options: Options) -> tuple[Fill, ...]:
    """One fill a stem, in the order of the routes, with what is said of the stand-in."""
    told: dict[str, Fill] = {}
    for fill in fills:
        before = told.get(fill.stem, Fill(fill.stem, 0, 0))
        told[fill.stem] = Fill(fill.stem, before.count + fill.count, before.of + fill.of)
    given = (fill for fill in told.values() if fill.of)
    return tuple(_with_reasons(fill, options.get((wanted.key, fill.stem))) for fill in given)


def _with_reasons(fill: Fill, option: StandInOption | None) -> Fill:
    return replace(fill, drift=option.drift, why=option.why) if option else fill


def _bought(fills: Iterable[Fill], garden: Counter[str]) -> Iterator[Fill]:
    for fill in fills:
        own = min(fill.count, garden[fill.stem])
        garden[fill.stem] -= own
        yield replace(fill, bought=fill.count - own)
