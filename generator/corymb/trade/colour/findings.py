"""Is there anything to say about the colours of a mix, in a florist's words?

From where on something is said stands in studio.yml under `colour`. The words say what one sees
and never that it is wrong: a dark piece may be meant to be dark.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from corymb.studio.models import ColourThresholds
from corymb.trade.colour.tally import Measures

ROUNDING = 1e-9

BEHIND = "cloth or wall behind"


@dataclass(frozen=True)
class Finding:
    """Something to say about a mix."""

    kind: str
    """One of KINDS."""
    words: str
    """A few short sentences."""


def _flat(mix: Measures, limits: ColourThresholds, _: str) -> str:
    if not _under(mix.spread, limits.flat_below):
        return ""
    return "Flat: it is all about equally light, so nothing stands forward and nothing back."


def _sombre(mix: Measures, limits: ColourThresholds, _: str) -> str:
    if not _under(mix.lightness, limits.sombre_below):
        return ""
    return "Sombre: it is dark altogether. In a dim room the flowers run into one another."


def _washed_out(mix: Measures, limits: ColourThresholds, _: str) -> str:
    if not _over(mix.lightness, limits.washed_out_above):
        return ""
    return "Washed out: it is pale altogether. In strong light its shapes are hard to see."


def _cold(mix: Measures, limits: ColourThresholds, _: str) -> str:
    if not _over(mix.cool, float(limits.cold_above.fraction)):
        return ""
    return f"Cold: cool colours take {_percent(mix.cool)} of what is seen, warm ones " + (
        f"{_percent(mix.warm)}." if mix.warm >= 0.005 else "nothing."
    )


def _alike(mix: Measures, limits: ColourThresholds, _: str) -> str:
    if not _under(mix.hue_spread, limits.alike_below):
        return ""
    return "All alike: every colour is of one family. It looks calm, and soon a little dull."


def _lost(mix: Measures, limits: ColourThresholds, behind: str) -> str:
    if mix.lost is None or not _over(mix.lost, float(limits.lost_above.fraction)):
        return ""
    return (
        f"Lost: {_percent(mix.lost)} of what is seen is nearly the colour of the {behind}. "
        "From a few steps away those flowers are gone."
    )


KINDS: dict[str, Callable[[Measures, ColourThresholds, str], str]] = {
    "flat": _flat,
    "sombre": _sombre,
    "washed out": _washed_out,
    "cold": _cold,
    "alike": _alike,
    "lost": _lost,
}
"""What there may be to say, each with its words; none where it doesn't hold."""


def findings(mix: Measures, limits: ColourThresholds, behind: str = BEHIND) -> tuple[Finding, ...]:
    """All there is to say; `behind` is what the cloth or wall is called."""
    told = ((kind, words(mix, limits, behind)) for kind, words in KINDS.items())
    return tuple(Finding(kind, words) for kind, words in told if words)


def kinds_of(mix: Measures, limits: ColourThresholds) -> frozenset[str]:
    """The same, by kind alone."""
    return frozenset(kind for kind, words in KINDS.items() if words(mix, limits, BEHIND))


def _over(value: float, limit: float) -> bool:
    """Plainly over: what lies on the limit but for rounding does not."""
    return value > limit + ROUNDING


def _under(value: float, limit: float) -> bool:
    return value < limit - ROUNDING


def _percent(share: float) -> str:
    return f"{round(100 * share)} %"
