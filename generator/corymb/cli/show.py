"""`corymb show`: one recipe at a glance, in the terminal."""

from __future__ import annotations

from pathlib import Path
from typing import NoReturn

import click

from corymb.checks import read_and_check
from corymb.cli.days import DAY
from corymb.cli.plain import for_terminal, is_plain
from corymb.cli.sheet import Asked, sheet
from corymb.cli.speaking import speak_as
from corymb.cli.telling import few_of, sum_of, tell_problems
from corymb.cli.where import config_option, site_settings, studio_folder
from corymb.studio.models import Recipe
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean
from corymb.studio.values.dates import parse_date
from corymb.trade.changes import ChangeError
from corymb.trade.looks import looks_of
from corymb.trade.order_lines import REGULAR, sizes_of


@click.command()
@click.argument("recipe")
@click.option("--variant", default="", metavar="V", help="One of its variants, by id.")
@click.option("--size", default=REGULAR, show_default=True, metavar="S", help="One of its sizes.")
@click.option("-n", "quantity", default=1, type=click.IntRange(1), help="So many of them.")
@click.option(
    "--on",
    "day",
    type=DAY,
    metavar="DATE",
    help="As it would be in the week of this day, 2026-09-19: the look to make, its swaps.",
)
@config_option
def show(
    recipe: str, variant: str, size: str, quantity: int, day: str | None, config: Path | None
) -> None:
    """Show a recipe at a glance.

    Its stems by role, the weeks of its year, its variants, and how it is made.

    \b
    Examples:
      corymb show hedgerow-jar
      corymb show hedgerow-jar --variant later --size small -n 12
      corymb show hedgerow-jar --on 2026-10-03
    """
    studio, problems = _read(site_settings(config).studio_folder if config else studio_folder(None))
    speak_as(studio)
    found = _found(studio, problems, recipe)
    _known("variant", variant, ("", *found.variants), found)
    _known("size", size, sizes_of(found), found)
    asked = Asked(variant, size, quantity, parse_date(day) if day else None)
    for line in for_terminal(sheet(studio, found, asked), is_plain()):
        click.echo(line)


def _read(folder: Path) -> tuple[Studio, list[Problem]]:
    """The studio and its errors: those elsewhere don't keep a recipe from being shown."""
    studio, problems = read_and_check(folder)
    errors = [problem for problem in problems if not problem.advice]
    if studio is None:
        _stop(errors)
    return studio, errors


def _found(studio: Studio, problems: list[Problem], wanted: str) -> Recipe:
    """The recipe by its id, or by its name as a client reads it."""
    by_name = {r.name.casefold(): r for r in studio.recipes.values()}
    found = studio.recipes.get(wanted) or by_name.get(wanted.casefold())
    known_as = found.id if found else wanted
    own = [p for p in problems if p.file.stem == known_as and "recipes" in p.file.parts]
    if found is None and not own:
        guess = did_you_mean(wanted, studio.recipes) or f" There are {few_of(studio.recipes)}."
        raise click.ClickException(f"There is no recipe called ‘{wanted}’.{guess}")
    if found is None or not _can_be_shown(studio, found):
        _stop(own)
    return found


def _can_be_shown(studio: Studio, recipe: Recipe) -> bool:
    """Whether its changes can be made, and all it names is there; its photos don't matter here."""
    try:
        looks = looks_of(recipe, studio.recipes).values()
    except ChangeError:
        return False
    stems = [line.stem for look in looks for line in look.lines]
    return recipe.style in studio.styles and bool(stems) and set(stems) <= set(studio.stems)


def _stop(problems: list[Problem]) -> NoReturn:
    tell_problems(problems)
    raise click.ClickException(f"{sum_of(problems)}; put them right first.")


def _known(what: str, word: str, known: tuple[str, ...], recipe: Recipe) -> None:
    if word in known:
        return
    words = [each for each in known if each]
    there = f" It has {few_of(words)}." if words else f" It has no {what}s."
    guess = did_you_mean(word, words) or there
    raise click.ClickException(f"{recipe.name} has no {what} called ‘{word}’.{guess}")
