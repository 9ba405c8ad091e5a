"""What does every flower form share? The head it is asked for and the sheet it is cut on.

A head is drawn about the origin, where its stem ends: forms that face us are centred there,
forms seen from the side grow upwards from it, and those that hang fall below it. The light
comes from above and a little to the left, so each layer of paper shows a darker edge below.
"""

from collections.abc import Callable
from dataclasses import dataclass, field
from enum import Enum
from random import Random

from corymb.picture.colour import Palette, lightness, shade
from corymb.picture.geometry import Box, Point
from corymb.picture.paths import Outline, box_of, polyline, smooth, written
from corymb.picture.seed import give
from corymb.picture.shapes import leaf, rib
from corymb.picture.svg import Attribute, element, number, tenths

EDGE = 0.09  # how much darker the edge of a layer is than its face, in OKLCh lightness
PALE, PALE_EDGE = 0.9, 0.13  # no paper is lighter than white: pale petals are told by their edges
VARY = 0.02  # how far neighbouring pieces of one colour differ


class Facing(Enum):
    FRONT = "front"  # a face, turned to us and tilted a little
    SIDE = "side"  # seen from the side, growing on along its stem
    HANGING = "hanging"  # falling from the end of its stem


@dataclass(frozen=True)
class Head:
    """What a form is asked to draw; sizes in units of the drawing, `cm` units to a centimetre."""

    across: float
    length: float
    palette: Palette
    green: str
    rng: Random
    cm: float
    heads: int = 1  # how many such heads the stem bears
    view: int = 0  # from which of the form's sides, so that not all heads are alike

    @property
    def radius(self) -> float:
        return self.across / 2

    @property
    def across_cm(self) -> float:
        return self.across / self.cm


@dataclass(frozen=True)
class Drawn:
    """A head on paper: its pieces, and its silhouette for the shadow it throws."""

    pieces: str
    silhouette: str
    box: Box


@dataclass
class Sheet:
    """Collects the pieces of a head from the lowest layer to the topmost."""

    pieces: list[str] = field(default_factory=list)
    silhouette: list[str] = field(default_factory=list)
    box: Box | None = None

    def cut(self, outlines: list[Outline], colour: str, inside: bool = False) -> None:
        """Pieces of one colour; `inside` ones lie within others and throw no shadow outside."""
        if not outlines:
            return
        self._cut(written(outlines), outlines, colour, inside)

    def _cut(self, path: str, outlines: list[Outline], colour: str, inside: bool) -> None:
        self.pieces.append(element("path", d=path, fill=colour))
        if not inside:
            self.silhouette.append(element("path", d=path, fill="currentColor"))
            self._grow(box_of(outlines))

    def layer(
        self,
        outlines: list[Outline],
        colour: str,
        drop: float,
        inside: bool = False,
        rim: float = 0.0,
    ) -> None:
        """Pieces with the darker edge of their paper showing by `drop` underneath.

        With a `rim` it shows a little all round, which parts petals that lie above each other.
        """
        if not outlines:
            return
        path = written(outlines)
        self._edge(path, colour, drop, rim)
        self._cut(path, outlines, colour, inside)

    def _edge(self, path: str, colour: str, drop: float, rim: float) -> None:
        dark = edge_of(colour)
        round_it: dict[str, Attribute] = {"stroke": dark, "stroke_width": rim} if rim else {}
        fall = f"translate({drop * 0.35:.1f} {drop:.1f})"
        self.pieces.append(element("path", d=path, fill=dark, **round_it, transform=fall))

    def stamped(
        self,
        piece: Outline,
        places: list[Point],
        colour: str,
        drop: float,
        inside: bool = False,
        rim: float = 0.0,
    ) -> None:
        """The same piece at many places, as one layer; written alike, it packs very small."""
        if not places:
            return
        text = piece.written()
        steps = text[min(text.find(letter) for letter in "cl" if letter in text) :]
        starts = [Point(piece.start.x + place.x, piece.start.y + place.y) for place in places]
        path = "".join(f"M{number(x)} {number(y)}{steps}" for x, y in starts)
        self._edge(path, colour, drop, rim)
        self.pieces.append(element("path", d=path, fill=colour))
        if inside:
            return
        self.silhouette.append(element("path", d=path, fill="currentColor"))
        own, all_ = box_of([piece]), Box.around(places)
        self._grow(
            Box(
                all_.left + own.left,
                all_.top + own.top,
                all_.right + own.right,
                all_.bottom + own.bottom,
            )
        )

    def line(self, outline: Outline, colour: str, width: float) -> None:
        """A stalk: a strip as long as the curve and `width` wide."""
        self.pieces.append(
            element(
                "path",
                d=outline.written(),
                fill="none",
                stroke=colour,
                stroke_width=width,
                stroke_linecap="round",
            )
        )
        self._grow(box_of([outline]))

    def dots(self, places: list[Point], across: float, colour: str, inside: bool = False) -> None:
        """Many round pieces at once: strokes of no length with round ends, the shortest way."""
        if not places:
            return
        strokes = _dotted(places, across)
        self.pieces.append(element("path", **strokes, stroke=colour))
        if not inside:
            self.silhouette.append(element("path", **strokes, stroke="currentColor"))
            half = across / 2
            around = Box.around(places)
            self._grow(
                Box(
                    around.left - half, around.top - half, around.right + half, around.bottom + half
                )
            )

    def dot_layer(self, places: list[Point], across: float, colour: str, drop: float) -> None:
        """Dots with the darker edge of their paper below."""
        if not places:
            return
        fall = f"translate({drop * 0.35:.1f} {drop:.1f})"
        below = element("path", **_dotted(places, across), stroke=edge_of(colour), transform=fall)
        self.pieces.append(below)
        self.dots(places, across, colour)

    def leaf(
        self,
        x: float,
        y: float,
        angle: float,
        length: float,
        width: float,
        colour: str,
        bend: float = 0.0,
    ) -> None:
        """A leaf with its rib cut through, fixed at (x, y)."""
        self.layer([leaf(length, width, bend).at(x, y, angle)], colour, length * 0.035)
        self.cut([rib(length, width * 0.09, bend).at(x, y, angle)], shade(colour, -0.08), True)

    def finished(self) -> Drawn:
        if self.box is None:
            raise ValueError("A form drew nothing.")
        return Drawn("".join(self.pieces), "".join(self.silhouette), self.box)

    def _grow(self, box: Box) -> None:
        self.box = box if self.box is None else self.box.joined(box)


