"""Which known word did the writer most likely mean?"""

import re
from collections.abc import Iterable
from difflib import SequenceMatcher

from corymb.studio.saying import or_list

CLOSE = 0.66
"""How alike two words must be to be offered (difflib's ratio): `dyas` is two thirds of `days`."""

RIVAL = 0.05
"""How much less alike than the best a second word may be; a poorer one only confuses."""

FEW = 16
"""Up to this many known words are listed in full in a message."""


def nearest(word: str, known: Iterable[str], limit: int = 3) -> list[str]:
    """The known words most like this one, best first; case, hyphens and plurals are forgiven."""
    wanted = _bare(word)
    if not wanted:
        return []
    scored = [(_likeness(wanted, _bare(other)), other) for other in dict.fromkeys(known)]
    close = sorted((s for s in scored if s[0] >= CLOSE), key=lambda s: (-s[0], s[1]))
    if not close:
        return []
    best = close[0][0]
    least = best if best == 1.0 else best - RIVAL
    return [other for score, other in close[:limit] if score >= least]


def did_you_mean(word: str, known: Iterable[str]) -> str:
    """A question to put at the end of a message, or nothing when no known word is close."""
    close = nearest(word, known, limit=2)
    return f" Did you mean {or_list(quoted(w) for w in close)}?" if close else ""


def quoted(word: str) -> str:
    """The word in the quotation marks all messages use, shortened when it is very long."""
    flat = " ".join(word.split())
    return f"‘{flat if len(flat) <= 60 else flat[:57] + '…'}’"


def _bare(word: str) -> str:
    """A word without case, spaces, hyphens, underscores and its plural ending."""
    letters = re.sub(r"[\s_\-]+", "", word.casefold())
    if len(letters) > 3 and letters.endswith(("ches", "shes", "sses", "xes")):
        return letters[:-2]
    if len(letters) > 4 and letters.endswith("ies"):
        return letters[:-3] + "y"
    return letters[:-1] if len(letters) > 3 and letters.endswith("s") else letters


def _likeness(one: str, other: str) -> float:
    shorter, longer = sorted((len(one), len(other)))
    if 2 * shorter < CLOSE * (shorter + longer):  # too few letters to have in common
        return 0.0
    matcher = SequenceMatcher(None, one, other, autojunk=False)
    return matcher.ratio() if matcher.quick_ratio() >= CLOSE else 0.0
