"""The year of an arrangement in spells: weeks on end with one answer, from the present on.

The weeks are those of the calendar, for the year that begins with the build; a spell that has
begun before is given from its beginning.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import groupby

from corymb.language import gettext as _
from corymb.studio.values.dates import IsoWeek
from corymb.trade.looks import Look
from corymb.trade.season.best import Best
from corymb.trade.season.sureness import WORDS
from corymb.trade.season.watch import cell_of, year_from
from corymb.views.compose.answers import answer_of, answer_view, never_words, why_not
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.week_words import thursday_of, week_words, weeks_span
from corymb.views.compose.wording import all_year, sentence, span_words
from corymb.views.season import SpellView

Weeks = list[IsoWeek]


def spells_of(
    catalogue: Catalogue, bests: Sequence[Best], page: Look | None = None
) -> tuple[SpellView, ...]:
    """The year in spells, the one of now first."""
    runs = runs_from(IsoWeek.of(catalogue.today), lambda week: _same(bests[cell_of(week) - 1]))
    following = [*runs[1:], runs[0]]
    return tuple(
        _spell(catalogue, bests, run, after, page)
        for run, after in zip(runs, following, strict=True)
    )


def runs_from(start: IsoWeek, kind: Callable[[IsoWeek], object]) -> list[Weeks]:
    """The year from `start` on in weeks of one kind; the first reaches back to its beginning."""
    runs = [list(run) for _, run in groupby(year_from(start), key=kind)]
    if len(runs) > 1 and kind(runs[0][0]) == kind(runs[-1][0]):
        runs.pop()
    while len(runs) > 1 and kind(before := runs[0][0].plus(-1)) == kind(start):
        runs[0].insert(0, before)
    return runs


def sure_words(bests: Sequence[Best]) -> str:
    """How sure a run of weeks is: as its best week, and where in it that is less."""
    words = [WORDS.index(best.sure) for best in bests]
    best, worst = min(words), max(words)
    if best == worst:
        return trade_word("sureness", WORDS[best])
    most, least = (trade_word("sureness", WORDS[word]) for word in (best, worst))
    return _where(words, best, worst).format(most=most, least=least)


def _where(words: Sequence[int], best: int, worst: int) -> str:
    """In what part of the run it is less sure than in the rest."""
    first, last = words.index(best), len(words) - words[::-1].index(best)
    at_the_start, at_the_end = worst in words[:first], worst in words[last:]
    if set(words[first:last]) != {best}:
        return _("{most}, {least} in part")
    if at_the_start and at_the_end:
        return _("{most}, {least} at both ends")
    return _("{most}, {least} at the start") if at_the_start else _("{most}, {least} at the end")


def _same(best: Best) -> tuple[object, ...]:
    return (best.state, *([best.look.id, best.answer.swaps] if best.state != "none" else []))


def _spell(
    catalogue: Catalogue, bests: Sequence[Best], run: Weeks, after: Weeks, page: Look | None
) -> SpellView:
    of_run = [bests[cell_of(week) - 1] for week in run]
    answer = answer_view(catalogue, of_run[0], page)
    whole = run == after
    if answer.state == "none" and whole:
        answer = replace(answer, blocks=sentence(never_words(catalogue, bests)))
    elif answer.state == "none":
        look = bests[cell_of(after[0]) - 1].look
        lacks = why_not(catalogue, [answer_of(catalogue, best, look) for best in of_run])
        again = _("Again from {week}.").format(week=week_words(after[0]))
        answer = replace(answer, blocks=sentence(lacks), nearest=again)
    when = all_year() if whole else span_words(thursday_of(run[0]), thursday_of(run[-1]))
    weeks = _("every week") if whole else weeks_span(run[0], run[-1])
    # A whole year has no start and no end of its own: told twice, what is less sure is within it.
    sure = sure_words(of_run * 2 if whole else of_run)
    return SpellView(sentence(when).rstrip("."), weeks, sure, answer)
