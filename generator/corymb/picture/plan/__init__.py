"""Where does each stem go, seen from above? A numbered plan to make an arrangement by."""

from corymb.picture.plan.heads import Placed, Plan, plan_of
from corymb.picture.plan.numbering import KeyLine, key_of
from corymb.picture.plan.sheet import draw_plan

__all__ = ["KeyLine", "Placed", "Plan", "draw_plan", "key_of", "plan_of"]
