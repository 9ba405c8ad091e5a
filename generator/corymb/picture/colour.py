"""Which papers is a stem cut from? Its own colours, and slightly lighter and darker sheets of them.

Lightness is moved in OKLCh (B. Ottosson, "A perceptual color space for image processing", 2020),
where a step looks equally large in every hue.
"""

from dataclasses import dataclass
from functools import lru_cache

from coloraide import Color

from corymb.picture.arrangement import colour_hex

# Any irrational step spreads the colours evenly; the golden one would gather them on one side
# of a head whose florets stand by the golden angle.
EVEN_STEP = 0.4142135623730951


@lru_cache(maxsize=4096)
def _moved(colour: str, hundredths: int) -> str:
    oklch = Color(colour).convert("oklch")
    oklch["lightness"] = min(1.0, max(0.0, oklch["lightness"] + hundredths / 100))
    return str(oklch.convert("srgb").fit().to_string(hex=True))


def shade(colour: str, step: float) -> str:
    """The same paper, lighter (positive) or darker by `step` of OKLCh lightness (0 to 1)."""
    return _moved(colour, round(step * 100))


@lru_cache(maxsize=1024)
def lightness(colour: str) -> float:
    """OKLCh lightness, 0 (black) to 1 (white)."""
    return float(Color(colour).convert("oklch")["lightness"])


@lru_cache(maxsize=256)
def mix(colour: str, other: str, part: float) -> str:
    """`part` (0 to 1) of the other colour mixed in; for vessels and backdrops, never for petals."""
    return str(Color(colour).mix(other, part, space="oklab").convert("srgb").to_string(hex=True))


@dataclass(frozen=True)
class Palette:
    """A stem's colours with their shares, from the petals in to the heart."""

    colours: tuple[str, ...]
    shares: tuple[float, ...]  # add up to 1

    @classmethod
    def of(cls, colours: tuple[tuple[str, float], ...]) -> "Palette":
        """Shares may be given as fractions or per cent; if all are zero they count alike."""
        total = sum(share for _, share in colours)
        shares = [share / total if total else 1 / len(colours) for _, share in colours]
        return cls(tuple(colour_hex(colour) for colour, _ in colours), tuple(shares))

    @property
    def main(self) -> str:
        return self.colours[0]

    @property
    def heart(self) -> str:
        return self.colours[-1]

    @property
    def heart_share(self) -> float:
        """The part of the visible area that is heart; none where the stem has one colour."""
        return self.shares[-1] if len(self.colours) > 1 else 0.0

    def at(self, fraction: float) -> str:
        """The colour met at `fraction` (0 to 1) of the area, counted from the outside in."""
        passed = 0.0
        for colour, share in zip(self.colours, self.shares, strict=True):
            passed += share
            if fraction < passed:
                return colour
        return self.heart

    def pick(self, index: int) -> str:
        """The colour of the floret or leaf `index`, so that many of them keep the shares."""
        return self.at((index * EVEN_STEP + 0.25) % 1.0)
