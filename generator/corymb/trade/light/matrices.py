"""The three-by-three sums of colour: into cones and back, and from one white to another."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from corymb.trade.light.white import Xyz

Row = tuple[float, float, float]
Matrix = tuple[Row, Row, Row]

CAT16: Matrix = (
    (0.401288, 0.650173, -0.051461),
    (-0.250268, 1.204414, 0.045854),
    (-0.002079, 0.048952, 0.953127),
)
"""C. Li and others, Color Research and Application 42:703-718, 2017."""

BRADFORD: Matrix = (
    (0.8951, 0.2664, -0.1614),
    (-0.7502, 1.7135, 0.0367),
    (0.0389, -0.0685, 1.0296),
)
"""K. M. Lam, Metamerism and colour constancy, thesis, University of Bradford, 1985."""


def times(matrix: Matrix, vector: Sequence[float]) -> Xyz:
    """A matrix times a vector."""
    x, y, z = (sum(a * b for a, b in zip(row, vector, strict=True)) for row in matrix)
    return x, y, z


def product(one: Matrix, other: Matrix) -> Matrix:
    """One matrix after the other."""
    columns = [times(one, column) for column in zip(*other, strict=True)]
    first, second, third = zip(*columns, strict=True)
    return first, second, third


def inverse(matrix: Matrix) -> Matrix:
    """By cofactors."""
    (a, b, c), (d, e, f), (g, h, i) = matrix
    whole = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
    return (
        ((e * i - f * h) / whole, (c * h - b * i) / whole, (b * f - c * e) / whole),
        ((f * g - d * i) / whole, (a * i - c * g) / whole, (c * d - a * f) / whole),
        ((d * h - e * g) / whole, (b * g - a * h) / whole, (a * e - b * d) / whole),
    )


CAT16_BACK = inverse(CAT16)


@lru_cache(maxsize=256)  # a whole picture is looked at in the same few lights
def from_white_to_white(one: Xyz, other: Xyz, cones: Matrix = BRADFORD) -> Matrix:
    """What carries a colour from under one white to under another, the eye wholly used to each."""
    (r, g, b), (to_r, to_g, to_b) = times(cones, one), times(cones, other)
    gains: Matrix = ((to_r / r, 0.0, 0.0), (0.0, to_g / g, 0.0), (0.0, 0.0, to_b / b))
    return product(inverse(cones), product(gains, cones))


def carried(xyz: Sequence[float], one: Xyz, other: Xyz, cones: Matrix = BRADFORD) -> Xyz:
    """A colour carried so. A strong one may come out with less than no light in one part."""
    return times(from_white_to_white(one, other, cones), xyz)
