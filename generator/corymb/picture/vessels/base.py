"""What does every vessel share? What it is asked to draw, its two halves, and its outline."""

from dataclasses import dataclass
from random import Random

from corymb.picture.geometry import Point
from corymb.picture.paths import Cut, Outline, smooth
from corymb.picture.svg import element
from corymb.picture.vessels.materials import named


@dataclass(frozen=True)
class Body:
    """A vessel to be drawn, standing on the ground at the origin; sizes in drawing units."""

    half: float
    high: float
    colour: str
    ground: str
    rng: Random
    cm: float
    name: str = ""

    def is_called(self, *words: str) -> bool:
        """Whether the recipe's name for it has one of the words."""
        return bool(set(words) & named(self.name))


@dataclass(frozen=True)
class Halves:
    """What lies behind the stems, and what lies in front of them."""

    behind: str
    before: str


def piece(outline: Outline, colour: str, opacity: float | None = None) -> str:
    if opacity is None:
        return element("path", d=outline.written(), fill=colour)
    return element("path", d=outline.written(), fill=colour, fill_opacity=f"{opacity:.2f}")


def profile(points: list[tuple[float, float]], rim: float) -> Outline:
    """A thrown shape from half its profile, foot first, as (half width, height) pairs.

    The foot and the rim are seen a little from above, so both are bowed by `rim`.
    """
    left = [Point(-half, -high) for half, high in points]
    right = [Point(half, -high) for half, high in reversed(points)]
    cuts: list[Cut] = [*_flow(left)]
    top = left[-1].y
    cuts.append(
        (
            Point(left[-1].x * 0.55, top + rim * 1.3),
            Point(-left[-1].x * 0.55, top + rim * 1.3),
            right[0],
        )
    )
    cuts.extend(_flow(right))
    foot = left[0]
    cuts.append((Point(-foot.x * 0.55, foot.y + rim), Point(foot.x * 0.55, foot.y + rim), foot))
    return Outline(foot, tuple(cuts))


def _flow(points: list[Point]) -> list[Cut]:
    return list(smooth(points).cuts)
