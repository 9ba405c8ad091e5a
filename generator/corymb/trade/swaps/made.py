"""What are a look's lines once its swaps are made?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from corymb.studio.models import Variant
from corymb.trade.looks import Look
from corymb.trade.swaps.standing_in import StandIn
from corymb.trade.written_for import Stage


def with_swaps(look: Look, swaps: Sequence[StandIn]) -> Look:
    """The look with each line that goes out changed for what stands in for it.

    What comes in plays the part of what went out: its use in the look, its role, its place. A
    note stays behind, since it was written for another stem.
    """
    if not swaps:
        return look
    left, lines = list(swaps), []
    for line in look.lines:
        swap = next((s for s in left if (s.out, s.role) == (line.stem, line.role)), None)
        if swap is not None:
            left.remove(swap)
            line = replace(line, stem=swap.in_, count=swap.in_count, note="")
        lines.append(line)
    return Look(look.recipe, look.variant, tuple(lines), look.lines, unswapped=look.lines)


def swapped_stage(look: Look, swaps: Sequence[StandIn]) -> Stage:
    """The look with its swaps made, as if a variant on it had made them."""
    made = Variant.model_validate({
        "name": "With swaps",
        "about": "With what stands.",
        "swap": [f"{swap.out_count} {swap.out} -> {swap.in_count} {swap.in_}" for swap in swaps],
    })  # fmt: skip
    return Stage(made, with_swaps(look, swaps).lines)
