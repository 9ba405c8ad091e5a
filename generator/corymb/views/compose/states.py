"""Which words do the four states of a week go by, on pages, in script and in the terminal?"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from corymb.trade.season.best import BestState

STATE_WORDS: Mapping[BestState, str] = MappingProxyType(
    {
        "pictured": "as pictured",
        "variant": "with a variant",
        "swaps": "with swaps",
        "none": "not then",
    }
)
"""In the order in which they are told, the best first."""
