"""How do sixty heads stay a small file? Each stem's head is cut twice and laid many times."""

from corymb.picture.arrangement import Arrangement, PictureStem, colour_hex
from corymb.picture.colour import Palette
from corymb.picture.forms import FORMS, Facing, Head
from corymb.picture.geometry import Matrix, moved, sized, turned
from corymb.picture.layout import Bloom
from corymb.picture.seed import dice
from corymb.picture.svg import element, safe_id

LENGTHS = 3  # how many lengths a spike or a spray is cut in


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
        name = f"{self.prefix}-{order}{'abc'[step]}{piece if step == 0 else ''}"
        if name not in self.definitions:
            self.definitions[name] = self._cut(bloom.stem, length, name, piece)
        return name

    def _length(self, bloom: Bloom) -> tuple[float, int]:
        """The nearest of the few lengths this stem is cut in, and which of them it is."""
        lengths = self.lengths[id(bloom.stem)]
        longest, shortest = max(lengths), min(lengths)
        apart = (longest - shortest) / (LENGTHS - 1)
        step = round((longest - bloom.length_cm) / apart) if apart > longest * 0.02 else 0
        return longest - step * apart, step

    def _cut(self, stem: PictureStem, length_cm: float, name: str, view: int) -> str:
        head = Head(
            across=stem.head_cm * self.cm,
            length=length_cm * self.cm,
            palette=Palette.of(stem.colours),
            green=colour_hex(stem.green),
            rng=dice(self.arrangement.id, stem.id, name.rpartition("-")[2]),
            cm=self.cm,
            heads=stem.heads_per_stem,
            view=view,
        )
        drawn = FORMS[stem.form].draw(head)
        return element("g", drawn.pieces, id=name) + element("g", drawn.silhouette, id=f"{name}s")


def laid(bloom: Bloom, cm: float) -> Matrix:
    """How the cut head is turned, tilted and moved into its place."""
    facing = FORMS[bloom.stem.form].facing
    place = moved(bloom.at.x * cm, bloom.at.y * cm)
    side = sized(-1, 1) if bloom.mirrored else Matrix()
    if facing is Facing.SIDE:
        return place.then(turned(bloom.lean)).then(side)
    if facing is Facing.HANGING:
        return place.then(side)
    tilt = turned(bloom.away).then(sized(1, bloom.tilt)).then(turned(-bloom.away))
    return place.then(tilt).then(turned(bloom.turn)).then(side)
