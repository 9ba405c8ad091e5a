"""A buttonhole: one head or two before a leaf, its few stems crossed, bound and pinned."""

from dataclasses import replace

from corymb.picture.arrangement import Arrangement
from corymb.picture.layout import Layout
from corymb.picture.styles.base import dome_over, hold_of, lay_dome
from corymb.picture.styles.sprigs import taken_apart


def cut_down(arrangement: Arrangement) -> Arrangement:
    """One head of each stem, in bud if it is large, and sprigs no wider than a third of it all."""
    across, high = arrangement.across_cm, arrangement.high_cm
    return taken_apart(arrangement, across * 0.42, high * 0.55, across * 0.52, heads=1)


def lay(arrangement: Arrangement) -> Layout:
    hold = replace(hold_of(arrangement), crossing=0.8)
    dome = dome_over(arrangement, hold, -0.04, 0.42, leaf_out=1.5, line_out=1.3)
    dome = replace(dome, loose=0.05, fan=120, line_fan=40, focal_reach=0.3, focal_low=0.3)
    return lay_dome(arrangement, dome)
