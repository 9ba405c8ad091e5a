"""Where on the plan does each number stand, and how large is it?

In the middle of the part of its head that no other head hides, so that nobody reads it as its
neighbour's; never over another number.
"""

from dataclasses import dataclass
from functools import cached_property

from corymb.picture.geometry import Point
from corymb.picture.plan.heads import Placed

LEAST_TYPE, MOST_TYPE = 32.0, 48.0
"""Of a sheet 1000 wide: printed 9 cm wide the least is 8.2 points, as small print is."""

DIGIT, TALL = 0.58, 0.74  # a figure's width and height, of the type's size (common sans serifs)
ANGLES, REACHES = range(0, 360, 40), (0.25, 0.45, 0.65, 0.85, 1.0)  # the last on its edge


@dataclass(frozen=True)
class Number:
    """A head's number, in the sheet's units from the middle of the plan."""

    head: Placed
    at: Point
    size: float

    @cached_property
    def half(self) -> tuple[float, float]:
        """Half of its width and of its height."""
        digits = len(str(self.head.number))
        return self.size * DIGIT * digits / 2, self.size * TALL / 2


def numbers_of(lowest_first: list[Placed], cm: float) -> list[Number]:
    """For each of the heads, of which the later ones lie over the earlier; the uppermost first,
    since small heads lie there and have the least choice."""
    placed: list[Number] = []
    for order in range(len(lowest_first) - 1, -1, -1):
        head = lowest_first[order]
        over = [other for other in lowest_first[order + 1 :] if _touch(head, other)]
        size = max(LEAST_TYPE, min(MOST_TYPE, head.radius * cm * 0.8))
        placed.append(_lettered(head, over, placed, size, cm))
    return placed


def _touch(head: Placed, other: Placed) -> bool:
    return head.at.distance(other.at) < head.radius + other.radius


def _lettered(
    head: Placed, over: list[Placed], placed: list[Number], size: float, cm: float
) -> Number:
    """In the head's middle if it is free; else where there is most room, near the middle."""
    r, middle = head.radius * cm, Point(head.at.x * cm, head.at.y * cm)
    hiding = [(Point(other.at.x * cm, other.at.y * cm), other.radius * cm) for other in over]
    near = [each for each in placed if middle.distance(each.at) < r + size + MOST_TYPE]

    def worth(number: Number) -> float:
        aside = middle.distance(number.at)
        room = min([r - aside, *(number.at.distance(at) - reach for at, reach in hiding)])
        return min(room, size * 0.5) - 0.12 * aside - 4 * _overlap(number, near)

    first = Number(head, middle, size)
    if worth(first) >= min(r, size * 0.5):
        return first
    spots = (middle.towards(angle, r * part) for part in REACHES for angle in ANGLES)
    return max([first, *(Number(head, at, size) for at in spots)], key=worth)


def _overlap(number: Number, others: list[Number]) -> float:
    """How far it runs into any other number, with a little air between them."""
    wide, high = number.half
    deepest = 0.0
    for other in others:
        w, h = other.half
        right = wide + w + 3 - abs(number.at.x - other.at.x)
        down = high + h + 3 - abs(number.at.y - other.at.y)
        deepest = max(deepest, min(right, down))
    return deepest
