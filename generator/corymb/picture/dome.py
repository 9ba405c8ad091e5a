"""Within which outline are the heads placed? A dome of its own width, height and looseness."""

import math
from dataclasses import dataclass, replace

from corymb.picture.geometry import Point


@dataclass(frozen=True)
class Hold:
    """Where the stems are held together: the tie, or the mouth of the vessel."""

    at: Point  # the middle of the mouth
    half_cm: float  # how far to either side stems may pass
    end_y: float  # where the cut ends stand
    end_half_cm: float  # how far they spread there
    crossing: float = 0.33  # how much of its lean a stem keeps beyond the hold

    def passed_by(self, head: Point, widest: float) -> Point:
        """Where in the mouth the stem of this head passes: on the head's own side."""
        part = max(-1.0, min(1.0, (head.x - self.at.x) / max(widest, 0.1)))
        return Point(self.at.x + part * self.half_cm, self.at.y)


@dataclass(frozen=True)
class Dome:
    """An egg on its side or on its end: half widths, and its heights above and below the middle."""

    middle: Point
    half_cm: float
    up_cm: float
    down_cm: float
    hold: Hold
    loose: float = 0.05  # how far heads stray from their places, as a part of the half width
    fan: float = 115.0  # how far round from the top line and leaf are set, in degrees
    leaf_out: float = 1.0  # how far tips of leaf and line stand out, as a part of the outline
    line_out: float = 1.0
    line_fan: float = 55.0
    seated: bool = False  # whether short lines keep their feet among the heads
    focal_reach: float = 0.62  # how far out focal heads stand
    focal_low: float = 0.12  # how far below the dome's middle theirs lies
    focal_tall: float = 1.0  # how high the focal heads' own dome is, against the whole
    crowded: float = math.inf  # with heads so many half widths wide the small ones keep to the rim
    top_x: float = 0.0  # the top's shift to the side, as a part of the half width

    def at(self, part: float, angle: float) -> Point:
        """The point at `part` of the way from the middle to the outline, `angle` from the top."""
        turn = math.radians(angle)
        high = math.cos(turn)
        rise = self.up_cm if high > 0 else self.down_cm
        shift = self.top_x * self.half_cm * max(0.0, high) * part
        return Point(
            self.middle.x + self.half_cm * part * math.sin(turn) + shift,
            self.middle.y - rise * part * high,
        )

    def within(self, point: Point) -> tuple[float, float]:
        """The part of the way to the outline at which a point lies, and its angle from the top."""
        high = self.middle.y - point.y
        rise = self.up_cm if high > 0 else self.down_cm
        up = high / rise
        across = (point.x - self.middle.x) / self.half_cm
        across -= self.top_x * max(0.0, up)
        return math.hypot(across, up), math.degrees(math.atan2(across, up))

    def standing_out(self, leaf: float, line: float) -> "Dome":
        """With leaf and line standing so many times further out of a dome as much smaller."""
        return replace(
            self,
            half_cm=self.half_cm / leaf,
            up_cm=self.up_cm / line,
            leaf_out=self.leaf_out * leaf,
            line_out=self.line_out * line,
        )

    @property
    def area_cm2(self) -> float:
        return math.pi / 2 * self.half_cm * (self.up_cm + self.down_cm)
