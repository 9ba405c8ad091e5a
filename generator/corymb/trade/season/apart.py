"""Which two stems of a look are never out together, so that it can't be made as pictured?"""

from __future__ import annotations

from collections.abc import Iterable
from itertools import combinations

from corymb.trade.season.beds import Beds


def never_together(stems: Iterable[str], beds: Beds) -> tuple[str, str] | None:
    """The first two, in the order given, without a week in common; None where each two have one."""
    pairs = combinations(dict.fromkeys(stems), 2)
    return next((pair for pair in pairs if not beds.weeks(pair[0]) & beds.weeks(pair[1])), None)
