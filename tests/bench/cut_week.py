"""How long does a busy week take to decide? Run as `python -m tests.bench.cut_week`."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from time import perf_counter

from corymb.trade.cut import CutProblem, plan_cut
from tests.trade.cut.weeks import busy_week


def weeks() -> Iterator[tuple[str, CutProblem]]:
    """Busy weeks, the walk short by a third, by a half, and not at all."""
    for seed in range(6):
        yield f"short by a third, {seed}", busy_week(seed)
    yield "short by a half", busy_week(1, covered="0.5")
    yield "nothing can be bought", busy_week(2, buyable=0)
    yield "plenty", busy_week(3, covered="1.5")
    yield "twice as busy", busy_week(4, lines=120, stems=250)


def main() -> None:
    """Prints one line a week."""
    for name, problem in weeks():
        start = perf_counter()
        plan = plan_cut(problem)
        took = perf_counter() - start
        judged = plan.parts
        sys.stdout.write(
            f"{name:22} {len(problem.wanted):4} wanted {took:6.2f} s (solver {plan.seconds:.2f})  "
            f"{'proven' if plan.proven else f'gap {plan.gap:.2%}'}  short {judged.short}, "
            f"spare missed {judged.spare_missed}, weighed {judged.weighed}, waste {judged.waste}\n"
        )


if __name__ == "__main__":
    main()
