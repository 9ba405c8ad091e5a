"""What is there to draw, told so plainly that another process can draw it?

Each piece of work holds plain values and finds what was kept of it, or draws it and keeps it. What
is made from one drawing (its colours in other lights, its pixels) is made along with it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import Protocol

import corymb.trade.light
from corymb.code_digest import code_digest
from corymb.picture import Arrangement, PictureStem, draw, draw_side_by_side, draw_stem
from corymb.picture.plan import draw_plan, plan_of
from corymb.site import raster
from corymb.site.drawn.kept import Kept
from corymb.site.drawn.lit import colours_in_light
from corymb.site.raster.sheet import view_box
from corymb.trade.light.lights import Light

LIGHTS = Path(str(corymb.trade.light.__file__)).parent


@dataclass(frozen=True)
class Drawn:
    """A drawing (SVG), and what was made along with it; empty where it wasn't asked for."""

    svg: str
    plan: str = ""
    lit: str = ""
    card: bytes = b""
    small: bytes = b""
    small_wide: bytes = b""


class ToDraw(Protocol):
    """Something to draw."""

    @property
    def together(self) -> str:
        """A word for what is drawn with the same heads, and so best by one hand."""
        ...

    @property
    def work(self) -> int:
        """How many stems are drawn, by which one guesses how long it takes."""
        ...

    def drawn(self, kept: Kept) -> Drawn:
        """As it was kept, or drawn now. Raises NotKeptError where `kept` may only look."""
        ...


@dataclass(frozen=True)
class LookToDraw:
    """A look from the front and from above.

    `lights`: those that its colours are wanted in. `small`: whether it needs a card and the small
    pixels; those for lists of wide arrangements too if it is one and `listed_wide`.
    """

    arrangement: Arrangement
    lights: Mapping[str, Light] | None = None
    small: bool = False
    listed_wide: bool = False

    @property
    def together(self) -> str:
        return self.arrangement.id.partition("--")[0]

    @property
    def work(self) -> int:
        return sum(stem.count for stem in self.arrangement.stems)

    def front(self, kept: Kept) -> str:
        """The drawing from the front alone."""
        return kept.or_drawn(repr(self.arrangement), partial(draw, self.arrangement))

    def plan(self, kept: Kept) -> str:
        """The plan from above alone."""
        told = f"plan {self.arrangement!r}"
        return kept.or_drawn(told, lambda: draw_plan(plan_of(self.arrangement)))

    def drawn(self, kept: Kept) -> Drawn:
        svg, plan = self.front(kept), self.plan(kept)
        lit = _in_other_lights(kept, svg, self.lights) if self.lights else ""
        if not self.small:
            return Drawn(svg, plan, lit)
        card = kept.or_made(f"card {raster.made_by()} {svg}", lambda: raster.share_card(svg), "jpg")
        small, small_wide = _small(kept, svg, raster.small_look), b""
        *_, width, height = view_box(svg)
        if self.listed_wide and width > height:
            small_wide = _small(kept, svg, raster.small_wide_look)
        return Drawn(svg, plan, lit, card, small, small_wide)


@dataclass(frozen=True)
class SizesToDraw:
    """A recipe's sizes side by side, under these words, with a line to compare them with."""

    arrangements: tuple[Arrangement, ...]
    words: str
    line_cm: float | None

    @property
    def together(self) -> str:
        return self.arrangements[0].id.partition("--")[0]

    @property
    def work(self) -> int:
        return sum(stem.count for each in self.arrangements for stem in each.stems)

    def front(self, kept: Kept) -> str:
        """The drawing alone."""
        told = f"sizes {self.words} {self.arrangements} {self.line_cm}"
        return kept.or_drawn(
            told, lambda: draw_side_by_side(self.arrangements, self.words, self.line_cm)
        )

    def drawn(self, kept: Kept) -> Drawn:
        svg = self.front(kept)
        return Drawn(svg, small=_small(kept, svg, raster.small_sizes))


@dataclass(frozen=True)
class StemToDraw:
    """A stem by itself."""

    stem: PictureStem

    @property
    def together(self) -> str:
        return f"stem {self.stem.form}"

    @property
    def work(self) -> int:
        return self.stem.count

    def drawn(self, kept: Kept) -> Drawn:
        return Drawn(kept.or_drawn(repr(self.stem), partial(draw_stem, self.stem)))


def _in_other_lights(kept: Kept, svg: str, lights: Mapping[str, Light]) -> str:
    """What becomes of a picture's colours in each light that its page can be switched to."""
    told = f"{code_digest(LIGHTS)} {lights} {svg}"
    return kept.or_drawn(told, lambda: colours_in_light(svg, lights), "json")


def _small(kept: Kept, svg: str, small: Callable[[str], bytes]) -> bytes:
    """A drawing as a phone gets it where it stands small, made again when the card would be."""
    told = f"{small.__name__} {raster.made_by()} {svg}"
    return kept.or_made(told, lambda: small(svg), "avif")
