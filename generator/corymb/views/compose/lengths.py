"""How does the studio show a length?"""

from __future__ import annotations

from corymb.language.lengths import length_in
from corymb.studio.models import StudioFile
from corymb.studio.values.length import Length, LengthRange


def length_words(length: Length | float, house: StudioFile) -> str:
    """`20 cm` or `8 in`, of a length or of so many centimetres."""
    cm = length.cm if isinstance(length, Length) else length
    return length_in(house.lengths_in, cm)


def lengths_words(lengths: LengthRange, house: StudioFile) -> str:
    """`60-90 cm` or `24-35 in`; one length where both ends are said alike."""
    return length_in(house.lengths_in, lengths.shortest_cm, lengths.longest_cm)
