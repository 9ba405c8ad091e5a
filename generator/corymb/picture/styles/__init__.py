"""Which outline does a style have? One file each and a line in this list.

A studio's own styles are not in the list: they take the outline that suits their vessel.
"""

from collections.abc import Callable
from dataclasses import dataclass

from corymb.picture.arrangement import Arrangement
from corymb.picture.layout import Layout
from corymb.picture.styles import (
    buttonhole,
    crown,
    hand_tie,
    posy,
    standing_piece,
    table_centre,
)


@dataclass(frozen=True)
class Style:
    """How a style is laid out; `lying` pieces lie on the table and are seen from above.

    A `ring` is bound to a ring whatever its vessel is called; `cut_down` takes stems apart.
    """

    lay: Callable[[Arrangement], Layout]
    lying: bool = False
    ring: bool = False
    cut_down: Callable[[Arrangement], Arrangement] | None = None

    def as_used(self, arrangement: Arrangement) -> Arrangement:
        """The arrangement with its stems as they go in: whole, or in small pieces as sprigs."""
        return self.cut_down(arrangement) if self.cut_down else arrangement


STYLES: dict[str, Style] = {
    "posy": Style(posy.lay),
    "table-centre": Style(table_centre.lay),
    "bridal-hand-tie": Style(hand_tie.lay),
    "standing-piece": Style(standing_piece.lay),
    "buttonhole": Style(buttonhole.lay, lying=True, cut_down=buttonhole.cut_down),
    "crown": Style(crown.lay, lying=True, ring=True, cut_down=crown.cut_down),
}

BY_VESSEL = {
    "ring": "crown",
    "wire": "buttonhole",
    "trough": "table-centre",
    "urn": "standing-piece",
}


def style_of(arrangement: Arrangement) -> Style:
    """The style by its name; else by vessel; else low, tall or round by its proportions."""
    if arrangement.style in STYLES:
        return STYLES[arrangement.style]
    if arrangement.vessel.kind in BY_VESSEL:
        return STYLES[BY_VESSEL[arrangement.vessel.kind]]
    if arrangement.across_cm > 1.6 * arrangement.high_cm:
        return STYLES["table-centre"]
    if arrangement.high_cm > 60:
        return STYLES["standing-piece"]
    return STYLES["bridal-hand-tie" if arrangement.vessel.kind == "hand" else "posy"]
