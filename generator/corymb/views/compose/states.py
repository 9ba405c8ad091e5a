"""Which words do the four states of a week go by, on pages, in script and in the terminal?"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from corymb.language import gettext as _
from corymb.language import noted
from corymb.trade.season.best import BestState

STATE_WORDS: Mapping[BestState, str] = MappingProxyType(
    {
        "pictured": noted("as pictured"),
        "variant": noted("with a variant"),
        "swaps": noted("with swaps"),
        "none": noted("not then"),
    }
)
"""In the order in which they are told, the best first."""


def words_of_states() -> dict[BestState, str]:
    """The same in the reader's language."""
    return {state: _(words) for state, words in STATE_WORDS.items()}
