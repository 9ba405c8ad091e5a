"""`corymb cut`: what to cut for the orders of some days, bed by bed, from what stands."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import click

from corymb.checks import read_and_check
from corymb.cli.cut_sheet import cut_sheet
from corymb.cli.days import long_day
from corymb.cli.plain import for_terminal, is_plain
from corymb.cli.speaking import speak_as
from corymb.cli.telling import Progress, path_from_here, sum_of, tell_problems
from corymb.cli.values import Value
from corymb.cli.where import config_option, site_settings, studio_folder
from corymb.site.tables import csv_file
from corymb.studio.studio import Studio
from corymb.studio.today import today_of
from corymb.studio.values.dates import parse_date
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.cutting_ahead import CuttingAhead
from corymb.trade.orders.due import Due
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cut_table import cut_table

DATE = Value(parse_date, "date")


@click.command()
@click.option(
    "--from", "first", type=DATE, metavar="DATE", required=True, help="The first day, 2026-09-14."
)
@click.option(
    "--to", "last", type=DATE, metavar="DATE", help="The last day. Without it: the first alone."
)
@click.option(
    "--csv",
    "file",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Write a table for spreadsheets as well: a row a stem and order.",
)
@config_option
def cut(first: str, last: str | None, file: Path | None, config: Path | None) -> None:
    """Plan what to cut for the orders that are wanted in some days.

    By cutting day, in the order of the beds: how many, in which steps, into which buckets; then
    for each order the swaps and why, what to buy in, and what is missing. Whatever else is cut
    on the same day is planned with it, from the walk that counts on that day.

    \b
    Examples:
      corymb cut --from 2026-09-19
      corymb cut --from 2026-09-14 --to 2026-09-27 --csv cut.csv
    """
    from_day, to_day = parse_date(first), parse_date(last or first)
    if to_day < from_day:
        raise click.ClickException(
            f"--to {to_day} is before --from {from_day}: put the earlier day first."
        )
    studio = _read(site_settings(config).studio_folder if config else studio_folder(None))
    speak_as(studio)
    catalogue = Catalogue(studio, "staff", today_of(studio))
    dues = catalogue.dues.between(from_day, to_day)
    if not dues:
        click.echo(_nothing(catalogue, from_day, to_day))
        return
    days = _planned(catalogue, dues)
    for line in for_terminal(_sheets(catalogue, days), is_plain()):
        click.echo(line)
    if file:
        file.write_bytes(csv_file(cut_table(catalogue, days), studio.house.language))
        click.echo(f"\nWrote {path_from_here(file)}")


def _planned(catalogue: Catalogue, dues: tuple[Due, ...]) -> tuple[CutDay, ...]:
    """The cutting days, with a bar for whoever waits."""
    ahead = CuttingAhead(catalogue.dues, catalogue.studio, catalogue.makeable)
    progress = Progress()
    days = ahead.of(dues, lambda done, total: progress("Planning", done, total))
    progress.end()
    return days


def _sheets(catalogue: Catalogue, days: tuple[CutDay, ...]) -> Iterator[str]:
    for place, day in enumerate(days):
        if place:
            yield from ("", "")
        yield from cut_sheet(catalogue, day)


def _nothing(catalogue: Catalogue, first: date, last: date) -> str:
    """That nothing is wanted then, and when the next thing is."""
    when = (
        f"on {long_day(first)}" if first == last else f"from {long_day(first)} to {long_day(last)}"
    )
    ahead = catalogue.dues.between(last, date(last.year + 1, last.month, min(last.day, 28)))
    if not ahead:
        return f"Nothing is wanted {when}, nor in the year after."
    after = ahead[0]
    return (
        f"Nothing is wanted {when}, so nothing has to be cut. The next is {after.name}, on "
        f"{long_day(after.day)}: corymb cut --from {after.day}"
    )


def _read(folder: Path) -> Studio:
    """The studio; with an error in it, nobody should go out and cut."""
    studio, problems = read_and_check(folder)
    errors = [problem for problem in problems if not problem.advice]
    if studio is None or errors:
        tell_problems(errors)
        raise click.ClickException(f"{sum_of(errors)}; put them right first.")
    return studio
