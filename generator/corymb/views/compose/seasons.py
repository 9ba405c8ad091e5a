"""When can it be had? The strip of 52 weeks, and the same as a sentence."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from typing import Literal

from corymb.studio.models import Stem
from corymb.studio.words import MONTHS
from corymb.trade.looks import Look
from corymb.trade.weeks import WEEKS, month_of, weeks_added, weeks_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.wording import sentence, spans_of, third_of
from corymb.views.pieces import SeasonView, WeekCell

SAYS = {"pictured": "as pictured", "variant": "with a variant", "none": "not then"}


def season_of_look(catalogue: Catalogue, look: Look) -> SeasonView:
    """A look's own weeks, and on a recipe's page the weeks its variants add."""
    own = catalogue.weeks[look.id]
    others = [
        catalogue.weeks[other.id]
        for other in catalogue.looks[look.recipe].values()
        if not look.variant and other.variant
    ]
    return season_view(own, weeks_added(own, others))


def season_of_stem(stem: Stem) -> SeasonView:
    """The weeks in which a stem can be cut."""
    return season_view(weeks_of(stem.in_season), frozenset())


@lru_cache(maxsize=4096)
def season_view(pictured: frozenset[int], variant: frozenset[int]) -> SeasonView:
    """The strip of weeks that are as pictured, and of those that need a variant."""
    also = spans_of(variant)
    return SeasonView(
        cells=tuple(_cells(pictured, variant)),
        sentence=sentence(spans_of(pictured) or "not as pictured in any week of the year"),
        variant_sentence=sentence(f"with a variant: {also}" if also else ""),
    )


def _cells(pictured: frozenset[int], variant: frozenset[int]) -> Iterable[WeekCell]:
    for week in WEEKS:
        state: Literal["pictured", "variant", "none"] = "none"
        if week in pictured:
            state = "pictured"
        elif week in variant:
            state = "variant"
        month = MONTHS[month_of(week) - 1]
        yield WeekCell(week, month, state, f"Week {week}, {third_of(week)}: {SAYS[state]}")
