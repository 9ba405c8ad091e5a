"""What may meet each wanted stem, and which wanted stems are alike?

Lines of many orders want the same stem and let the same stems stand in. Together they are one
demand, so that the programme doesn't try which of two equal orders gets which of two equal stems.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from math import gcd

from corymb.trade.cut.problem import CutProblem, Settings, Standing, StandInOption, Wanted, Weights

MONEY_PARTS = 1000
"""The programme counts in thousandths of money, so that its sums are whole."""


@dataclass(frozen=True)
class Route:
    """One way to meet wanted stems: `in_` of `stem` for a block of `out`, or `each` for one.

    The cost in drift is for each of the wanted.
    """

    stem: str
    out: int = 1
    in_: int = 1
    cost: int = 0

    @property
    def each(self) -> int:
        """Stems for one of the wanted: its share of a block, and up to a whole stem."""
        return -(-self.in_ // self.out)

    @property
    def in_blocks(self) -> bool:
        """Whether a block is less than so many single ones."""
        return self.in_ < self.each * self.out


@dataclass(frozen=True)
class Demand:
    """Wanted stems that are alike: the same stem, as essential, and met in the same ways."""

    members: tuple[Wanted, ...]
    routes: tuple[Route, ...]

    @property
    def stem(self) -> str:
        return self.members[0].stem

    @property
    def essential(self) -> bool:
        return self.members[0].essential

    @property
    def count(self) -> int:
        return sum(each.count for each in self.members)

    def room(self, member: Wanted) -> int:
        """How many of a member's stems blocks may do for: alike ones have blocks of one size."""
        size = self.block if len(self.members) > 1 else 1
        return member.count // size * size

    def most_single(self, route: Route) -> int:
        """No member needs as many singly as make a block."""
        if not route.in_blocks:
            return self.count
        return min(self.count, len(self.members) * (route.out - 1))

    @property
    def block(self) -> int:
        return max((route.out for route in self.routes if route.in_blocks), default=1)


def in_parts(money: Decimal) -> int:
    """Money in whole thousandths."""
    return round(money * MONEY_PARTS)


def drift_of(drift: float) -> Decimal:
    """The difference in colour to a tenth, finer than anyone sees."""
    return round(Decimal(drift), 1)


def demands(problem: CutProblem, settings: Settings) -> tuple[Demand, ...]:
    """All that is wanted, the alike together, in the order of the first of each."""
    stands = problem.stands()
    there = {stem for stem, each in stands.items() if _to_be_had(each, settings)}
    options: dict[str, list[StandInOption]] = defaultdict(list)
    for option in problem.options:
        if option.stem in there:
            options[option.wanted].append(option)
    alike: dict[object, list[Wanted]] = defaultdict(list)
    routes: dict[object, tuple[Route, ...]] = {}
    for wanted in problem.wanted:
        ways = _routes(wanted, options[wanted.key], there, settings.weights)
        key = (wanted.stem, wanted.essential, ways, _alone(wanted, ways))
        alike[key].append(wanted)
        routes[key] = ways
    return tuple(Demand(tuple(members), routes[key]) for key, members in alike.items())


def _to_be_had(standing: Standing, settings: Settings) -> bool:
    return standing.most_steps > 0 or (settings.buy_in and standing.bought is not None)


def _routes(
    wanted: Wanted, options: Sequence[StandInOption], there: set[str], weights: Weights
) -> tuple[Route, ...]:
    own = (Route(wanted.stem),) if wanted.stem in there else ()
    return (*own, *(_route(option, weights) for option in options))


def _route(option: StandInOption, weights: Weights) -> Route:
    common = gcd(option.out, option.in_)
    cost = in_parts(weights.drift * drift_of(option.drift))
    return Route(option.stem, option.out // common, option.in_ // common, cost)


def _alone(wanted: Wanted, routes: Sequence[Route]) -> str:
    """Its own key where blocks differ in size: they may not fit once it is added to others."""
    sizes = {route.out for route in routes if route.in_blocks}
    return wanted.key if len(sizes) > 1 else ""


def spare_wished(problem: CutProblem) -> dict[str, int]:
    """How much spare of each stem is wished for, where any is."""
    wished: Counter[str] = Counter()
    for wanted in problem.wanted:
        wished[wanted.stem] += wanted.spare
    return dict(sorted((+wished).items()))


def reach(all_demands: Sequence[Demand]) -> Mapping[str, int]:
    """The most of each stem that all demands together could take, but for spare."""
    most: dict[str, int] = defaultdict(int)
    for demand in all_demands:
        for route in demand.routes:
            most[route.stem] += route.each * demand.count
    return most
