"""`corymb new recipe`: a commented recipe, ready for its method."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import click

from corymb.cli.asking import (
    TEXT,
    ask,
    id_of_new,
    refuse_taken,
    several,
    studio_as_it_is,
    write_new,
)
from corymb.cli.telling import few_of
from corymb.cli.values import Value
from corymb.cli.where import site_settings, studio_first_option, studio_folder
from corymb.studio.new_files import NewRecipe, modeline_for, recipe_text
from corymb.studio.saying import or_list
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean
from corymb.studio.values.length import parse_length
from corymb.studio.values.money import parse_price_guide
from corymb.studio.values.recipe_lines import RecipeLineText, parse_recipe_line
from corymb.studio.values.text import parse_id
from corymb.studio.values.time import parse_duration
from corymb.studio.words import DIFFICULTIES, ROLES, VESSELS

LENGTH = Value(parse_length, "length")
PRICE = Value(lambda text: parse_price_guide(text) if text.strip() else "", "price")


@click.command()
@studio_first_option
@ask("--name", "Name, as a client reads it", TEXT)
@click.option("--id", "known_as", type=Value(parse_id, "id"), help="Its id; made from the name.")
@click.option("--style", help="Its style, by id.")
@ask("--summary", "A sentence for clients", TEXT)
@ask("--difficulty", "How hard", click.Choice(DIFFICULTIES), "easy")
@ask("--time", "Time to make one", Value(parse_duration, "time"), "20 min")
@ask("--across", "How wide", LENGTH, "20 cm")
@ask("--high", "How high", LENGTH, "25 cm")
@ask("--vessel", "What kind of vessel", click.Choice(VESSELS), "jar")
@ask("--vessel-name", "What you call the vessel", TEXT, "pint jar")
@ask("--price", "Guide price like ‘from 28’, or nothing", PRICE, "", show_default=False)
@click.option("--stem", "stems", multiple=True, metavar="LINE", help="A stem: COUNT STEM, ROLE.")
def recipe(config: Path | None, known_as: str | None, style: str | None, **answers: Any) -> None:
    """Write a new recipe, as a draft that staff alone see.

    \b
    Example:
      corymb new recipe --name "Hedgerow jar" --style posy --stem "7 smoke-bush, depth"
    """
    folder = site_settings(config).studio_folder if config else studio_folder(None)
    studio = studio_as_it_is(folder)
    style = _style(studio, style)
    known_as = known_as or id_of_new(answers["name"])
    refuse_taken(studio, "recipe", known_as)
    given = [_given_line(studio, text) for text in answers.pop("stems")]
    line = Value(lambda text: _line(studio, text), "line")
    new = NewRecipe(
        vessel_kind=answers.pop("vessel"),
        stems=given or several("Its stems", line, "7 smoke-bush, depth"),
        **answers,
    )
    file = folder / "recipes" / style / f"{known_as}.yml"
    write_new(file, recipe_text(new, modeline_for(file, "recipe", folder)))
    click.echo("Give it its method, then read it over: corymb check")


def _style(studio: Studio, given: str | None) -> str:
    styles = list(studio.styles)
    if given is None:
        return str(click.prompt("Style", type=click.Choice(styles), default=styles[0]))
    if given not in styles:
        guess = did_you_mean(given, styles) or f" There are {few_of(styles)}."
        raise click.ClickException(f"There is no style called ‘{given}’.{guess}")
    return given


def _given_line(studio: Studio, text: str) -> str:
    try:
        return str(_line(studio, text))
    except ValueError as error:
        raise click.ClickException(f"--stem: {error}") from error


def _line(studio: Studio, text: str) -> RecipeLineText:
    """A line whose stem is there, and that has a role. Raises ValueError."""
    line = parse_recipe_line(text)
    if line.stem not in studio.stems:
        guess = did_you_mean(line.stem, studio.stems) or " Write it first: corymb new stem."
        raise ValueError(f"there is no stem called ‘{line.stem}’.{guess}")
    if line.role is None:
        example = replace(line, role=ROLES[0])
        raise ValueError(f"which role? Write {or_list(ROLES)} after a comma: ‘{example}’.")
    return line
