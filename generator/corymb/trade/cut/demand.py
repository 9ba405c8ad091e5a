"""What may meet each wanted stem, and which wanted stems are alike?

Lines of many orders want the same stem and let the same stems stand in. Together they are one
demand, so that the programme doesn't try which of two equal orders gets which of two equal stems.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from math import gcd

from corymb.trade.cut.problem import CutProblem, Settings, Standing, StandInOption, Wanted, Weights

MONEY_PARTS = 1000
"""The programme counts in thousandths of money, so that its sums are whole."""


@dataclass(frozen=True)
class Route:
    """One way to meet a wanted stem: `in_` of `stem` for `out`, at a cost in drift."""

    stem: str
    out: int = 1
    in_: int = 1
    cost: int = 0

    def stems_for(self, count: int) -> int:
        """Whole stems that do for `count` of the wanted; a part of a stem is a stem."""
        return -(-count * self.in_ // self.out)


@dataclass(frozen=True)
class Demand:
    """Wanted stems that are alike: the same stem, as essential, and met in the same ways."""

    members: tuple[Wanted, ...]
    routes: tuple[Route, ...]

    @property
    def essential(self) -> bool:
        return self.members[0].essential

    @property
    def count(self) -> int:
        return sum(each.count for each in self.members)

    @property
    def spare(self) -> int:
        return sum(each.spare for each in self.members)


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
    """Its own key where parts of a stem would be lost if it were added up with others."""
    return wanted.key if any(route.out > 1 for route in routes) else ""


def reach(all_demands: Sequence[Demand]) -> Mapping[str, int]:
    """The most of each stem that all demands together could take."""
    most: dict[str, int] = defaultdict(int)
    for demand in all_demands:
        for route in demand.routes:
            most[route.stem] += route.stems_for(demand.count + demand.spare)
    return most
