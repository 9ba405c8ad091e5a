"""A table centre: a low oval, nothing higher than people can talk over, soft at both ends."""

from dataclasses import replace

from corymb.picture.arrangement import Arrangement
from corymb.picture.layout import Layout
from corymb.picture.styles.base import dome_over, hold_of, lay_dome


def lay(arrangement: Arrangement) -> Layout:
    hold = hold_of(arrangement)
    dome = dome_over(arrangement, hold, 0.3, 0.4, leaf_out=1.36, line_out=1.1)
    return lay_dome(
        arrangement,
        replace(dome, loose=0.06, fan=100, line_fan=75, focal_reach=0.7, focal_low=0.05),
    )
