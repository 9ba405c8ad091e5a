"""Is there anything to say about the colours of a mix, in a florist's words?

From where on something is said stands in studio.yml under `colour`. The words say what one sees
and never that it is wrong: a dark piece may be meant to be dark.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from corymb.language import gettext as _
from corymb.language import noted
from corymb.studio.models import ColourThresholds
from corymb.trade.colour.tally import Measures

ROUNDING = 1e-9  # what a figure on its limit may be off by

BEHIND = noted("cloth or wall behind")

TONES = 2.0
"""Colours of one hue are alike only where their lightness varies less than so many times what is
flat: a dark red with white is no sameness. A house value: common practice, no source."""


@dataclass(frozen=True)
class Finding:
    """Something to say about a mix."""

    kind: str
    """One of KINDS."""
    words: str
    """A few short sentences."""


def _flat(mix: Measures, limits: ColourThresholds) -> bool:
    return _under(mix.spread, limits.flat_below)


def _sombre(mix: Measures, limits: ColourThresholds) -> bool:
    return _under(mix.lightness, limits.sombre_below)


def _washed_out(mix: Measures, limits: ColourThresholds) -> bool:
    return _over(mix.lightness, limits.washed_out_above)


def _cold(mix: Measures, limits: ColourThresholds) -> bool:
    return _over(mix.cool, float(limits.cold_above.fraction))


def _alike(mix: Measures, limits: ColourThresholds) -> bool:
    tonal = _under(mix.spread, TONES * limits.flat_below)
    return tonal and _under(mix.hue_spread, limits.alike_below)


def _lost(mix: Measures, limits: ColourThresholds) -> bool:
    return mix.lost is not None and _over(mix.lost, float(limits.lost_above.fraction))


KINDS: dict[str, Callable[[Measures, ColourThresholds], bool]] = {
    "flat": _flat,
    "sombre": _sombre,
    "washed out": _washed_out,
    "cold": _cold,
    "alike": _alike,
    "lost": _lost,
}
"""What there may be to say, and when it holds."""

WORDS = {
    "flat": noted(
        "Flat: it is all about equally light, so nothing stands forward and nothing back."
    ),
    "sombre": noted(
        "Sombre: it is dark altogether. In a dim room the flowers run into one another."
    ),
    "washed out": noted(
        "Washed out: it is pale altogether. In strong light its shapes are hard to see."
    ),
    "cold": noted("Cold: cool colours take {cool} of what is seen, warm ones {warm}."),
    "alike": noted(
        "All alike: one family of colour, and not far apart in lightness either. "
        "It looks calm, and soon a little dull."
    ),
    "lost": noted(
        "Lost: {lost} of what is seen is nearly the colour of the {behind}. "
        "From a few steps away those flowers are gone."
    ),
}


def findings(mix: Measures, limits: ColourThresholds, behind: str = BEHIND) -> tuple[Finding, ...]:
    """All there is to say; `behind` is what the cloth or wall is called."""
    said = {
        "cool": _percent(mix.cool),
        "warm": _percent(mix.warm),
        "lost": _percent(mix.lost or 0.0),
        "behind": _(behind) if behind == BEHIND else behind,
    }
    holding = (kind for kind, holds in KINDS.items() if holds(mix, limits))
    return tuple(Finding(kind, _(WORDS[kind]).format(**said)) for kind in holding)


def kinds_of(mix: Measures, limits: ColourThresholds) -> frozenset[str]:
    """The same, by kind alone."""
    return frozenset(kind for kind, holds in KINDS.items() if holds(mix, limits))


def _over(value: float, limit: float) -> bool:
    """Plainly over: what lies on the limit but for rounding does not."""
    return value > limit + ROUNDING


def _under(value: float, limit: float) -> bool:
    return value < limit - ROUNDING


def _percent(share: float) -> str:
    return f"{round(100 * share)} %" if share >= 0.005 else _("nothing")
