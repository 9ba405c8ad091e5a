"""`corymb repeat`: an old order, or a standing order's visit or whole year, at a new date."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import NoReturn

import click

from corymb.cli.asking import write_new
from corymb.cli.days import long_day
from corymb.cli.plain import for_terminal, is_plain
from corymb.cli.reading import whole_studio
from corymb.cli.repeat_files import NewFile, order_file, standing_file, visit_file
from corymb.cli.repeat_sheet import repeat_sheet
from corymb.cli.speaking import speak_as
from corymb.cli.telling import few_of, path_from_here
from corymb.cli.values import Value
from corymb.cli.where import config_option, site_settings, studio_folder
from corymb.cli.year_sheet import year_sheet
from corymb.studio.models import Order, StandingOrder
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean
from corymb.studio.values.dates import YEARS, parse_date
from corymb.studio.values.text import parse_id
from corymb.trade.hours.visits import next_visit, visits
from corymb.trade.orders.laid_out import coming_of
from corymb.trade.orders.next_year import next_year
from corymb.trade.orders.repeated import Repeating
from corymb.trade.season.makeable import Makeable


@dataclass(frozen=True)
class Asked:
    """What is wanted of the new order."""

    day: str | None
    year: int | None
    known_as: str | None
    take_swaps: bool
    dry: bool


@click.command()
@click.argument("order")
@click.option(
    "--on", "day", type=Value(parse_date, "date"), metavar="DATE", help="The new day: 2027-09-18."
)
@click.option(
    "--year",
    type=click.IntRange(YEARS.start, YEARS.stop - 1),
    help="For a standing order: the whole of it for another year.",
)
@click.option(
    "--id", "known_as", type=Value(parse_id, "id"), help="The new id; without it, one with a year."
)
@click.option("--take-swaps", is_flag=True, help="Note the swaps beside their lines in the file.")
@click.option("--dry", is_flag=True, help="Only tell; write nothing.")
@config_option
def repeat(
    order: str,
    day: str | None,
    year: int | None,
    known_as: str | None,
    take_swaps: bool,
    dry: bool,
    config: Path | None,
) -> None:
    """Take an old order to a new day.

    Writes a new file beside the old one, with your comments in it, and tells what can be made
    then, what it costs now, what was sent lately, and what you noted last time. A variant that
    can be made as pictured is taken; swaps are offered, since the walk decides at the cut.

    \b
    Examples:
      corymb repeat barn-supper --on 2027-09-18 --dry
      corymb repeat lantern-house --on 2026-09-22     one visit, written out
      corymb repeat lantern-house --year 2027         a year of visits, and its thin weeks
    """
    studio = whole_studio(site_settings(config).studio_folder if config else studio_folder(None))
    speak_as(studio)
    asked = Asked(day, year, known_as, take_swaps, dry)
    if (day is None) == (year is None):
        raise click.ClickException("Say for when: --on DATE, or --year YEAR for a standing order.")
    if year is not None:
        _year(studio, _standing(studio, order), asked)
    elif order in studio.standing_orders and order not in studio.orders:
        _visit(studio, studio.standing_orders[order], asked)
    else:
        _order(studio, _found(studio, order), asked)


def _found(studio: Studio, wanted: str) -> Order:
    return studio.orders.get(wanted) or _missing(wanted, [*studio.orders, *studio.standing_orders])


def _standing(studio: Studio, wanted: str) -> StandingOrder:
    if wanted in studio.orders and wanted not in studio.standing_orders:
        raise click.ClickException(
            f"‘{wanted}’ is an order for one day. Say which: --on DATE. A whole --year is for "
            "standing orders."
        )
    return studio.standing_orders.get(wanted) or _missing(wanted, list(studio.standing_orders))


def _missing(wanted: str, known: list[str]) -> NoReturn:
    there = f" There are {few_of(known)}." if known else " There are none yet."
    guess = did_you_mean(wanted, known) or there
    raise click.ClickException(f"There is no order called ‘{wanted}’.{guess}")


def _order(studio: Studio, old: Order, asked: Asked) -> None:
    told = Repeating(studio, Makeable.of(studio)).order(old, parse_date(asked.day or ""))
    _tell(list(repeat_sheet(studio, told)))
    _write(order_file(studio, told, asked.known_as, asked.take_swaps), asked.dry)


def _visit(studio: Studio, standing: StandingOrder, asked: Asked) -> None:
    day = parse_date(asked.day or "")
    told = Repeating(studio, Makeable.of(studio)).visit(standing.id, day)
    if told is None:
        _no_visit(studio, standing, asked)
    _tell(list(repeat_sheet(studio, told)))
    _write(visit_file(studio, told, asked.known_as, asked.take_swaps), asked.dry)


def _no_visit(studio: Studio, standing: StandingOrder, asked: Asked) -> NoReturn:
    """Why there is nothing to write out on a day."""
    day, coming = parse_date(asked.day or ""), coming_of(standing)
    if visits(coming, day, day):
        written = [
            o.id for o in studio.orders.values() if (o.visit_of, o.date) == (standing.id, day)
        ]
        raise click.ClickException(
            f"The visit of {long_day(day)} is written out already, as ‘{few_of(written)}’."
        )
    after = next_visit(coming, day)
    hint = (
        f" The next is on {long_day(after.day)}: --on {after.day}."
        if after
        else f" For another year: corymb repeat {standing.id} --year {day.year}."
    )
    raise click.ClickException(f"{standing.name} has no visit on {long_day(day)}.{hint}")


def _year(studio: Studio, standing: StandingOrder, asked: Asked) -> None:
    year, makeable = asked.year or 0, Makeable.of(studio)
    file = standing_file(studio, standing, year, asked.known_as)
    try:
        told = next_year(studio, makeable, standing, year, file.id)
    except ValueError as error:
        raise click.ClickException(str(error)) from error
    _tell(list(year_sheet(studio, makeable, standing, told)))
    _write(file, asked.dry)


def _tell(lines: list[str]) -> None:
    for line in for_terminal(lines, is_plain()):
        click.echo(line)


def _write(new: NewFile, dry: bool) -> None:
    click.echo()
    if dry:
        click.echo(f"Nothing was written. Without --dry it would be {path_from_here(new.file)}")
        return
    write_new(new.file, new.text)
    for note in new.notes:
        click.echo(note)
