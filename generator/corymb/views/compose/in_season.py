"""The year at a glance: every recipe's weeks beside those of its stems, and what each month has."""

from __future__ import annotations

from collections.abc import Iterable

from corymb.language.locales import month_names
from corymb.studio.models import Recipe
from corymb.studio.words import MONTHS
from corymb.trade.season.weeks import WEEKS, month_of, weeks_of
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.seasons import season_of_look, season_of_stem
from corymb.views.compose.week_words import day_words
from corymb.views.pieces import Link
from corymb.views.season import InSeasonView, MonthView, RecipeYear, StripRow, StyleYear


def in_season_view(catalogue: Catalogue) -> InSeasonView:
    """The page of the year, opened at the month of the day of the build."""
    recipes = {recipe.id: _recipe_year(catalogue, recipe) for recipe in catalogue.recipes()}
    numbers = range(1, len(MONTHS) + 1)
    months = tuple(_month(catalogue, recipes, number) for number in numbers)
    return InSeasonView(
        made_on=day_words(catalogue.today),
        now=months[catalogue.today.month - 1],
        styles=tuple(_styles(catalogue, recipes)),
        months=months,
    )


def month_id(number: int) -> str:
    """The anchor of a month, 1 to 12; the same in every language."""
    return MONTHS[number - 1].lower()


def _recipe_year(catalogue: Catalogue, recipe: Recipe) -> RecipeYear:
    look = catalogue.looks[recipe.id][""]
    row = StripRow(recipe.name, addresses.of_look(look), season_of_look(catalogue, look))
    stems = dict.fromkeys(line.stem for line in look.lines)
    return RecipeYear(row, tuple(_stem_row(catalogue, stem) for stem in stems))


def _stem_row(catalogue: Catalogue, stem_id: str) -> StripRow:
    season = season_of_stem(catalogue, stem_id)
    return StripRow(catalogue.stem(stem_id).name, addresses.of_stem(stem_id), season)


def _styles(catalogue: Catalogue, years: dict[str, RecipeYear]) -> Iterable[StyleYear]:
    for style in catalogue.studio.styles.values():
        own = [years[r.id] for r in catalogue.recipes() if r.style == style.id]
        if own:
            yield StyleYear(style.plural, addresses.of_style(style.id), tuple(own))


def _month(catalogue: Catalogue, years: dict[str, RecipeYear], number: int) -> MonthView:
    weeks = frozenset(week for week in WEEKS if month_of(week) == number)
    states = {
        recipe_id: {cell.state for cell in year.row.season.cells if cell.week in weeks}
        for recipe_id, year in years.items()
    }
    pictured = {recipe_id for recipe_id, has in states.items() if "pictured" in has}
    otherwise = {recipe_id for recipe_id, has in states.items() if has & {"variant", "swaps"}}
    standing = [s for s in catalogue.studio.stems if catalogue.beds.weeks(s) & weeks]
    at_best = {stem for stem in standing if _best_weeks(catalogue, stem) & weeks}
    return MonthView(
        id=month_id(number),
        name=month_names()[number - 1],
        pictured=_links(years, pictured),
        otherwise=_links(years, otherwise - pictured),
        at_best=_stem_links(catalogue, [s for s in standing if s in at_best]),
        standing=_stem_links(catalogue, [s for s in standing if s not in at_best]),
    )


def _best_weeks(catalogue: Catalogue, stem_id: str) -> frozenset[int]:
    """The weeks a flower is at its best and stands; none where nobody wrote down a best."""
    best = catalogue.beds.at_best(stem_id)
    return weeks_of(best) & catalogue.beds.weeks(stem_id) if best else frozenset()


def _links(years: dict[str, RecipeYear], chosen: set[str]) -> tuple[Link, ...]:
    rows = (year.row for recipe_id, year in years.items() if recipe_id in chosen)
    return tuple(Link(row.name, row.href) for row in rows)


def _stem_links(catalogue: Catalogue, stems: list[str]) -> tuple[Link, ...]:
    return tuple(Link(catalogue.stem(s).name, addresses.of_stem(s)) for s in stems)
