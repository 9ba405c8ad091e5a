"""`corymb season`: what stands in the beds in a week, and what can be made of it."""

from __future__ import annotations

from pathlib import Path

import click

from corymb.checks import read_and_check
from corymb.cli.days import DAY
from corymb.cli.plain import for_terminal, is_plain
from corymb.cli.speaking import speak_as
from corymb.cli.telling import sum_of, tell_problems
from corymb.cli.week_sheet import week_sheet
from corymb.cli.where import config_option, site_settings, studio_folder
from corymb.studio.studio import Studio
from corymb.studio.today import today_of
from corymb.studio.values.dates import parse_date
from corymb.views.compose.catalogue import Catalogue


@click.command()
@click.option(
    "--on",
    "day",
    type=DAY,
    metavar="DATE",
    help="For the week of this day, 2026-09-19. Without it: of today.",
)
@config_option
def season(day: str | None, config: Path | None) -> None:
    """Show what stands in the beds in a week, and what can be made.

    How sure each stem is, what is coming on, at its best and going over; the recipes of each
    style, as pictured, with a variant or with swaps; and those that soon can't be made any more.

    \b
    Examples:
      corymb season
      corymb season --on 2026-09-19
    """
    studio = _read(site_settings(config).studio_folder if config else studio_folder(None))
    speak_as(studio)
    catalogue = Catalogue(studio, "staff", parse_date(day) if day else today_of(studio))
    for line in for_terminal(week_sheet(catalogue), is_plain()):
        click.echo(line)


def _read(folder: Path) -> Studio:
    """The studio; with an error in it, what can be made is a guess."""
    studio, problems = read_and_check(folder)
    errors = [problem for problem in problems if not problem.advice]
    if studio is None or errors:
        tell_problems(errors)
        raise click.ClickException(f"{sum_of(errors)}; put them right first.")
    return studio
