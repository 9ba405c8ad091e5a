"""The cut as an integer programme.

For each demand: the wanted stems met by each route, in blocks and singly, and the short, which
add up to those wanted. For each stem: steps cut and stems bought, which are those used, those
kept as spare and those left over.

Spare is only what the garden gives beyond all that is wanted of its stem: where one of those
wanted is bought, swapped or short there is none of it. So nothing is bought or swapped for spare,
neither the spare itself nor a wanted stem in its place.

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

from corymb.trade.cut.demand import Demand, Route, demands, in_parts, reach, spare_wished
from corymb.trade.cut.problem import CutProblem, Settings
from corymb.trade.cut.programme import Answer, Programme

Sum = dict[int, int]


@dataclass(frozen=True)
class _Met:
    """The variables of one route: wanted stems met singly, and blocks of them (None: none)."""

    route: Route
    single: int
    blocks: int | None


@dataclass(frozen=True)
class _Demanded:
    demand: Demand
    met: tuple[_Met, ...]
    short: int

    @property
    def not_itself(self) -> Sum:
        """The sum of those that are swapped or short."""
        others = [each for each in self.met if each.route.stem != self.demand.stem]
        blocks = {each.blocks: each.route.out for each in others if each.blocks is not None}
        return dict.fromkeys([*(each.single for each in others), self.short], 1) | blocks


@dataclass(frozen=True)
class Met:
    """How many blocks, and how many wanted stems singly, a route does for."""

    route: Route
    blocks: int
    single: int


@dataclass(frozen=True)
class Decision:
    """The programme's answer: steps cut of each stem, its spare, and what each route does for."""

    met: tuple[tuple[Demand, tuple[Met, ...]], ...]
    steps: dict[str, int]
    spare: dict[str, int]


class CutModel:
    """Builds the programme, solves its sums, and reads the answer."""

    def __init__(self, problem: CutProblem, settings: Settings) -> None:
        self.programme = Programme()
        self.settings = settings
        self.stands = problem.stands()
        self._steps: dict[str, int] = {}
        self._bought: dict[str, int] = {}
        self._left: dict[str, int] = {}
        self._used: dict[str, Sum] = defaultdict(dict)
        self._demanded = [self._demand(each) for each in demands(problem, settings)]
        self._spare = spare_wished(problem)
        self._spare_missed = {stem: self.programme.whole(n) for stem, n in self._spare.items()}
        most = reach([each.demand for each in self._demanded])
        for stem in sorted({*most, *self._spare}):
            self._supply(stem, most.get(stem, 0))
        for stem in self._spare:
            self._only_beyond_the_wanted(stem, most.get(stem, 0))

    def _demand(self, demand: Demand) -> _Demanded:
        met = tuple(self._route(route, demand) for route in demand.routes)
        short = self.programme.whole(demand.count)
        blocks = {each.blocks: each.route.out for each in met if each.blocks is not None}
        everything = dict.fromkeys([*(each.single for each in met), short], 1) | blocks
        self.programme.row(everything, least=demand.count, most=demand.count)
        if blocks:
            room = sum(demand.room(member) for member in demand.members)
            self.programme.row(blocks, most=room)
        return _Demanded(demand, met, short)

    def _route(self, route: Route, demand: Demand) -> _Met:
        single = self.programme.whole(demand.most_single(route))
        self._used[route.stem][single] = route.each
        if not route.in_blocks:
            return _Met(route, single, None)
        blocks = self.programme.whole(demand.count // route.out)
        self._used[route.stem][blocks] = route.in_
        return _Met(route, single, blocks)

    def _supply(self, stem: str, most: int) -> None:
        standing, spare = self.stands[stem], self._spare.get(stem, 0)
        steps = min(standing.most_steps, -(-(most + spare) // standing.by))
        self._steps[stem] = self.programme.whole(steps)
        self._left[stem] = self.programme.whole(standing.by - 1)
        account = {self._steps[stem]: standing.by, self._left[stem]: -1}
        if self.settings.buy_in and standing.bought is not None:
            self._bought[stem] = self.programme.whole(most)
            account[self._bought[stem]] = 1
        used = {variable: -times for variable, times in self._used[stem].items()}
        missed = {self._spare_missed[stem]: 1} if spare else {}
        self.programme.row(account | used | missed, least=spare, most=spare)

    def _only_beyond_the_wanted(self, stem: str, most: int) -> None:
        """A stem has spare, or some that is bought, swapped or short; never both."""
        spare, has_spare = self._spare[stem], self.programme.whole(1)
        self.programme.row({self._spare_missed[stem]: 1, has_spare: spare}, least=spare)
        of_stem = [each for each in self._demanded if each.demand.stem == stem]
        not_itself = {i: n for each in of_stem for i, n in each.not_itself.items()}
        wanted = sum(each.demand.count for each in of_stem)
        self.programme.row(not_itself | {has_spare: wanted}, most=wanted)
        if stem in self._bought:
            self.programme.row({self._bought[stem]: 1, has_spare: most}, most=most)

    def solve(self) -> list[Answer]:
        """The answers to the three sums, the last of which is the decision."""
        sums = [self._short(), dict.fromkeys(self._spare_missed.values(), 1), self._weighed()]
        answers: list[Answer] = []
        for terms in sums:
            answers.append(self._least(terms, len(sums), answers))
            self.programme.row(terms, most=int(answers[-1].objective))
        return answers

    def _least(self, terms: Sum, sums: int, before: Sequence[Answer]) -> Answer:
        """The next sum made least, in its part of the time left; only the last may be close."""
        to_come = sums - len(before)
        left = self.settings.seconds - sum(answer.seconds for answer in before)
        return self.programme.minimise(
            terms,
            seconds=max(0.0, left) / to_come,
            seed=self.settings.seed,
            close=float(self.settings.close) if to_come == 1 else 0.0,
            start=before[-1].values if before else self._nothing(),
        )

    def _nothing(self) -> list[int]:
        """The plan that is always there: nothing is cut, everything is short."""
        values = [0] * self.programme.variables
        for each in self._demanded:
            values[each.short] = each.demand.count
        for stem, missed in self._spare_missed.items():
            values[missed] = self._spare[stem]
        return values

    def _short(self) -> Sum:
        weight = self.settings.weights.essential
        return {each.short: weight if each.demand.essential else 1 for each in self._demanded}

    def _weighed(self) -> Sum:
        weights = self.settings.weights
        costs = {left: in_parts(weights.waste) for left in self._left.values()}
        for stem, bought in self._bought.items():
            costs[bought] = in_parts(weights.money * (self.stands[stem].bought or 0))
        for met in (met for each in self._demanded for met in each.met):
            costs[met.single] = met.route.cost
            if met.blocks is not None:
                costs[met.single] += in_parts(weights.waste)
                costs[met.blocks] = met.route.cost * met.route.out
        return costs

    def decision(self, answer: Answer) -> Decision:
        """What the values mean."""
        values = answer.values

        def told(met: _Met) -> Met:
            blocks = 0 if met.blocks is None else values[met.blocks]
            return Met(met.route, blocks, values[met.single])

        met = tuple((each.demand, tuple(told(met) for met in each.met)) for each in self._demanded)
        steps = {stem: values[variable] for stem, variable in self._steps.items()}
        missed = {stem: values[variable] for stem, variable in self._spare_missed.items()}
        spare = {stem: wished - missed[stem] for stem, wished in self._spare.items()}
        return Decision(met, steps, spare)
