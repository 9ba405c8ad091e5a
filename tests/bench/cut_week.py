"""How long does a busy week take to decide? Run as `python -m tests.bench.cut_week`."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from time import perf_counter, process_time

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
        start, worked = perf_counter(), process_time()
        plan = plan_cut(problem)
        took, worked = perf_counter() - start, process_time() - worked
        judged = plan.parts
        sure = "proven" if plan.proven else "not proven"
        sys.stdout.write(
            f"{name:22} {len(problem.wanted):4} wanted {took:6.2f} s, {worked:5.2f} s of a core  "
            f"{sure}, gap {plan.gap:.3%}  short {judged.short}, "
            f"spare missed {judged.spare_missed}, weighed {judged.weighed}, waste {judged.waste}\n"
        )


if __name__ == "__main__":
    main()
