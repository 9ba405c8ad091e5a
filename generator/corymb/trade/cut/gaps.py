"""What does the garden not give, and what would mend it?

One gap a stem of which some are short, or bought in. Plain values; the sentences are made
elsewhere.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from math import ceil

from corymb.trade.cut.plan import Cut, CutPlan, Filled
from corymb.trade.cut.problem import CutProblem, Standing, StandInOption

BEST = 3
"""So many stand-ins are named."""


@dataclass(frozen=True)
class ShortStandIn:
    """A stem that would do, of which too few stand as well: so many more of it would mend all."""

    stem: str
    count: int
    drift: float
    why: tuple[str, ...]


@dataclass(frozen=True)
class Gap:
    """A stem the cut can't give enough of, and each single thing that would help."""

    stem: str
    keys: tuple[str, ...]
    """What is short of it."""
    missing: int
    """How many are short."""
    bought: int
    """How many the plan buys in."""
    more_standing: int | None
    """So many more on the walk, and the cut would give them all. None where all is kept."""
    by_breaking_step: int
    """So many of them may be cut, if not for the step."""
    by_leaving_less: int
    """So many of the others stand, in the share that is left for seed and bees."""
    price: Decimal | None
    """What a stem costs to buy in; None where it can't be bought."""
    stand_ins: tuple[ShortStandIn, ...]
    """The nearest in colour first."""

    @property
    def wanted(self) -> int:
        """How many the garden doesn't give."""
        return self.missing + self.bought

    @property
    def cost(self) -> Decimal | None:
        """What it costs to buy all of them in."""
        return None if self.price is None else self.price * self.wanted


def gaps(problem: CutProblem, plan: CutPlan) -> tuple[Gap, ...]:
    """The gaps by name of the stem."""
    stands = problem.stands()
    short: dict[str, list[Filled]] = defaultdict(list)
    for each in plan.filled:
        if each.short:
            short[each.stem].append(each)
    return tuple(
        _gap(problem, stands[cut.stem], cut, short[cut.stem])
        for cut in plan.cuts
        if cut.bought or short[cut.stem]
    )


def _gap(problem: CutProblem, standing: Standing, cut: Cut, short: list[Filled]) -> Gap:
    missing = sum(each.short for each in short)
    wanted = missing + cut.bought
    broken = min(wanted, standing.may_cut - cut.cut)
    return Gap(
        stem=cut.stem,
        keys=tuple(each.key for each in short),
        missing=missing,
        bought=cut.bought,
        more_standing=_more_standing(standing, cut.cut + wanted),
        by_breaking_step=broken,
        by_leaving_less=min(wanted - broken, standing.standing - standing.may_cut),
        price=standing.bought,
        stand_ins=_stand_ins(problem, short),
    )


def _more_standing(standing: Standing, wanted: int) -> int | None:
    """How many more must stand so that whole steps come to those wanted."""
    share = 1 - Fraction(standing.keep)
    if share == 0:
        return None
    steps = -(-wanted // standing.by)
    return max(0, ceil(steps * standing.by / share) - standing.standing)


def _stand_ins(problem: CutProblem, short: Iterable[Filled]) -> tuple[ShortStandIn, ...]:
    """What would have done for every stem that is short, had more of it stood."""
    missing = {each.key: each.short for each in short}
    by_stem: dict[str, list[StandInOption]] = defaultdict(list)
    for option in problem.options:
        if option.wanted in missing:
            by_stem[option.stem].append(option)
    found = [
        _stand_in(options, missing) for options in by_stem.values() if len(options) == len(missing)
    ]
    return tuple(sorted(found, key=lambda each: (each.drift, each.stem))[:BEST])


def _stand_in(options: list[StandInOption], missing: dict[str, int]) -> ShortStandIn:
    stems = sum(option.stems_for(missing[option.wanted]) for option in options)
    farthest = max(options, key=lambda option: option.drift)
    return ShortStandIn(farthest.stem, stems, farthest.drift, farthest.why)
