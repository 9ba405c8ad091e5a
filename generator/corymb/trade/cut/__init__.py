"""What to cut for the orders of the days ahead, from what stands on the walk."""

from corymb.trade.cut.deciding import plan_cut
from corymb.trade.cut.gaps import Gap, ShortStandIn, gaps
from corymb.trade.cut.plan import Cut, CutPlan, Fill, Filled, Parts
from corymb.trade.cut.problem import (
    CutProblem,
    Settings,
    Standing,
    StandInOption,
    Wanted,
    Weights,
)

__all__ = [
    "Cut",
    "CutPlan",
    "CutProblem",
    "Fill",
    "Filled",
    "Gap",
    "Parts",
    "Settings",
    "ShortStandIn",
    "StandInOption",
    "Standing",
    "Wanted",
    "Weights",
    "gaps",
    "plan_cut",
]
