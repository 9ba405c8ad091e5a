"""A standing piece: tall, lines first, heavy heads low at the mouth, leaf falling at the sides."""

from dataclasses import replace

from corymb.picture.arrangement import Arrangement
from corymb.picture.layout import Layout
from corymb.picture.styles.base import dome_over, hold_of, lay_dome


def lay(arrangement: Arrangement) -> Layout:
    hold = hold_of(arrangement)
    dome = dome_over(arrangement, hold, 0.06, 0.34, leaf_out=1.3, line_out=1.4)
    return lay_dome(
        arrangement,
        replace(
            dome,
            loose=0.08,
            fan=106,
            line_fan=48,
            seated=True,
            focal_reach=0.72,
            focal_low=0.25,
            focal_tall=0.62,
            top_x=-0.14,
        ),
    )
