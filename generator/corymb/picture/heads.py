"""How do sixty heads stay a small file? Each stem's head is cut twice and laid many times."""

import math
from dataclasses import replace
from functools import lru_cache

from corymb.picture.arrangement import Arrangement, PictureStem, colour_hex
from corymb.picture.colour import Palette
from corymb.picture.forms import FORMS, Drawn, Facing, Head
from corymb.picture.geometry import Matrix, moved, sized, turned
from corymb.picture.layout import Bloom
from corymb.picture.seed import dice
from corymb.picture.svg import element, safe_id

LENGTHS = 3  # how many lengths a spike or a spray is cut in
SHEETS = 1  # heads are cut from sheets in so many sizes from one to twice as large
NEXT = 1.08  # a longer spray is so many times as long; what lies between is cut as the nearer


class HeadShop:
    """Cuts heads when they are first asked for, and remembers them."""

    def __init__(self, arrangement: Arrangement, blooms: tuple[Bloom, ...], cm: float) -> None:
        self.arrangement, self.cm = arrangement, cm
        self.prefix = safe_id(arrangement.id)
        self.definitions: dict[str, str] = {}
        self.lengths: dict[int, list[float]] = {}
        for bloom in blooms:
            self.lengths.setdefault(id(bloom.stem), []).append(bloom.length_cm)

    def name_of(self, bloom: Bloom) -> str:
        """The id of the cut head that this bloom shows."""
        length, step = self._length(bloom)
        order = next(i for i, stem in enumerate(self.arrangement.stems) if stem is bloom.stem)
        piece = (bloom.piece + 2 * bloom.mirrored) % FORMS[bloom.stem.form].cuts
        which = f"{'abc'[step]}{piece if step == 0 else ''}"
        name = f"{self.prefix}-{order}{which}"
        if name not in self.definitions:
            drawn = self._cut(bloom.stem, length, which, piece)
            self.definitions[name] = element("g", drawn.pieces, id=name) + element(
                "g", drawn.silhouette, id=f"{name}s"
            )
        return name

    def _length(self, bloom: Bloom) -> tuple[float, int]:
        """The nearest of the few lengths this stem is cut in, and which of them it is."""
        lengths = self.lengths[id(bloom.stem)]
        longest, shortest = max(lengths), min(lengths)
        apart = (longest - shortest) / (LENGTHS - 1)
        step = round((longest - bloom.length_cm) / apart) if apart > longest * 0.02 else 0
        return longest - step * apart, step

    def _cut(self, stem: PictureStem, length_cm: float, which: str, view: int) -> Drawn:
        """As many heads as can be are cut alike, so that they needn't be cut again."""
        recipe, _, _ = self.arrangement.id.partition("--")
        alike = replace(stem, count=1, role="light", use="focal", name="", shows_cm2=0.0)
        length = stem.head_cm * NEXT ** round(math.log(length_cm / stem.head_cm, NEXT))
        return _drawn(recipe, alike, length, cut_cm(self.cm), which, view)


def cut_cm(cm: float) -> float:
    """Units to a centimetre of the sheet that a head is cut from, to be laid a little larger."""
    return float(2 ** (round(math.log2(cm) * SHEETS) / SHEETS))


@lru_cache(maxsize=512)
def _drawn(
    recipe: str, stem: PictureStem, length_cm: float, cm: float, which: str, view: int
) -> Drawn:
    """A head's papers: a recipe's variants and sizes mostly need the same ones again."""
    head = Head(
        across=stem.head_cm * cm,
        length=length_cm * cm,
        palette=Palette.of(stem.colours),
        green=colour_hex(stem.green),
        rng=dice(recipe, stem.id, which),
        cm=cm,
        heads=stem.grown_heads or stem.heads_per_stem,
        view=view,
    )
    return FORMS[stem.form].draw(head)


def laid(bloom: Bloom, cm: float) -> Matrix:
    """How the cut head is turned, tilted and moved into its place."""
    facing = FORMS[bloom.stem.form].facing
    place = moved(bloom.at.x * cm, bloom.at.y * cm)
    larger = cm / cut_cm(cm)
    side = sized(-larger if bloom.mirrored else larger, larger)
    if facing is Facing.SIDE:
        return place.then(turned(bloom.lean)).then(side)
    if facing is Facing.HANGING:
        return place.then(side)
    tilt = turned(bloom.away).then(sized(1, bloom.tilt)).then(turned(-bloom.away))
    return place.then(tilt).then(turned(bloom.turn)).then(side)
