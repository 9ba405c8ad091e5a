"""What stands in the beds in a week, and how sure is that?"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.beds import Beds
from corymb.trade.season.sureness import NOT
from corymb.trade.season.watch import cell_of


def by_how_sure(beds: Beds, stems: Iterable[str], week: IsoWeek) -> Mapping[str, tuple[str, ...]]:
    """The stems that may stand in a week, by the word for it; those that don't are left out."""
    found: dict[str, list[str]] = {}
    for stem in stems:
        word = beds.sure(stem, cell_of(week))
        if word != NOT:
            found.setdefault(word, []).append(stem)
    return {word: tuple(ids) for word, ids in found.items()}
