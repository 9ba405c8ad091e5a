"""Does each stem get its fair part of the picture? Fillers that hide come forward until it does.

Heads that stand in front hide those behind, so the picture would be all focal heads. Each stem
should show as large a part of itself as any other; where filler shows less, the picture is truer
with one more of its heads lying before the focal ones, as they do in a bunch that is held.
"""

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

from corymb.picture.covering import masks
from corymb.picture.layout import Band, Bloom
from corymb.picture.placing import is_long

MOST_MOVES = 24
LEAST_GAIN = 0.0015  # of the whole: less is not worth a head out of its order
LARGE = 0.5  # of the width over which heads stand: one so wide draws the eye
ASIDE = 0.02  # of the whole is what such a head must gain more at the edge than in the middle


@dataclass(frozen=True)
class Shared:
    """The same heads in the same places, some of the filler lifted to the front."""

    blooms: list[Bloom]
    unfair: float = 0.0
    """The part of the picture that is still another stem's than it should be."""
    leaf_missing: float = 0.0
    """The part that leaf and line should have more; below none, they have too much."""


def shared(blooms: Sequence[Bloom]) -> Shared:
    """Lift heads one by one, each time the one that makes the picture truest."""
    if not blooms:
        return Shared([])
    sight = Sight(blooms)
    may = [i for i, one in enumerate(blooms) if _may_come(one)]
    aside = _aside([blooms[i] for i in may])
    cost = dict(zip(may, aside, strict=True))
    for _ in range(MOST_MOVES):
        now = sight.unfairness()
        short = sorted({blooms[i].stem.id for i in may}, key=sight.beyond)[:2]
        tries = [
            (sight.unfairness_with(i) + cost[i], i)
            for i in may
            if i not in sight.lifted and blooms[i].stem.id in short
        ]
        best, index = min(tries, default=(1.0, -1))
        if now - best < LEAST_GAIN:
            break
        sight.lift(index)
    laid = [
        replace(bloom, band=Band.FRONT, lift=1) if index in sight.lifted else bloom
        for index, bloom in enumerate(blooms)
    ]
    behind = {bloom.stem.id for bloom in blooms if bloom.stem.use in ("line", "foliage")}
    return Shared(laid, sight.unfairness(), -sum(sight.beyond(stem) for stem in sorted(behind)))


def _may_come(bloom: Bloom) -> bool:
    """Line and leaf stay behind, and long heads with them: their feet would be seen to float."""
    return bloom.stem.use in ("filler", "focal") and not is_long(bloom.stem)


def _aside(blooms: Sequence[Bloom]) -> list[float]:
    """What speaks against lifting each head: a large one belongs low and near the middle."""
    if not blooms:
        return []
    xs, ys = [bloom.at.x for bloom in blooms], [bloom.at.y for bloom in blooms]
    half = (max(xs) - min(xs)) / 2 or 1.0
    x, low = (max(xs) + min(xs)) / 2, min(ys) + 0.6 * (max(ys) - min(ys))
    return [
        ASIDE * math.hypot(bloom.at.x - x, bloom.at.y - low) / half
        if bloom.stem.head_cm > LARGE * 2 * half
        else 0.0
        for bloom in blooms
    ]


class Sight:
    """What is seen of each stem, while heads are lifted one by one."""

    def __init__(self, blooms: Sequence[Bloom]) -> None:
        self.blooms, self.masks, self.lifted = blooms, masks(blooms), list[int]()
        self.wanted = _wanted(blooms, self.masks)
        self.seen: dict[str, int] = dict.fromkeys(self.wanted, 0)
        hidden = 0
        for index in sorted(range(len(blooms)), key=lambda i: (-blooms[i].band, -blooms[i].at.y)):
            self.seen[blooms[index].stem.id] |= self.masks[index] & ~hidden
            hidden |= self.masks[index]
        self.whole = hidden.bit_count() or 1

    def beyond(self, stem: str) -> float:
        """The share that a stem shows beyond its own; below none, it is short."""
        return self.seen[stem].bit_count() / self.whole - self.wanted[stem]

    def unfairness(self) -> float:
        """The part of the picture that another stem than should be takes."""
        return sum(abs(self.beyond(stem)) for stem in self.wanted) / 2

    def unfairness_with(self, index: int) -> float:
        """The same, were this head lifted too."""
        shown, own, away = self._shown(index), self.blooms[index].stem.id, 0.0
        for stem, cells in self.seen.items():
            left = (cells | shown if stem == own else cells & ~shown).bit_count()
            away += abs(left / self.whole - self.wanted[stem])
        return away / 2

    def lift(self, index: int) -> None:
        """Lay this head over all that isn't lifted, or lies higher up."""
        shown, own = self._shown(index), self.blooms[index].stem.id
        for stem, cells in self.seen.items():
            self.seen[stem] = cells | shown if stem == own else cells & ~shown
        self.lifted.append(index)

    def _shown(self, index: int) -> int:
        """The cells a head takes once it is lifted: lower ones that are lifted stay before it."""
        shown = self.masks[index]
        for other in self.lifted:
            if self.blooms[other].at.y > self.blooms[index].at.y:
                shown &= ~self.masks[other]
        return shown


def _wanted(blooms: Sequence[Bloom], covered: Sequence[int]) -> dict[str, float]:
    """Each stem's share as worked out; else as if all heads, drawn or not, hid each other alike."""
    drawn = Counter(bloom.stem.id for bloom in blooms)
    own = dict.fromkeys(drawn, 0.0)
    for bloom, mask in zip(blooms, covered, strict=True):
        stem = bloom.stem
        cells = mask.bit_count() * max(1, stem.heads_per_stem)
        own[stem.id] += (stem.shows_cm2 or cells) * stem.count / drawn[stem.id]
    whole = sum(own.values()) or 1
    return {stem: area / whole for stem, area in own.items()}
