"""What does a picture need to know of a recipe? Plain values, no files and no models."""

import re
from dataclasses import dataclass

HEX = re.compile(r"#?[0-9a-fA-F]{6}")


def colour_hex(text: str) -> str:
    """`e8c2b4` or `#E8C2B4` as `#e8c2b4`; anything else would be a hole in the drawing."""
    if not HEX.fullmatch(text):
        raise ValueError(f"`{text}` is no colour; write six hexadecimal digits, as in `e8c2b4`.")
    return "#" + text.removeprefix("#").lower()


@dataclass(frozen=True)
class Vessel:
    """What holds the stems. Sizes may be left open; they are then taken from the arrangement.

    The name is read for its material (a copper bowl is drawn in copper).
    """

    kind: str = "hand"  # hand | jar | bowl | urn | ring | wire | trough | vase
    name: str = ""
    across_cm: float | None = None
    high_cm: float | None = None


@dataclass(frozen=True)
class PictureStem:
    """One line of the recipe: so many stems of one material, with what shows of it."""

    id: str
    count: int
    form: str
    use: str  # line | focal | filler | foliage
    role: str  # depth | light | accent
    colours: tuple[tuple[str, float], ...]  # hex and share, from the petals in to the heart
    green: str
    head_cm: float
    head_length_cm: float | None = None
    heads_per_stem: int = 1
    grown_heads: int = 0  # as it grows, where it has been taken apart; none where it is whole
    length_cm: float = 40.0
    name: str = ""
    shows_cm2: float = 0.0  # of one stem, where it has been worked out: the picture aims at it

    def __post_init__(self) -> None:
        if not self.colours:
            raise ValueError(f"`{self.id}` has no colour to be drawn in.")
        if not self.head_cm > 0:
            raise ValueError(f"`{self.id}` has a head of {self.head_cm} cm; it must have a size.")
        colour_hex(self.green)
        for colour, _ in self.colours:
            colour_hex(colour)


@dataclass(frozen=True)
class Arrangement:
    """One recipe, variant and size, ready to be drawn.

    `id` also seeds the drawing; what follows a double hyphen does not, so that a variant
    (`hedgerow-jar--later`) keeps its recipe's bones and shows only what was changed.
    """

    id: str
    style: str
    vessel: Vessel
    across_cm: float
    high_cm: float
    stems: tuple[PictureStem, ...]
    background: str = "f4efe6"
    name: str = ""
    description: str = ""
    lengths_in: str = "cm"  # cm | inches, in what it is said how large it is

    def __post_init__(self) -> None:
        colour_hex(self.background)
        if not (self.across_cm > 0 and self.high_cm > 0):
            raise ValueError(f"`{self.id}` needs a size: how far across and how high.")
