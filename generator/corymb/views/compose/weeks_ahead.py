"""What do the coming weeks bring, what goes with them, and where is the year thin?"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import groupby

from corymb.language import gettext as _
from corymb.language import pgettext
from corymb.ledger import kept
from corymb.studio.values.dates import IsoWeek
from corymb.trade.season import last_chances as chances
from corymb.trade.season.coming import InTheBeds, in_the_beds
from corymb.trade.season.uncovered import Spell, uncovered
from corymb.trade.season.watch import year_from
from corymb.trade.season.weeks import WEEKS, weeks_of
from corymb.views.compose import addresses
from corymb.views.compose.answers import answer_view, look_name, why_not
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.mending import lack_view
from corymb.views.compose.season_note import season_note
from corymb.views.compose.week_words import week_month, week_span, week_third, week_words
from corymb.views.compose.wording import middle_of, part_of_month, sentence, third_of_day
from corymb.views.pieces import Link
from corymb.views.weeks_ahead import (
    LastChanceView,
    MonthAhead,
    UncoveredSpell,
    UncoveredStyle,
    WeekAhead,
    WeeksAheadView,
)

OPEN_WEEKS = 8
"""Two months are planned week by week; the rest of the year is looked up."""


def weeks_ahead_view(catalogue: Catalogue) -> WeeksAheadView:
    """The year ahead, from the week of the build on."""
    start = IsoWeek.of(catalogue.today)
    weeks = year_from(start)
    studio, styles = catalogue.studio, uncovered_styles(catalogue)
    thin = {style.style for style in styles}
    return WeeksAheadView(
        last_chances=last_chances(catalogue, start),
        within=chances.WITHIN_WEEKS,
        best_always=_stems(catalogue, (s for s in studio.stems if _is_best_always(catalogue, s))),
        next_weeks=tuple(
            week_ahead(catalogue, week, first=week == start) for week in weeks[:OPEN_WEEKS]
        ),
        months=tuple(_months(catalogue, weeks[OPEN_WEEKS:])),
        uncovered=styles,
        covered=tuple(link for link in _style_links(catalogue) if link not in thin),
        season_note=season_note(catalogue),
    )


def week_ahead(catalogue: Catalogue, week: IsoWeek, *, first: bool = False) -> WeekAhead:
    """What a week brings in the beds; after the first, what was there before isn't told again."""
    beds, before = _in_the_beds(catalogue, week), _in_the_beds(catalogue, week.plus(-1)).at_best
    best = [stem for stem in beds.at_best if not _is_best_always(catalogue, stem)]
    return WeekAhead(
        id=str(week),
        title=_("Week {week}").format(week=week.week),
        when=week_span(week),
        coming_on=_stems(catalogue, beds.coming_on),
        at_best=_stems(catalogue, best if first else ()),
        to_best=_stems(catalogue, (s for s in best if not first and s not in before)),
        going_over=_stems(catalogue, beds.going_over),
    )


@kept
def _in_the_beds(catalogue: Catalogue, week: IsoWeek) -> InTheBeds:
    return in_the_beds(catalogue.beds, catalogue.studio.stems, week)


@kept
def _is_best_always(catalogue: Catalogue, stem: str) -> bool:
    best = catalogue.beds.at_best(stem)
    return best is not None and len(weeks_of(best)) == len(WEEKS)


def last_chances(catalogue: Catalogue, week: IsoWeek) -> tuple[LastChanceView, ...]:
    """The recipes that soon can't be made any more, and when they can be again."""
    found = chances.last_chances(catalogue.best, catalogue.makeable, week)
    return tuple(_last_chance(catalogue, chance) for chance in found)


def uncovered_styles(catalogue: Catalogue) -> tuple[UncoveredStyle, ...]:
    """The styles with weeks that have nothing, in the order of the menus."""
    spells = uncovered(catalogue.studio, catalogue.looks, catalogue.makeable, catalogue.week)
    return tuple(
        UncoveredStyle(_style_link(catalogue, style), tuple(_spell(catalogue, s) for s in of_style))
        for style, of_style in groupby(spells, key=lambda spell: spell.style)
    )


def _last_chance(catalogue: Catalogue, chance: chances.LastChance) -> LastChanceView:
    name = catalogue.studio.recipes[chance.recipe].name
    return LastChanceView(
        recipe=Link(name, addresses.of_look(catalogue.looks[chance.recipe][""])),
        last=week_words(chance.last),
        how=answer_view(catalogue, chance.best),
        why=sentence(why_not(catalogue, [chance.after])),
        again=week_third(chance.again),
    )


def _spell(catalogue: Catalogue, spell: Spell) -> UncoveredSpell:
    return UncoveredSpell(
        when=_when(spell.weeks),
        weeks=len(spell.weeks),
        nearest=Link(look_name(catalogue, spell.look), addresses.of_look(spell.look)),
        lacks=tuple(lack_view(catalogue, lack, len(spell.weeks)) for lack in spell.lacks),
    )


def _when(weeks: Sequence[int]) -> str:
    if len(weeks) == len(WEEKS):
        return _("in any week of the year")
    first, last = middle_of(weeks[0]), middle_of(weeks[-1])
    if part := part_of_month(first, last):
        # L10N: {part} is a part of a month: early July.
        return _("in {part}").format(part=part)
    start, end = third_of_day(first), third_of_day(last)
    return pgettext("parts of the year", "from {first} to {last}").format(first=start, last=end)


def _months(catalogue: Catalogue, weeks: Iterable[IsoWeek]) -> Iterable[MonthAhead]:
    for name, of_month in groupby(weeks, key=week_month):
        yield MonthAhead(name, tuple(week_ahead(catalogue, week) for week in of_month))


def _stems(catalogue: Catalogue, stems: Iterable[str]) -> tuple[Link, ...]:
    return tuple(Link(catalogue.stem(stem).name, addresses.of_stem(stem)) for stem in stems)


def _style_links(catalogue: Catalogue) -> Iterable[Link]:
    shown = {recipe.style for recipe in catalogue.recipes()}
    return (_style_link(catalogue, style) for style in catalogue.studio.styles if style in shown)


def _style_link(catalogue: Catalogue, style_id: str) -> Link:
    return Link(catalogue.studio.house.styles[style_id].plural, addresses.of_style(style_id))
