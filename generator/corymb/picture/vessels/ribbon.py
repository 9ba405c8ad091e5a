"""A hand tie bound with tape or ribbon: a broad band about the stems and two tails."""

from corymb.picture.colour import shade
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, polyline, smooth
from corymb.picture.vessels.base import Body, Halves, piece

ROUNDS = 3
TAILS = ((-0.55, 0.5, 4.6), (0.5, 0.95, 5.6))  # where they leave, where they end, how long


def draw(body: Body) -> Halves:
    """Each round overlaps the one below; the tails hang from behind the topmost."""
    wide = max(body.half * 0.62, body.cm * 0.8)
    top = -body.high - wide * 0.9
    parts = [_tail(body, wide, tail) for tail in TAILS]
    for turn in reversed(range(ROUNDS)):
        y = top + turn * wide * 0.62
        tone = 0.015 if turn % 2 else -0.02
        band = _band(body.half * 1.08, y, wide)
        parts.append(piece(band.at(wide * 0.03, wide * 0.09), shade(body.colour, -0.15)))
        parts.append(piece(band, shade(body.colour, tone)))
        parts.append(_stripes(body, body.half * 1.08, y, wide))
    return Halves("", "".join(parts))


def _band(half: float, y: float, wide: float) -> Outline:
    """A strip across the stems, sagging as what is wound round does, and a little aslant."""
    sag, slant = wide * 0.2, wide * 0.12
    upper = [Point(-half, y - slant), Point(0, y + sag), Point(half, y + slant)]
    lower = [Point(point.x, point.y + wide) for point in reversed(upper)]
    return smooth([*upper, *lower], closed=True, ease=1 / 9)


def _tail(body: Body, wide: float, tail: tuple[float, float, float]) -> str:
    """A tail of tape, cut to a swallowtail at its end."""
    left, out, long = tail
    x, y, half = left * body.half, -body.high + wide * 0.4, wide * 0.34
    end_x, end_y = out * body.half * 1.6, y + long * wide
    middle = Point((x + end_x) / 2 - wide * 0.35 * out, (y + end_y) / 2)
    strip = polyline(
        [
            Point(x - half, y),
            Point(middle.x - half, middle.y),
            Point(end_x - half, end_y),
            Point(end_x, end_y - half * 1.1),
            Point(end_x + half, end_y + half * 0.4),
            Point(middle.x + half, middle.y),
            Point(x + half, y),
        ],
        closed=True,
    )
    below = piece(strip.at(wide * 0.05, wide * 0.1), shade(body.colour, -0.15))
    return below + piece(strip, shade(body.colour, -0.03))


def _stripes(body: Body, half: float, y: float, wide: float) -> str:
    """Ticking is striped along its length."""
    if not body.is_called("striped", "ticking"):
        return ""
    stripe = shade(body.colour, -0.28)
    bands = (_band(half, y + wide * part, wide * 0.07) for part in (0.22, 0.46, 0.7))
    return "".join(piece(band, stripe) for band in bands)
