"""What comes nearest to standing in for a stem, where nothing within the limits does?

So that a studio knows what to grow, or which variant to write. It may break any of the limits
(`limits`), or stand in most of the weeks and not in all, but its use is that of what goes out. It
is never a stem whose hazards the style leaves out. All numbers are house values: common
practice, no source.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property

from corymb.studio.models import Stem, Style
from corymb.trade.changes import LookLine
from corymb.trade.swaps.beside import Facts, Pair, facts_of
from corymb.trade.swaps.fitting import HARMFUL, unfit
from corymb.trade.swaps.limits import SwapLimits, limits_broken
from corymb.trade.swaps.standing_in import StandIn

A_WEEK_WITHOUT = 40.0
"""What it costs to stand in none of the weeks asked for; in half of them, half as much."""

MOST_WEEKS = 0.5
"""A stem that stands in a smaller part of the weeks mends nothing."""

A_BROKEN_LIMIT = 8.0
"""What it costs not to keep to a limit of the style, the role or the count. Colour costs itself."""


@dataclass(frozen=True)
class Nearest:
    """The swap that comes nearest, and what speaks against it."""

    swap: StandIn
    weeks: int
    """In how many of the weeks asked for it stands."""
    against: tuple[str, ...]
    """The limits it breaks, in words; none where only the recipe itself rules it out."""


@dataclass(frozen=True)
class Place:
    """Where something is looked for: a line of a look, in a style, in some weeks."""

    line: LookLine
    style: Style
    weeks: Mapping[str, int]
    """In how many of the weeks each stem stands."""
    asked: int
    """How many weeks there are."""
    barred: Collection[str]
    """Stems that are in the look already."""


class Beyond:
    """Looks beyond the limits of `StandIns` among a studio's stems."""

    def __init__(self, stems: Mapping[str, Stem], limits: SwapLimits) -> None:
        self._stems = stems
        self._limits = limits

    @cached_property
    def _facts(self) -> dict[str, Facts]:
        return {stem_id: facts_of(stem_id, stem) for stem_id, stem in sorted(self._stems.items())}

    def nearest(self, place: Place) -> Nearest | None:
        """The best that could be had by hand; None where nothing of the use stands then."""
        out = self._facts[place.line.stem]
        ways = []
        for coming in self._harmless(place):
            pair = Pair(out, coming)
            against = limits_broken(pair, place.line, place.style, self._limits)
            without = 1 - place.weeks.get(coming.id, 0) / place.asked
            cost = pair.score + A_WEEK_WITHOUT * without + A_BROKEN_LIMIT * len(against)
            ways.append((cost, coming.id, pair, against))
        if not ways:
            return None
        _, best, pair, against = min(ways, key=lambda way: way[:2])
        return Nearest(StandIn.of(pair, place.line), place.weeks[best], against)

    def _harmless(self, place: Place) -> Iterator[Facts]:
        """All of the use that stand long enough and can't hurt in the style."""
        line, here = place.line, {place.line.stem, *place.barred}
        use = line.use or self._facts[line.stem].use
        for each in self._facts.values():
            stands = place.weeks.get(each.id, 0) >= MOST_WEEKS * place.asked
            harms = HARMFUL in unfit(each.stem, place.style)
            if each.use == use and stands and not harms and each.id not in here:
                yield each
