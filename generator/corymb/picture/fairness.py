"""Does each stem get its fair part of the picture? Fillers that hide come forward until it does.

Heads that stand in front hide those behind, so the picture would be all focal heads. Each stem
should show as large a part of itself as any other; where filler shows less, the picture is truer
with one more of its heads lying before the focal ones, as they do in a bunch that is held.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from corymb.picture.forms import FORMS, Facing
from corymb.picture.gaps import covers
from corymb.picture.layout import Band, Bloom
from corymb.picture.placing import is_long

FINE = 44  # cells across the picture; finer changes nothing that one can see
MOST_MOVES = 24
LEAST_GAIN = 0.0015  # of the whole: less is not worth a head out of its order


def shared_out(blooms: Sequence[Bloom]) -> list[Bloom]:
    """The same heads in the same places, some of the filler lifted to the front."""
    if not blooms:
        return []
    masks, lifted = _masks(blooms), list[int]()
    wanted, may = _wanted(blooms, masks), [i for i, one in enumerate(blooms) if _may_come(one)]
    behind = sorted(range(len(blooms)), key=lambda i: (-blooms[i].band, -blooms[i].at.y))
    seen = _seen(blooms, masks, behind, lifted)
    for _ in range(MOST_MOVES):
        short = sorted({blooms[i].stem.id for i in may}, key=lambda id: seen[id] - wanted[id])[:2]
        tries = [
            (_unfairness(_seen(blooms, masks, behind, [*lifted, i]), wanted), i)
            for i in may
            if i not in lifted and blooms[i].stem.id in short
        ]
        best, index = min(tries, default=(1.0, -1))
        if _unfairness(seen, wanted) - best < LEAST_GAIN:
            break
        lifted.append(index)
        seen = _seen(blooms, masks, behind, lifted)
    return [
        replace(bloom, band=Band.FRONT, lift=1) if index in lifted else bloom
        for index, bloom in enumerate(blooms)
    ]


def _may_come(bloom: Bloom) -> bool:
    """Line and leaf stay behind, and long heads with them: their feet would be seen to float."""
    return bloom.stem.use in ("filler", "focal") and not is_long(bloom.stem)


def _wanted(blooms: Sequence[Bloom], masks: list[int]) -> dict[str, float]:
    """Each stem's share if all heads, drawn or not, hid each other alike."""
    drawn = Counter(bloom.stem.id for bloom in blooms)
    own: Counter[str] = Counter()
    for bloom, mask in zip(blooms, masks, strict=True):
        heads = bloom.stem.count * max(1, bloom.stem.heads_per_stem)
        own[bloom.stem.id] += mask.bit_count() * heads / drawn[bloom.stem.id]  # type: ignore[assignment]
    whole = sum(own.values()) or 1
    return {stem: area / whole for stem, area in own.items()}


def _unfairness(seen: dict[str, float], wanted: dict[str, float]) -> float:
    """The part of the picture that another stem than should be takes."""
    return sum(abs(seen[stem] - share) for stem, share in wanted.items()) / 2


def _seen(
    blooms: Sequence[Bloom], masks: list[int], behind: list[int], lifted: list[int]
) -> dict[str, float]:
    """Each stem's share of what the heads cover, counted from the nearest head back."""
    order = sorted(lifted, key=lambda i: -blooms[i].at.y)
    order += [index for index in behind if index not in lifted]
    hidden, seen = 0, dict.fromkeys((bloom.stem.id for bloom in blooms), 0)
    for index in order:
        before, hidden = hidden, hidden | masks[index]
        if hidden != before:
            seen[blooms[index].stem.id] += (hidden ^ before).bit_count()
    whole = hidden.bit_count() or 1
    return {stem: cells / whole for stem, cells in seen.items()}


def _masks(blooms: Sequence[Bloom]) -> list[int]:
    """What each head covers of a fine grid over all of them, a bit a cell."""
    box = blooms[0].reach
    for bloom in blooms:
        box = box.joined(bloom.reach)
    step = max(box.width, box.height) / FINE
    return [_mask(bloom, box.left, box.top, step) for bloom in blooms]


def _mask(bloom: Bloom, left: float, top: float, step: float) -> int:
    mask = 0
    for x, y, r in _circles(bloom):
        for row in range(max(0, int((y - r - top) / step)), int((y + r - top) / step) + 1):
            aside = r * r - (top + (row + 0.5) * step - y) ** 2
            if aside > 0:
                first = max(0, round((x - aside**0.5 - left) / step))
                cells = round((x + aside**0.5 - left) / step) - first
                mask |= ((1 << max(0, cells)) - 1) << (row * FINE * 2 + first)
    return mask


def _circles(bloom: Bloom) -> list[tuple[float, float, float]]:
    if FORMS[bloom.stem.form].facing is Facing.HANGING:
        return [
            (bloom.at.x, bloom.at.y + bloom.length_cm * t, bloom.stem.head_cm * 0.3)
            for t in (0.2, 0.4, 0.6, 0.8)
        ]
    return covers(bloom)
