"""Does a photo show what its recipe says, by its colours?

Two answers, and both are indicative, since a photo has light and shade, a vessel and leaves.
How far its colours are from the recipe's is the least way of carrying the recipe's into the
photo's (`transport`). One stem stands in front and is lit, another behind: so each colour of the
photo may stand for twice what is seen of it, and the rest of the photo for nothing. Leaves that
hang about are no fault, so greens beyond the recipe's own are left out.
Which of the recipe's colours it doesn't show are those that nothing in all of the photo comes
near; a white that is lost on a white cloth is not missed, nor is what the recipe has little of,
since a photo's few colours don't hold what is small. Low sun and lamps tint a photo, so the
recipe is looked at by lamplight as well as by day, and whichever fits better counts. By candle it
isn't: nearly every photo of something red would then pass for it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from corymb.trade.colour.areas import ColourArea
from corymb.trade.colour.ciede2000 import difference
from corymb.trade.colour.likeness import Palette, palette
from corymb.trade.colour.transport import distance
from corymb.trade.colour.words import colour_word
from corymb.trade.light.lights import WARM_LAMPS
from corymb.trade.light.seen import seen

ANOTHER_COLOUR = 20.0
"""From this far apart (CIEDE2000) two colours are taken for two: common practice, no source."""

TWICE = 2.0
"""How much more of a recipe's colours than its own share a photo's colour may stand for."""

FAR = 18.0
"""From this far on (CIEDE2000) a photo's colours are far from its recipe's. By the demo's photos:
those of their own recipes come out at 4 to 17, four in ten of all others beyond. House values."""

LITTLE = 0.1
"""What takes less of a recipe may well be lost among a photo's eight colours, so it isn't missed.
House value, no source."""

LEAF = "green"


@dataclass(frozen=True)
class PhotoColours:
    """The colours (`#rrggbb`) of a photo with their shares, 0 to 1."""

    flowers: Palette
    """Of what stands before the wall or cloth, as far as can be told."""
    whole: Palette
    """Of all of it."""


@dataclass(frozen=True)
class Missing:
    """A family of the recipe's colours that the photo has nothing like."""

    word: str
    share: float
    """What of the recipe is seen of it, 0 to 1."""
    stems: tuple[str, ...]
    """Whose colours they are, by id, the largest first."""


@dataclass(frozen=True)
class Shown:
    """What a photo shows of a recipe."""

    apart: float
    """How far the recipe's colours are from its: CIEDE2000, 0 where all of them are there."""
    missing: tuple[Missing, ...]
    """The largest first."""

    @property
    def missing_share(self) -> float:
        """How much of the recipe isn't shown, 0 to 1, but for what it has little of."""
        return sum(part.share for part in self.missing if part.share >= LITTLE)


def shown(photo: PhotoColours, areas: Sequence[ColourArea]) -> Shown:
    """What a photo shows of the colours of a look.

    Raises ValueError where either has no colours.
    """
    if not photo.flowers or not areas:
        raise ValueError("no colours to compare with")
    by_lamps = [replace(area, hex=seen(area.hex, WARM_LAMPS)) for area in areas]
    return min(
        (_shown(photo, areas, in_light) for in_light in (areas, by_lamps)),
        key=lambda found: (round(found.missing_share, 6), found.apart),
    )


def _shown(
    photo: PhotoColours, areas: Sequence[ColourArea], in_light: Sequence[ColourArea]
) -> Shown:
    recipe = palette((area.hex, area.share) for area in in_light)
    there = {hex_ for hex_, _ in (*photo.flowers, *photo.whole)}
    lost = [
        area
        for area, lit in zip(areas, in_light, strict=True)
        if min(difference(lit.hex, hex_) for hex_ in there) >= ANOTHER_COLOUR
    ]
    flowers = _with_leaves_as_in(recipe, photo.flowers)
    return Shown(distance(recipe, flowers, room=TWICE), _by_word(lost))


def _with_leaves_as_in(recipe: Palette, flowers: Palette) -> Palette:
    """The photo's colours with no more green than the recipe has; unless all of it is green."""
    own, there = _green_share(recipe), _green_share(flowers)
    if there <= own or all(_is_leaf(hex_) for hex_, _ in flowers):
        return palette(flowers)
    green, rest = own / there, (1 - own) / (1 - there)
    return palette((hex_, share * (green if _is_leaf(hex_) else rest)) for hex_, share in flowers)


def _green_share(colours: Palette) -> float:
    return sum(share for hex_, share in colours if _is_leaf(hex_))


def _is_leaf(hex_: str) -> bool:
    return colour_word(hex_) == LEAF


def _by_word(lost: Sequence[ColourArea]) -> tuple[Missing, ...]:
    families: dict[str, list[ColourArea]] = {}
    for area in lost:
        families.setdefault(colour_word(area.hex), []).append(area)
    found = [
        Missing(word, sum(area.share for area in parts), _stems(parts))
        for word, parts in families.items()
    ]
    return tuple(sorted(found, key=lambda part: (-part.share, part.word)))


def _stems(areas: Iterable[ColourArea]) -> tuple[str, ...]:
    shares: dict[str, float] = {}
    for area in areas:
        shares[area.stem] = shares.get(area.stem, 0.0) + area.share
    return tuple(sorted(shares, key=lambda stem: (-shares[stem], stem)))
