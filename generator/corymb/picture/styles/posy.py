"""A posy: small, rounded and close, every head at the outline's even curve."""

from dataclasses import replace

from corymb.picture.arrangement import Arrangement
from corymb.picture.layout import Layout
from corymb.picture.styles.base import BOUND, dome_over, hold_of, lay_dome


def lay(arrangement: Arrangement) -> Layout:
    hold = hold_of(arrangement)
    below = -0.06 if arrangement.vessel.kind in BOUND else 0.12
    dome = dome_over(arrangement, hold, below, 0.46, leaf_out=1.38, line_out=1.34)
    return lay_dome(arrangement, replace(dome, loose=0.035, fan=108, focal_reach=0.6, crowded=1.6))
