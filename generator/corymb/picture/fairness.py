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
MOST_MOVES = 16
MOST_TRIES = 10  # heads tried for each move
LEAST_GAIN = 0.0015  # of the whole: less is not worth a head out of its order


def shared_out(blooms: Sequence[Bloom]) -> list[Bloom]:
    """The same heads in the same places, some of the filler lifted to the front."""
    if not blooms:
        return []
    found, masks = list(blooms), _masks(blooms)
    wanted = _wanted(found, masks)
    unfair = _unfairness(found, masks, wanted)
    for _ in range(MOST_MOVES):
        tries = [
            (_unfairness(_lifted(found, index), masks, wanted), index)
            for index in _of_the_most_hidden(found, masks, wanted)
        ]
        best, index = min(tries, default=(1.0, -1))
        if unfair - best < LEAST_GAIN:
            break
        found, unfair = _lifted(found, index), best
    return found


def _lifted(blooms: list[Bloom], index: int) -> list[Bloom]:
    lifted = replace(blooms[index], band=Band.FRONT, lift=1)
    return [*blooms[:index], lifted, *blooms[index + 1 :]]


def _of_the_most_hidden(
    blooms: list[Bloom], masks: list[int], wanted: dict[str, float]
) -> list[int]:
    """Heads that may come forward, of the two stems that show too little by the most."""
    seen = _seen(blooms, masks)
    may = [i for i, bloom in enumerate(blooms) if not bloom.lift and _may_come(bloom)]
    stems = {blooms[i].stem.id for i in may}
    short = sorted(stems, key=lambda stem: seen[stem] - wanted[stem])[:2]
    return [i for i in may if blooms[i].stem.id in short][:MOST_TRIES]


def _may_come(bloom: Bloom) -> bool:
    """Line and leaf stay behind, and long heads with them: their feet would be seen to float."""
    return bloom.stem.use in ("filler", "focal") and not is_long(bloom.stem)


def _wanted(blooms: list[Bloom], masks: list[int]) -> dict[str, float]:
    """Each stem's share if all heads, drawn or not, hid each other alike."""
    drawn = Counter(bloom.stem.id for bloom in blooms)
    own: Counter[str] = Counter()
    for bloom, mask in zip(blooms, masks, strict=True):
        heads = bloom.stem.count * max(1, bloom.stem.heads_per_stem)
        own[bloom.stem.id] += mask.bit_count() * heads / drawn[bloom.stem.id]  # type: ignore[assignment]
    whole = sum(own.values()) or 1
    return {stem: area / whole for stem, area in own.items()}


def _unfairness(blooms: list[Bloom], masks: list[int], wanted: dict[str, float]) -> float:
    """The part of the picture that another stem than should be takes."""
    seen = _seen(blooms, masks)
    return sum(abs(seen[stem] - share) for stem, share in wanted.items()) / 2


def _seen(blooms: list[Bloom], masks: list[int]) -> dict[str, float]:
    """Each stem's share of what the heads cover, counted from the nearest head back."""
    order = sorted(
        range(len(blooms)),
        key=lambda i: (blooms[i].band, blooms[i].lift, blooms[i].at.y),
        reverse=True,
    )
    hidden, seen = 0, dict.fromkeys((bloom.stem.id for bloom in blooms), 0)
    for index in order:
        seen[blooms[index].stem.id] += (masks[index] & ~hidden).bit_count()
        hidden |= masks[index]
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
