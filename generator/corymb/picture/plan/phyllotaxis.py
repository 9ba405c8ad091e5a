"""In which directions do a round arrangement's heads stand from its middle, one after the other?

H. Vogel, "A better way to construct the sunflower head", Mathematical Biosciences 44 (1979),
179-189: the n-th floret of a flower head stands at n times the golden angle, and further out by
the square root of n. Neighbours are then a Fibonacci number apart, and no place is left empty.
"""

import math

from corymb.picture.geometry import Point
from corymb.picture.shapes import GOLDEN_ANGLE


def turned(index: int, reach: float) -> Point:
    """The place `reach` from the middle, for the head of this number from 0; y as in mathematics.

    Floret n of Vogel's is number n - 1 here, at a reach of the square root of n.
    """
    turn = (index + 1) * GOLDEN_ANGLE
    return Point(reach * math.cos(turn), reach * math.sin(turn))