def _dotted(places: list[Point], across: float) -> dict[str, Attribute]:
    """From dot to dot in steps, so that dots set alike are written alike, and pack small."""
    path, x, y = "", 0, 0
    for place in places:
        right, down = round(place.x * 10) - x, round(place.y * 10) - y
        path += f"m{tenths(right)} {tenths(down)}h0"
        x, y = x + right, y + down
    strokes: dict[str, Attribute] = {"d": path, "fill": "none"}
    return strokes | {"stroke_width": across, "stroke_linecap": "round"}


def edge_of(colour: str) -> str:
    """The edge of a paper, darker than its face; more so where the face is nearly white."""
    return shade(colour, -PALE_EDGE if lightness(colour) > PALE else -EDGE)


def dealt(palette: Palette, count: int, rng: Random) -> list[str]:
    """A colour for each of so many florets: the shares kept, the colours well mixed."""
    colours = [palette.at((index + 0.5) / count) for index in range(count)]
    rng.shuffle(colours)
    return colours


def eyed(palette: Palette) -> Palette:
    """The colours of the florets where the heart's colour is seen in their eyes."""
    if len(palette.colours) == 1:
        return palette
    shares, whole = palette.shares[:-1], sum(palette.shares[:-1]) or 1.0
    return Palette(palette.colours[:-1], tuple(share / whole for share in shares))


def varied(colour: str, rng: Random, amount: float = VARY) -> str:
    """A neighbouring sheet of the same paper."""
    return shade(colour, give(rng, amount))


def sorted_by_colour(
    pairs: list[tuple[str, Outline]],
) -> list[tuple[str, list[Outline]]]:
    """Pieces of one colour together, in the order in which the colours first come."""
    found: dict[str, list[Outline]] = {}
    for colour, outline in pairs:
        found.setdefault(colour, []).append(outline)
    return list(found.items())


def curve_up(length: float, lean: float) -> Callable[[float], Point]:
    """A stalk growing up and leaning by `lean` at its tip; gives the point at part 0 to 1."""
    return lambda t: Point(lean * t * t, -length * t)


def ribbon(points: list[Point], widths: list[float]) -> Outline:
    """A strip that follows the points and is as wide at each as told; for blades and tassels."""
    left, right = [], []
    for i, (here, width) in enumerate(zip(points, widths, strict=True)):
        before, after = points[max(0, i - 1)], points[min(len(points) - 1, i + 1)]
        across = before.angle_to(after) + 90
        left.append(here.towards(across, -width / 2))
        right.append(here.towards(across, width / 2))
    return smooth([*left, *reversed(right)], closed=True)


def strip(points: list[Point]) -> Outline:
    """The curve through the points, as a stalk takes it."""
    return smooth(points) if len(points) > 2 else polyline(points)
