"""What to cut for all orders together: the best plan there is, and whether that is proven.

The same stems, wishes and settings always give the same plan, in whatever order they are listed,
unless the time runs out.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from corymb.trade.cut.accounts import accounts, needed, parts
from corymb.trade.cut.model import CutModel
from corymb.trade.cut.plan import CutPlan
from corymb.trade.cut.problem import CutProblem, Settings
from corymb.trade.cut.programme import Answer
from corymb.trade.cut.sharing import bought_in, shared

HOUSE = Settings()


def plan_cut(problem: CutProblem, settings: Settings = HOUSE) -> CutPlan:
    """What to cut and buy, and for whom. A shortage is part of the plan, never an error."""
    model = CutModel(problem, settings)
    answers = model.solve()
    decision = model.decision(answers[-1])
    given = shared(problem, decision)
    cut = _cut(model, decision.steps, needed(given))
    filled = bought_in(given, cut)
    cuts = accounts(model.stands, cut, filled)
    return CutPlan(
        cuts=cuts,
        filled=filled,
        parts=parts(model.stands, cuts, filled, settings.weights, answers[-1]),
        proven=_proven(answers, settings),
        gap=max(answer.gap for answer in answers),
        seconds=sum(answer.seconds for answer in answers),
    )


def _proven(answers: Sequence[Answer], settings: Settings) -> bool:
    *counts, weighed = answers
    return all(answer.proven for answer in counts) and weighed.gap <= settings.close


def _cut(model: CutModel, steps: dict[str, int], need: Counter[str]) -> Counter[str]:
    """Stems cut. No step is cut that nothing needs, even if the time ran out before that showed."""
    cut: Counter[str] = Counter()
    for stem, count in steps.items():
        by = model.stands[stem].by
        cut[stem] = by * min(count, -(-need[stem] // by))
    return cut
