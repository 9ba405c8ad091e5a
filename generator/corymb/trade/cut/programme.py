"""Which whole numbers meet every condition at the least cost, and is that proven?

An integer programme: whole variables between bounds, rows that add up to something between
bounds, one sum to make least. It is solved by HiGHS (Huangfu and Hall, Mathematical
Programming Computation 10, 2018), by branch and bound, on one thread with a fixed seed.

Every number put in is whole, or a fraction that is brought to whole numbers before it is solved.
So two answers differ by 1 or more, and a bound less than 1 away is a proof.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from math import ceil, gcd, isfinite, lcm

import highspy

CLOSE = 0.5
"""Sums are whole, so an answer less than 1 above its bound is best. HiGHS stops at this."""

ROUNDING = 0.1
"""What HiGHS' bound may be off by: its own tolerance is 1e-7 a variable."""

IMPOSSIBLE = {
    highspy.HighsModelStatus.kInfeasible,
    highspy.HighsModelStatus.kUnboundedOrInfeasible,  # every variable has bounds
}
FOUND = highspy.SolutionStatus.kSolutionStatusFeasible

Terms = Mapping[int, int | Fraction]
"""A sum: how often each variable (by its number) is counted."""


Options = Mapping[str, bool | int | float]
"""HiGHS' own options, by its names."""


class UnsolvableError(Exception):
    """No whole numbers meet every condition, or none were found in the time given."""


@dataclass(frozen=True)
class Answer:
    """Values of the variables by number; what they come to, and what nothing can better."""

    values: tuple[int, ...]
    objective: Fraction
    bound: Fraction
    seconds: float = field(default=0.0, compare=False)

    @property
    def proven(self) -> bool:
        """That no other answer is better."""
        return self.objective == self.bound

    @property
    def gap(self) -> float:
        """How much better another answer might be at most, as a share of the larger of the two."""
        if self.proven:
            return 0.0
        largest = max(abs(self.objective), abs(self.bound))
        return float(abs(self.objective - self.bound) / largest)


class _Silent(highspy.Highs):
    """HiGHS without the line on itself, which it prints where its callbacks are made ready."""

    def __init__(self) -> None:
        super(highspy.Highs, self).__init__()  # past the one that makes callbacks ready


@dataclass(frozen=True)
class _Row:
    terms: Mapping[int, int]
    least: int | None
    most: int | None


class Programme:
    """Variables and rows, which may be solved for one sum after another."""

    def __init__(self) -> None:
        self._bounds: list[tuple[int, int]] = []
        self._rows: list[_Row] = []

    def whole(self, most: int, least: int = 0) -> int:
        """A new variable, any whole number from `least` to `most`; returns its number."""
        self._bounds.append((least, most))
        return len(self._bounds) - 1

    @property
    def variables(self) -> int:
        """How many variables there are."""
        return len(self._bounds)

    def row(
        self, terms: Mapping[int, int], least: int | None = None, most: int | None = None
    ) -> None:
        """Keeps a sum between `least` and `most`; None is no limit."""
        self._rows.append(_Row(terms, least, most))

    def minimise(
        self,
        terms: Terms,
        *,
        seconds: float = 60.0,
        seed: int = 0,
        close: float = 0.0,
        start: Sequence[int] | None = None,
    ) -> Answer:
        """The values that make the sum least. `start` is an answer known already, to fall back on.

        HiGHS isn't begun from it: HiGHS 1.16 takes such a start for optimal where its presolve
        has fixed every cost away, and gives the start back.

        The search may stop at a gap of `close`.

        Raises UnsolvableError when nothing meets every row, or no answer was found in time.
        """
        if not self._bounds:
            return Answer((), Fraction(0), Fraction(0))
        costs, unit = _whole_costs(terms)
        solver = self._solver(costs, _options(seconds, seed, close))
        solver.run()
        known = [self._values(solver, start), *([tuple(start)] if start is not None else [])]
        values = min(known, key=lambda each: _sum(costs, each))
        total = _sum(costs, values)
        bound = min(total, self._bound(solver, costs))
        return Answer(values, total * unit, bound * unit, solver.getRunTime())

    def _solver(self, costs: Mapping[int, int], options: Options) -> highspy.Highs:
        solver = _Silent()
        for option, value in options.items():
            solver.setOptionValue(option, value)
        solver.passModel(self._model(costs))
        return solver

    def _model(self, costs: Mapping[int, int]) -> highspy.HighsLp:
        model = highspy.HighsLp()
        model.num_col_ = len(self._bounds)
        model.num_row_ = len(self._rows)
        model.col_cost_ = [float(costs.get(i, 0)) for i in range(len(self._bounds))]
        model.col_lower_ = [float(least) for least, _ in self._bounds]
        model.col_upper_ = [float(most) for _, most in self._bounds]
        model.integrality_ = [highspy.HighsVarType.kInteger] * len(self._bounds)
        endless = highspy.kHighsInf
        model.row_lower_ = [-endless if r.least is None else float(r.least) for r in self._rows]
        model.row_upper_ = [endless if r.most is None else float(r.most) for r in self._rows]
        self._fill(model.a_matrix_)
        return model

    def _fill(self, matrix: highspy.HighsSparseMatrix) -> None:
        starts, columns, values = [0], [], []
        for row in self._rows:
            columns += list(row.terms)
            values += [float(times) for times in row.terms.values()]
            starts.append(len(columns))
        matrix.format_ = highspy.MatrixFormat.kRowwise
        matrix.start_, matrix.index_, matrix.value_ = starts, columns, values

    def _values(self, solver: highspy.Highs, start: Sequence[int] | None) -> tuple[int, ...]:
        if solver.getModelStatus() in IMPOSSIBLE:
            raise UnsolvableError("no whole numbers meet every condition")
        if solver.getInfo().primal_solution_status == FOUND:
            return tuple(round(value) for value in solver.getSolution().col_value)
        if start is not None:
            return tuple(start)
        raise UnsolvableError("no answer was found in the time given")

    def _bound(self, solver: highspy.Highs, costs: Mapping[int, int]) -> int:
        """The least whole sum that HiGHS' bound and the variables' own bounds leave open."""
        plain = sum(min(cost * end for end in self._bounds[i]) for i, cost in costs.items())
        found = solver.getInfo().mip_dual_bound
        if not isfinite(found):
            return plain
        return max(plain, ceil(found - ROUNDING))


def _sum(costs: Mapping[int, int], values: Sequence[int]) -> int:
    return sum(cost * values[i] for i, cost in costs.items())


def _options(seconds: float, seed: int, close: float) -> Options:
    return {
        "output_flag": False,
        "threads": 1,
        "random_seed": seed,
        "time_limit": seconds,
        "mip_rel_gap": close,
        "mip_abs_gap": CLOSE,
    }


def _whole_costs(terms: Terms) -> tuple[dict[int, int], Fraction]:
    """The terms in whole units without a common divisor, and what one unit is worth."""
    costs = {i: Fraction(times) for i, times in terms.items() if times}
    finest = lcm(*(cost.denominator for cost in costs.values()))
    whole = {i: int(cost * finest) for i, cost in costs.items()}
    common = gcd(*whole.values()) or 1
    return {i: cost // common for i, cost in whole.items()}, Fraction(common, finest)
