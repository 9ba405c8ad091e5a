"""A bridal hand-tie: loose, a little wild at the edges, its stems spiralled and seen."""

from dataclasses import replace

from corymb.picture.arrangement import Arrangement
from corymb.picture.layout import Layout
from corymb.picture.styles.base import BOUND, dome_over, hold_of, lay_dome


def lay(arrangement: Arrangement) -> Layout:
    hold = hold_of(arrangement)
    below = -0.13 if arrangement.vessel.kind in BOUND else 0.1
    dome = dome_over(arrangement, hold, below, 0.45, leaf_out=1.5, line_out=1.34)
    dome = replace(dome, loose=0.09, fan=112, line_fan=70, focal_reach=0.64, top_x=0.06)
    return lay_dome(arrangement, replace(dome, crowded=1.1))
