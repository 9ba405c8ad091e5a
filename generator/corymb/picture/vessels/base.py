"""What does every vessel share? What it is asked to draw, its material, and its two halves."""

from dataclasses import dataclass
from random import Random

from corymb.picture.colour import lightness, shade
from corymb.picture.geometry import Point
from corymb.picture.paths import Cut, Outline, smooth
from corymb.picture.svg import element

# House tones for materials a vessel's name may mention; common practice, no source.
MATERIALS = {
    "copper": "#b0704a",
    "brass": "#b89a56",
    "gold": "#b89a56",
    "zinc": "#98a0a0",
    "silver": "#b4b8b8",
    "pewter": "#878d8e",
    "iron": "#4d4c4a",
    "black": "#3b3836",
    "slate": "#5c6468",
    "stone": "#b3aa9a",
    "stoneware": "#a39480",
    "terracotta": "#b9775a",
    "clay": "#a9745a",
    "white": "#e9e3d8",
    "cream": "#e6dcc6",
    "blue": "#6f8794",
    "green": "#7d8f78",
    "wood": "#8a6a4c",
    "oak": "#8f7350",
    "willow": "#8b6f4f",
    "moss": "#6f7a48",
    "enamel": "#dfe0d8",
}


@dataclass(frozen=True)
class Body:
    """A vessel to be drawn, standing on the ground at the origin; sizes in drawing units."""

    half: float
    high: float
    colour: str
    ground: str
    rng: Random
    cm: float


@dataclass(frozen=True)
class Halves:
    """What lies behind the stems, and what lies in front of them."""

    behind: str
    before: str


def material(name: str, usual: str, background: str) -> str:
    """The tone named in the vessel's name, else the usual one; never lost against the wall."""
    words = name.lower().replace("-", " ").split()
    tone = next((MATERIALS[word] for word in words if word in MATERIALS), usual)
    if abs(lightness(tone) - lightness(background)) < 0.06:
        return shade(tone, -0.08 if lightness(background) > 0.4 else 0.08)
    return tone


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
