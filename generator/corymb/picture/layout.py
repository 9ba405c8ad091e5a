"""What does an arrangement come down to before it is drawn? Heads, stalks and leaves, in cm.

The ground is at y = 0 and the arrangement stands above it, so heights are negative.
"""

from dataclasses import dataclass
from enum import IntEnum

from corymb.picture.arrangement import PictureStem
from corymb.picture.forms import FORMS, Facing
from corymb.picture.geometry import Box, Point


class Band(IntEnum):
    """How near to us: the order in which the papers are laid down."""

    BACK = 0
    MIDDLE = 1
    FRONT = 2


@dataclass(frozen=True)
class Bloom:
    """One head in its place."""

    stem: PictureStem
    at: Point  # where its stem ends
    lean: float  # which way its stem points there, degrees from straight up
    band: Band
    length_cm: float
    turn: float = 0.0  # a face's roll
    away: float = 0.0  # the direction in which a face looks past us
    tilt: float = 1.0  # how much of a face is seen: 1 face on, 0 edge on
    mirrored: bool = False
    piece: int = 0  # which of the drawn heads of this stem
    lift: int = 0  # 1 where it lies over the other heads of its band
    fork: Point | None = None  # where its twig leaves the stem; none at the stem's own tip

    @property
    def reach(self) -> Box:
        """How far the head may extend, generously."""
        half = self.stem.head_cm / 2
        facing = FORMS[self.stem.form].facing
        if facing is Facing.FRONT:
            return Box(self.at.x - half, self.at.y - half, self.at.x + half, self.at.y + half)
        if facing is Facing.HANGING:
            out = self.length_cm * 0.3 * (-1 if self.mirrored else 1)
            ends = [self.at, Point(self.at.x + out, self.at.y + self.length_cm)]
        else:
            tip = self.at.towards(self.lean, self.length_cm)
            slim = half * 0.4 if self.length_cm > self.stem.head_cm * 1.5 else half
            sides = [self.at.towards(self.lean + 90, side) for side in (-half, half)]
            sides += [tip.towards(self.lean + 90, side) for side in (-slim, slim)]
            return Box.around(sides)
        box = Box.around(ends)
        return Box(box.left - half, box.top - half, box.right + half, box.bottom + half)


@dataclass(frozen=True)
class Stalk:
    """A stem's course: from the head to where it is held, and on to its cut end."""

    head: Point
    lean: float  # at the head
    held: Point
    end: Point | None  # none for a twig that joins another stalk
    width_cm: float
    green: str
    band: Band


@dataclass(frozen=True)
class Leaf:
    """A leaf on one of the stems, filling a gap between heads."""

    at: Point
    lean: float
    length_cm: float
    green: str


@dataclass(frozen=True)
class Layout:
    blooms: tuple[Bloom, ...]
    stalks: tuple[Stalk, ...]
    leaves: tuple[Leaf, ...]
    box: Box
    leaves_first: bool = False  # whether leaves lie below all heads, as on a ring
