"""A table centre: a low oval, nothing higher than people can talk over, soft at both ends.

A trough with focal heads enough is filled from end to end, as a drift of them.
"""

from dataclasses import replace

from corymb.picture.arrangement import Arrangement
from corymb.picture.dome import Dome, Hold
from corymb.picture.layout import Layout
from corymb.picture.styles.base import dome_over, hold_of, lay_dome

ENOUGH = 1 / 3  # of the stems are focal: with fewer a trough's ends are left to leaf and spire


def lay(arrangement: Arrangement) -> Layout:
    dome = _drift if _drifts(arrangement) else _oval
    return lay_dome(arrangement, dome(arrangement, hold_of(arrangement)))


def _drifts(arrangement: Arrangement) -> bool:
    stems = arrangement.stems
    focal = sum(stem.count for stem in stems if stem.use == "focal")
    return arrangement.vessel.kind == "trough" and focal >= ENOUGH * sum(s.count for s in stems)


def _oval(arrangement: Arrangement, hold: Hold) -> Dome:
    dome = dome_over(arrangement, hold, 0.3, 0.4, leaf_out=1.36, line_out=1.1)
    return replace(dome, loose=0.06, fan=100, line_fan=75, focal_reach=0.7, focal_low=0.05)


def _drift(arrangement: Arrangement, hold: Hold) -> Dome:
    """As long as the trough's mouth and lower than an oval; leaf reaches just past its ends."""
    dome = dome_over(arrangement, hold, 0.26, 0.4, leaf_out=1.04, line_out=1.4)
    return replace(dome, loose=0.05, fan=100, line_fan=60, focal_reach=0.92, focal_low=0.0)
