"""Where did every stem go, and what does the plan come to?"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from decimal import Decimal

from corymb.trade.cut.demand import MONEY_PARTS, drift_of
from corymb.trade.cut.plan import Cut, Fill, Filled, Parts
from corymb.trade.cut.problem import Standing, Weights
from corymb.trade.cut.programme import Answer


def needed(filled: Iterable[Filled]) -> Counter[str]:
    """How many of each stem go into orders, spare and all."""
    every = tuple(filled)
    return _counted(each.fills for each in every) + _counted(each.spare for each in every)


def _counted(fills: Iterable[Sequence[Fill]]) -> Counter[str]:
    counts: Counter[str] = Counter()
    for some in fills:
        for fill in some:
            counts[fill.stem] += fill.count
    return counts


def accounts(
    stands: Mapping[str, Standing], cut: Mapping[str, int], filled: Sequence[Filled]
) -> tuple[Cut, ...]:
    """One account a stem, by name."""
    used = _counted(each.fills for each in filled)
    spare = _counted(each.spare for each in filled)
    return tuple(
        _account(each, cut[stem], used[stem], spare[stem]) for stem, each in stands.items()
    )


def _account(standing: Standing, cut: int, used: int, spare: int) -> Cut:
    return Cut(
        stem=standing.stem,
        cut=cut,
        step=standing.by,
        bought=max(0, used + spare - cut),
        used=used,
        spare=spare,
        left=max(0, cut - used - spare),
        left_standing=standing.standing - cut,
    )


def parts(
    stands: Mapping[str, Standing],
    cuts: Sequence[Cut],
    filled: Sequence[Filled],
    weights: Weights,
    weighed: Answer,
) -> Parts:
    """What the plan is judged by."""
    fills = [fill for each in filled for fill in each.fills]
    bought = [(each.bought, stands[each.stem].bought or Decimal(0)) for each in cuts]
    return Parts(
        short=sum(each.short for each in filled),
        short_weighed=sum(each.short * _weight(each, weights) for each in filled),
        spare_missed=sum(each.spare_missed for each in filled),
        bought_cost=sum((count * price for count, price in bought), Decimal(0)),
        drift=sum((fill.of * drift_of(fill.drift) for fill in fills), Decimal(0)),
        waste=sum(each.left for each in cuts),
        weighed=Decimal(int(weighed.objective)) / MONEY_PARTS,
        grown_cost=sum((each.cut * stands[each.stem].grown for each in cuts), Decimal(0)),
    )


def _weight(filled: Filled, weights: Weights) -> int:
    return weights.essential if filled.essential else 1
