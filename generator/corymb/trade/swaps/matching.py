"""Who stands in for whom, when several stems are missing and none may stand in twice?

Each line takes the best stand-in still free, in the order in which the lines are given (who asks
gives the largest first); where a line finds none free, those before it give way if they can
(augmenting paths, as in H. W. Kuhn, The Hungarian Method for the Assignment Problem, Naval
Research Logistics Quarterly 2, 1955). So every line has its stand-in whenever that is possible at
all.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from corymb.trade.swaps.standing_in import StandIn


def matched(choices: Mapping[int, Sequence[StandIn]]) -> dict[int, StandIn]:
    """A stand-in for each line that can have one.

    `choices` are by line, best first; the lines in the order in which they choose.
    """
    holders: dict[str, int] = {}
    taken: dict[int, StandIn] = {}
    for line in choices:
        _give(line, choices, holders, taken, set())
    return taken


def _give(
    line: int,
    choices: Mapping[int, Sequence[StandIn]],
    holders: dict[str, int],
    taken: dict[int, StandIn],
    asked: set[str],
) -> bool:
    """Find a stand-in for a line: a free one first, then one whose holder finds another."""
    for free in (True, False):
        for choice in choices[line]:
            stem = choice.in_
            if stem in asked or (stem not in holders) != free:
                continue
            asked.add(stem)
            if free or _give(holders[stem], choices, holders, taken, asked):
                holders[stem], taken[line] = line, choice
                return True
    return False
