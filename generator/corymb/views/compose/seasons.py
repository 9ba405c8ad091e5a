"""When can it be had? The strip of 52 weeks, and the same in sentences."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache

from corymb.language import gettext as _
from corymb.language import pgettext, spoken
from corymb.language.locales import month_names
from corymb.ledger import kept
from corymb.studio.values.season import Season
from corymb.trade.looks import Look
from corymb.trade.season.weeks import WEEKS, month_of, weeks_of
from corymb.views.compose.answers import cell_words
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.states import words_of_states
from corymb.views.compose.wording import sentence, spans_of, third_of
from corymb.views.season import CellState, SeasonView, WeekCell


@kept
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


def season_view(weeks: frozenset[int]) -> SeasonView:
    """The strip of something that stands in some weeks and doesn't in the others."""
    return _standing(weeks, spoken())


@lru_cache(maxsize=4096)
def _standing(weeks: frozenset[int], language: str) -> SeasonView:
    """Kept by the language it is said in, for the same weeks are asked for on many pages."""
    states: dict[int, CellState] = {w: "pictured" if w in weeks else "none" for w in WEEKS}
    says = {**words_of_states(), "pictured": pgettext("in the beds", "stands")}
    return _view(states, {week: says[state] for week, state in states.items()})


def _view(states: Mapping[int, CellState], says: Mapping[int, str]) -> SeasonView:
    pictured = _spans(states, "pictured") or _("not as pictured in any week of the year")
    return SeasonView(
        cells=tuple(_cells(states, says)),
        sentence=sentence(pictured),
        variant_sentence=_also(_("with a variant: {weeks}"), _spans(states, "variant")),
        swaps_sentence=_also(_("with swaps: {weeks}"), _spans(states, "swaps")),
    )


def _also(told: str, weeks: str) -> str:
    return sentence(told.format(weeks=weeks)) if weeks else ""


def _spans(states: Mapping[int, CellState], wanted: CellState) -> str:
    return spans_of(frozenset(week for week, state in states.items() if state == wanted))


def _cells(states: Mapping[int, CellState], says: Mapping[int, str]) -> Iterable[WeekCell]:
    # L10N: a week of the year, the part of the month it lies in, and what can be had then.
    told, months = _("Week {week}, {when}: {says}"), month_names()
    for week in WEEKS:
        words = told.format(week=week, when=third_of(week), says=says[week])
        yield WeekCell(week, months[month_of(week) - 1], states[week], words)
