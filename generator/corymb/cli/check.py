"""`corymb check`: everything that is wrong with a studio's files, before anyone else sees it."""

from __future__ import annotations

from pathlib import Path

import click

from corymb.checks import read_and_check
from corymb.cli.telling import sum_of, tell_problems
from corymb.cli.where import config_option, site_settings, studio_folder
from corymb.studio.saying import counted
from corymb.studio.studio import Studio


@click.command()
@click.argument("studio", type=click.Path(path_type=Path), required=False)
@config_option
@click.option("--strict", is_flag=True, help="Advice, too, ends with exit code 1.")
def check(studio: Path | None, config: Path | None, strict: bool) -> None:
    """Read a studio's files over.

    Errors and advice come one a line, each with its file, line and column.

    \b
    Examples:
      corymb check                    the studio in this folder
      corymb check my-studio/content
    """
    folder = site_settings(config).studio_folder if config else studio_folder(studio)
    found, problems = read_and_check(folder)
    tell_problems(problems, with_lines=False)
    click.echo(f"{sum_of(problems) or 'Nothing to put right'}{_in_what(found)}.")
    if any(strict or not problem.advice for problem in problems):
        raise click.exceptions.Exit(1)


def _in_what(studio: Studio | None) -> str:
    if studio is None:
        return ""
    stems = counted(len(studio.stems), "stem", "stems")
    recipes = counted(len(studio.recipes), "recipe", "recipes")
    return f" in {stems} and {recipes}"
