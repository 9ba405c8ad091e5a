"""Who gets which stems, once it is decided how many of each are cut?

Wanted stems that are alike are served in the order of their keys: first what each wants, with
its own stem before any stand-in and the nearest colour first, then what is wished as spare. So
what is short falls on as few lines as can be. Stems of the garden are given out before those
bought.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace

from corymb.trade.cut.demand import Demand
from corymb.trade.cut.plan import Fill, Filled
from corymb.trade.cut.problem import CutProblem, StandInOption, Wanted


@dataclass
class _Pool:
    """What a demand's routes still have to give, in wanted stems."""

    demand: Demand
    left: list[int]
    given: list[int] = field(init=False)

    def __post_init__(self) -> None:
        self.given = [0] * len(self.left)

    def take(self, count: int) -> Iterator[Fill]:
        """Up to `count` wanted stems, from the routes in their order."""
        for i, route in enumerate(self.demand.routes):
            of = min(count, self.left[i])
            if of == 0:
                continue
            before = route.stems_for(self.given[i])
            self.given[i] += of
            self.left[i] -= of
            count -= of
            yield Fill(route.stem, route.stems_for(self.given[i]) - before, of)


def shared(
    problem: CutProblem, met: Iterable[tuple[Demand, tuple[int, ...]]]
) -> tuple[Filled, ...]:
    """How each wanted stem is met, sorted by key."""
    options = {(option.wanted, option.stem): option for option in problem.options}
    return tuple(sorted(_filled(met, options), key=lambda each: each.key))


def bought_in(filled: Iterable[Filled], cut: Mapping[str, int]) -> tuple[Filled, ...]:
    """The same, with what the cut doesn't cover marked as bought."""
    every = tuple(filled)
    garden = Counter(cut)
    fills = [tuple(_bought(each.fills, garden)) for each in every]
    spare = [tuple(_bought(each.spare, garden)) for each in every]
    return tuple(
        replace(each, fills=own, spare=more)
        for each, own, more in zip(every, fills, spare, strict=True)
    )


def _filled(
    met: Iterable[tuple[Demand, tuple[int, ...]]],
    options: dict[tuple[str, str], StandInOption],
) -> Iterator[Filled]:
    for demand, counts in met:
        pool = _Pool(demand, list(counts))
        fills = {each.key: tuple(pool.take(each.count)) for each in demand.members}
        for each in demand.members:
            spare = tuple(_told(each, pool.take(each.spare), options))
            yield _one(each, tuple(_told(each, fills[each.key], options)), spare)


def _one(wanted: Wanted, fills: tuple[Fill, ...], spare: tuple[Fill, ...]) -> Filled:
    return Filled(
        key=wanted.key,
        order=wanted.order,
        stem=wanted.stem,
        count=wanted.count,
        essential=wanted.essential,
        fills=fills,
        short=wanted.count - sum(fill.of for fill in fills),
        spare=spare,
        spare_missed=wanted.spare - sum(fill.of for fill in spare),
    )


def _told(
    wanted: Wanted, fills: Iterable[Fill], options: dict[tuple[str, str], StandInOption]
) -> Iterator[Fill]:
    for fill in fills:
        option = options.get((wanted.key, fill.stem))
        yield replace(fill, drift=option.drift, why=option.why) if option else fill


def _bought(fills: Iterable[Fill], garden: Counter[str]) -> Iterator[Fill]:
    for fill in fills:
        own = min(fill.count, garden[fill.stem])
        garden[fill.stem] -= own
        yield replace(fill, bought=fill.count - own)
