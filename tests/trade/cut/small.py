"""Small weeks, and the best plan for one found by trying every plan: no programme here."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from decimal import Decimal
from fractions import Fraction
from functools import cache
from itertools import product
from random import Random

from corymb.trade.cut import CutProblem, Standing, StandInOption, Wanted

Judged = tuple[int, int, int]
"""Short by weight, spare missed, and thousandths of money: what a plan is judged by, in order."""
Way = tuple[tuple[int, ...], bool]
"""The stems that one wanted stem uses, and whether it is met by nothing but itself."""

RATIOS = [(1, 1), (1, 1), (1, 2), (2, 1), (3, 2), (2, 3)]
ESSENTIAL, DRIFT, WASTE = 10, 20, 2  # the house weights; drift and waste in thousandths


def small_week(seed: int) -> CutProblem:
    """Two to four stems, one to three wanted, some of them alike."""
    random = Random(seed)
    stems = ["aster", "beech", "cosmos", "daucus"][: random.randint(2, 4)]
    likely = {stem: _likely(random, [s for s in stems if s != stem]) for stem in stems}
    wanted = [_wanted(random, number, stems) for number in range(random.randint(1, 3))]
    options = [
        StandInOption(each.key, stem, *ratio, drift=drift)
        for each in wanted
        for stem, ratio, drift in likely[each.stem]
    ]
    return CutProblem([_standing(random, stem) for stem in stems], wanted, options)


def _likely(random: Random, others: list[str]) -> list[tuple[str, tuple[int, int], float]]:
    some = random.sample(others, min(len(others), random.randint(0, 2)))
    return [(stem, random.choice(RATIOS), random.randint(0, 40) / 2) for stem in some]


def _wanted(random: Random, number: int, stems: list[str]) -> Wanted:
    stem = random.choice(stems[:2])
    count, spare = random.randint(0, 4), random.randint(0, 2)
    return Wanted(f"order/{number}", "order", stem, count, spare, random.random() < 0.3)


def _standing(random: Random, stem: str) -> Standing:
    return Standing(
        stem,
        random.randint(0, 9),
        random.randint(1, 4),
        Decimal(random.choice(["0", "0.25", "0.5"])),
        Decimal("0.20"),
        Decimal(random.randint(0, 150)) / 100 if random.random() < 0.4 else None,
        may_break_step=random.random() < 0.2,
    )


def best(problem: CutProblem) -> Judged:
    """What the best of all plans comes to."""
    stems = [each.stem for each in problem.standing]
    supply = {each.stem: each for each in problem.standing}
    ways = [_ways(problem, wanted, stems) for wanted in problem.wanted]
    wished = Counter[str]()
    for wanted in problem.wanted:
        wished[wanted.stem] += wanted.spare
    found: list[Judged] = []
    priced = cache(lambda stem, used, swapped: _supplied(supply[stem], used, wished[stem], swapped))
    for chosen in product(*(each.items() for each in ways)):
        used = [sum(uses) for uses in zip(*(uses for (uses, _), _ in chosen), strict=True)]
        swapped = {
            wanted.stem
            for wanted, ((_, itself), _) in zip(problem.wanted, chosen, strict=True)
            if not itself
        }
        supplied = [priced(stem, n, stem in swapped) for stem, n in zip(stems, used, strict=True)]
        had = [each for each in supplied if each is not None]
        if len(had) == len(stems):
            short, drift = (sum(part) for part in zip(*(j for _, j in chosen), strict=True))
            missed, cost = (sum(part) for part in zip(*had, strict=True))
            found.append((short, missed, drift + cost))
    return min(found)


def _supplied(standing: Standing, used: int, wished: int, swapped: bool) -> tuple[int, int] | None:
    """The least spare missed and the least cost, over every number of steps and every spare.

    There is no spare where a wanted one is bought, swapped or short. None: not to be had.
    """
    by = 1 if standing.may_break_step else standing.step
    most = Fraction(standing.standing) * (1 - Fraction(standing.keep))
    plans = []
    for cut in range(0, int(most) + 1, by):
        for spare in range(wished + 1):
            if used + spare <= cut and not (spare and swapped):
                plans.append((wished - spare, WASTE * (cut - used - spare)))
        if used > cut and standing.bought is not None:
            plans.append((wished, int(1000 * standing.bought) * (used - cut)))
    return min(plans, default=None)


def _ways(problem: CutProblem, wanted: Wanted, stems: list[str]) -> Mapping[Way, tuple[int, int]]:
    """Every way to meet one that is wanted, and the shortage and the cost it comes to at best."""
    routes = [(wanted.stem, 1, 1, 0.0)] + [
        (each.stem, each.out, each.in_, each.drift)
        for each in problem.options
        if each.wanted == wanted.key
    ]
    weight = ESSENTIAL if wanted.essential else 1
    ways: dict[Way, tuple[int, int]] = {}
    for met in _splits(wanted.count, len(routes)):
        uses, cost = dict.fromkeys(stems, 0), 0
        for (stem, out, in_, drift), count in zip(routes, met, strict=True):
            blocks, single = divmod(count, out)
            one = -(-in_ // out)
            uses[stem] += blocks * in_ + single * one
            cost += int(DRIFT * drift * count) + (WASTE * single if in_ % out else 0)
        judged = (weight * (wanted.count - sum(met)), cost)
        key = (tuple(uses.values()), met[0] == wanted.count)
        ways[key] = min(judged, ways.get(key, judged))
    return ways


def _splits(most: int, parts: int) -> Iterator[tuple[int, ...]]:
    """Every way to take up to `most` in so many parts."""
    if parts == 0:
        yield ()
        return
    for first in range(most + 1):
        for rest in _splits(most - first, parts - 1):
            yield (first, *rest)
