"""In which places do a flower head's florets stand, and so the heads of a round arrangement?

H. Vogel, "A better way to construct the sunflower head", Mathematical Biosciences 44 (1979),
179-189: the n-th floret stands at n times the golden angle and at a distance of c times the
square root of n. Neighbours are then a Fibonacci number apart, and no place is left empty.
"""

import math

from corymb.picture.geometry import Point

GOLDEN_ANGLE = math.pi * (3 - math.sqrt(5))


def vogel(n: int, c: float = 1.0) -> Point:
    """The place of floret n, counted from 1; angles from the right, y as in mathematics."""
    reach, turn = c * math.sqrt(n), n * GOLDEN_ANGLE
    return Point(reach * math.cos(turn), reach * math.sin(turn))
