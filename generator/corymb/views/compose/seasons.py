"""When can it be had? The strip of 52 weeks, and the same in sentences."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache

from corymb.studio.values.season import Season
from corymb.studio.words import MONTHS
from corymb.trade.looks import Look
from corymb.trade.season.weeks import WEEKS, month_of, weeks_of
from corymb.views.compose.answers import cell_words
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.states import STATE_WORDS
from corymb.views.compose.wording import sentence, spans_of, third_of
from corymb.views.season import CellState, SeasonView, WeekCell

SAYS = {**STATE_WORDS, "pictured": "stands"}


def season_of_look(catalogue: Catalogue, look: Look) -> SeasonView:
    """A recipe's weeks by the best of its looks; a variant's by its own."""
    bests = catalogue.bests(look)
    says = {best.week: cell_words(catalogue, best, look) for best in bests}
    return _view({best.week: best.state for best in bests}, says)


def weeks_words(season: Season) -> str:
    """A season in thirds of months: `early July to mid October`."""
    return spans_of(weeks_of(season))


def season_of_stem(catalogue: Catalogue, stem_id: str) -> SeasonView:
    """The weeks in which a stem can be cut."""
    return season_view(catalogue.beds.weeks(stem_id))


@lru_cache(maxsize=4096)
def season_view(weeks: frozenset[int]) -> SeasonView:
    """The strip of something that stands in some weeks and doesn't in the others."""
    states: dict[int, CellState] = {w: "pictured" if w in weeks else "none" for w in WEEKS}
    return _view(states, {week: SAYS[state] for week, state in states.items()})


def _view(states: Mapping[int, CellState], says: Mapping[int, str]) -> SeasonView:
    also, swaps = _spans(states, "variant"), _spans(states, "swaps")
    return SeasonView(
        cells=tuple(_cells(states, says)),
        sentence=sentence(_spans(states, "pictured") or "not as pictured in any week of the year"),
        variant_sentence=sentence(f"{STATE_WORDS['variant']}: {also}" if also else ""),
        swaps_sentence=sentence(f"{STATE_WORDS['swaps']}: {swaps}" if swaps else ""),
    )


def _spans(states: Mapping[int, CellState], wanted: CellState) -> str:
    return spans_of(frozenset(week for week, state in states.items() if state == wanted))


def _cells(states: Mapping[int, CellState], says: Mapping[int, str]) -> Iterable[WeekCell]:
    for week in WEEKS:
        month = MONTHS[month_of(week) - 1]
        words = f"Week {week}, {third_of(week)}: {says[week]}"
        yield WeekCell(week, month, states[week], words)
