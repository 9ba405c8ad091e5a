"""A buttonhole: one head or two before a leaf, its few stems crossed, bound and pinned."""

from dataclasses import replace

from corymb.picture.arrangement import Arrangement
from corymb.picture.layout import Layout
from corymb.picture.styles.base import dome_over, hold_of, lay_dome


def lay(arrangement: Arrangement) -> Layout:
    hold = replace(hold_of(arrangement), crossing=0.8)
    dome = dome_over(arrangement, hold, -0.1, 0.36, leaf_out=1.2, line_out=1.2)
    return lay_dome(
        arrangement, replace(dome, loose=0.05, fan=62, line_fan=36, focal_reach=0.3, focal_low=0.3)
    )
