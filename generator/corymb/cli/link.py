"""`corymb link`: a page for one client, made in one line."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import click

from corymb.cli.asking import TEXT, write_new
from corymb.cli.days import DAY, long_day
from corymb.cli.looks_asked import looks_asked, refuse_drafts
from corymb.cli.looks_told import told_looks
from corymb.cli.reading import whole_studio
from corymb.cli.values import Value
from corymb.cli.where import config_option, settings_here, studio_folder
from corymb.language import gettext as _
from corymb.language import in_language
from corymb.studio.models import StyleLink
from corymb.studio.models.link import fresh_code
from corymb.studio.new_files import modeline_for
from corymb.studio.new_links import STANDS, NewLink, free_id, link_text
from corymb.studio.studio import Studio
from corymb.studio.today import today_of
from corymb.studio.values.dates import parse_date
from corymb.studio.values.text import parse_id
from corymb.views.compose import addresses
from corymb.views.compose.orders.when import day_in_full

DATE = Value(parse_date, "date")


@click.command()
@click.argument("recipes", nargs=-1, required=True, metavar="RECIPE...")
@click.option("--for", "day", type=DAY, required=True, metavar="DATE", help="The flowers' day.")
@click.option("--title", type=TEXT, help="The page's heading. Without it: the day.")
@click.option("--note", default="", metavar="TEXT", help="Words for the client, above the looks.")
@click.option("--expires", type=DATE, metavar="DATE", help="Its last day; three weeks on.")
@click.option("--client", default="", metavar="NAME", help="Private: who it is for.")
@click.option("--id", "known_as", type=Value(parse_id, "id"), help="The file's name.")
@config_option
def link(
    recipes: tuple[str, ...],
    day: str,
    title: str | None,
    note: str,
    expires: str | None,
    client: str,
    known_as: str | None,
    config: Path | None,
) -> None:
    """Make a page for one client, with the looks to choose from.

    Its address can't be guessed and no search finds it. It shows each look as it will be on the
    day, and how to answer; after its last day it is gone.

    \b
    Examples:
      corymb link hedgerow-jar gleaners-trough --for 2027-09-18
      corymb link "hedgerow-jar, later, small" --for 2027-09-18 --client "the barn committee"
      corymb link font-bowl --for 2027-05-29 --title "For your wedding" --note "Which bowl?"
    """
    folder = studio_folder(config)
    studio = whole_studio(folder)
    asked = looks_asked(studio, recipes)
    refuse_drafts(studio, asked)
    on = parse_date(day)
    last = parse_date(expires) if expires else on + STANDS
    _refuse_days(on, last, today_of(studio))
    heading = title or _heading(studio, on)
    new = NewLink(heading, client.strip(), fresh_code(), on, last, [*map(str, asked)], note)
    file = folder / "links" / f"{known_as or free_id(client or heading, studio.links)}.yml"
    write_new(file, link_text(new, modeline_for(file, "link", folder)))
    for line in (*_told(studio, new), *_to_send(new, config)):
        click.echo(line)


def _heading(studio: Studio, on: date) -> str:
    """What a client reads, so it is in the studio's language."""
    with in_language(studio.house.language):
        return _("Flowers for {day}").format(day=day_in_full(on))


def _refuse_days(on: date, last: date, today: date) -> None:
    if last < on:
        raise click.ClickException(
            f"It would expire before {long_day(on)}, the day it is for: give a later --expires."
        )
    if last < today:
        raise click.ClickException(
            f"Its last day, {long_day(last)}, has gone by: nobody would see it. Give a --for to "
            "come, or a later --expires."
        )


def _told(studio: Studio, new: NewLink) -> Iterator[str]:
    """How each look can be made on the day, before anyone sends what can't be."""
    link = StyleLink.model_validate({
        "title": new.title,
        "code": new.code,
        "date": new.day.isoformat(),
        "expires": new.expires.isoformat(),
        "show": list(new.show),
    })  # fmt: skip
    for text, (_shown, told) in zip(new.show, told_looks(studio, link), strict=True):
        yield f"  {text}: {told}"


def _to_send(new: NewLink, config: Path | None) -> Iterator[str]:
    settings = settings_here(config)
    path = addresses.of_link(new.code)
    yield "To send, once it is built (corymb build --for clients) and published:"
    if settings and settings.site_url:
        yield f"{settings.site_url}{path}"
    else:
        yield f"{path}, behind the address of your site"
        yield "(Write that address under site_url in mkdocs.yml, and it stands here whole.)"
