"""The cut as an integer programme.

For each demand: the wanted stems met by each route, the short, and the spare that is missed,
which add up to those wanted. For each stem: steps cut and stems bought, of which no more is used
than there is. Where stand-ins do for several at once (5 for 3), the stems used are the whole
number next above, held between two rows, so that no stem is hidden in a rounding.

Three sums are made least one after the other, each held for those after it:

1. what is short, an essential stem weighing more;
2. the spare that is missed;
3. bought-in cost, drift and waste by the studio's weights.

One after the other, because weights that are sure to keep that order would be so large that the
solver's tolerance (a millionth) could hide a stem. What comes first is exact this way: a whole
number of stems.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from corymb.trade.cut.demand import Demand, Route, demands, in_parts, reach
from corymb.trade.cut.problem import CutProblem, Settings
from corymb.trade.cut.programme import Answer, Programme

Sum = dict[int, int]


@dataclass(frozen=True)
class _Met:
    """The variables of one route: the wanted stems it meets, and the stems that takes."""

    route: Route
    wanted: int
    stems: int
    times: int
    """Stems used are `times` the variable `stems`."""


@dataclass(frozen=True)
class _Demanded:
    demand: Demand
    met: tuple[_Met, ...]
    short: int
    spare_missed: int


@dataclass(frozen=True)
class Decision:
    """The programme's answer: steps cut of each stem, and wanted stems met by each route."""

    demands: tuple[tuple[Demand, tuple[int, ...]], ...]
    steps: dict[str, int]


class CutModel:
    """Builds the programme, solves its sums, and reads the answer."""

    def __init__(self, problem: CutProblem, settings: Settings) -> None:
        self.programme = Programme()
        self.settings = settings
        self.stands = problem.stands()
        self._steps: dict[str, int] = {}
        self._bought: dict[str, int] = {}
        self._waste: dict[str, Sum] = defaultdict(dict)
        self._demanded = [self._demand(each) for each in demands(problem, settings)]
        for stem, most in sorted(reach([each.demand for each in self._demanded]).items()):
            self._supply(stem, most)

    def _demand(self, demand: Demand) -> _Demanded:
        met = tuple(self._route(route, demand.count + demand.spare) for route in demand.routes)
        short = self.programme.whole(demand.count)
        missed = self.programme.whole(demand.spare)
        all_wanted = demand.count + demand.spare
        parts = dict.fromkeys([*(each.wanted for each in met), short, missed], 1)
        self.programme.row(parts, least=all_wanted, most=all_wanted)
        return _Demanded(demand, met, short, missed)

    def _route(self, route: Route, most: int) -> _Met:
        wanted = self.programme.whole(most)
        if route.out == 1:
            met = _Met(route, wanted, wanted, route.in_)
        else:
            stems = self.programme.whole(route.stems_for(most))
            rounding = {stems: route.out, wanted: -route.in_}
            self.programme.row(rounding, least=0, most=route.out - 1)
            met = _Met(route, wanted, stems, 1)
        self._waste[route.stem][met.stems] = -met.times
        return met

    def _supply(self, stem: str, most: int) -> None:
        standing = self.stands[stem]
        steps = min(standing.most_steps, -(-most // standing.by))
        self._steps[stem] = self.programme.whole(steps)
        self._waste[stem][self._steps[stem]] = standing.by
        if self.settings.buy_in and standing.bought is not None:
            self._bought[stem] = self.programme.whole(most)
            self._waste[stem][self._bought[stem]] = 1
        self.programme.row(self._waste[stem], least=0)

    def solve(self) -> list[Answer]:
        """The answers to the three sums, the last of which is the decision."""
        answers: list[Answer] = []
        values: Sequence[int] = self._nothing()
        for terms in (self._short(), self._spare_missed(), self._weighed()):
            spent = sum(answer.seconds for answer in answers)
            left = max(0.0, self.settings.seconds - spent)
            seed = self.settings.seed
            answer = self.programme.minimise(terms, seconds=left, seed=seed, start=values)
            self.programme.row(terms, most=int(answer.objective))
            answers.append(answer)
            values = answer.values
        return answers

    def _nothing(self) -> list[int]:
        """The plan that is always there: nothing is cut, everything is short."""
        values = [0] * self.programme.variables
        for each in self._demanded:
            values[each.short] = each.demand.count
            values[each.spare_missed] = each.demand.spare
        return values

    def _short(self) -> Sum:
        weight = self.settings.weights.essential
        return {each.short: weight if each.demand.essential else 1 for each in self._demanded}

    def _spare_missed(self) -> Sum:
        return {each.spare_missed: 1 for each in self._demanded}

    def _weighed(self) -> Sum:
        weights = self.settings.weights
        costs: Sum = defaultdict(int)
        for each in self._demanded:
            for met in each.met:
                costs[met.wanted] += met.route.cost
        for stem, bought in self._bought.items():
            costs[bought] += in_parts(weights.money * (self.stands[stem].bought or 0))
        for terms in self._waste.values():
            for variable, times in terms.items():
                costs[variable] += in_parts(weights.waste) * times
        return costs

    def decision(self, answer: Answer) -> Decision:
        """What the values mean."""
        values = answer.values
        met = tuple(
            (each.demand, tuple(values[met.wanted] for met in each.met)) for each in self._demanded
        )
        return Decision(met, {stem: values[steps] for stem, steps in self._steps.items()})
