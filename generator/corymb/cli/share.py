"""`corymb share`: a look or a style link as one file to attach to a message."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import click

from corymb.cli.days import DAY, long_day
from corymb.cli.looks_asked import looks_asked, refuse_drafts
from corymb.cli.looks_told import told_looks
from corymb.cli.reading import whole_studio
from corymb.cli.telling import few_of, path_from_here
from corymb.cli.where import config_option, site_settings
from corymb.files.whole import write_whole
from corymb.language import gettext as _
from corymb.language import in_language
from corymb.photos import PhotoError
from corymb.site.one_file import TooLargeError
from corymb.site.style_link_file import link_file
from corymb.studio.models import StyleLink
from corymb.studio.models.link import fresh_code
from corymb.studio.new_links import STANDS
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean
from corymb.studio.today import today_of
from corymb.studio.values.dates import IsoWeek, parse_date
from corymb.studio.values.order_lines import LinkItemText
from corymb.studio.values.text import id_from
from corymb.trade.looks import looks_of, name_of
from corymb.trade.order_lines import variant_and_size
from corymb.trade.season.best import best_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.sureness import LIKELY, SURE
from corymb.trade.season.watch import cell_of, year_from


@click.command()
@click.argument("what", metavar="RECIPE|LINK")
@click.option(
    "-o", "--out", type=click.Path(path_type=Path, dir_okay=False), metavar="FILE", help="Where to."
)
@click.option(
    "--for",
    "day",
    type=DAY,
    metavar="DATE",
    help="The flowers' day, for a recipe. Without it: today, or when it can next be made.",
)
@config_option
def share(what: str, out: Path | None, day: str | None, config: Path | None) -> None:
    """Write a look, or a style link, as one file to attach to a message.

    It opens from a phone's mail without a signal: its pictures, styles and typefaces are all in
    it, and it asks nobody for anything. It stays below 1 MB, and prints.

    \b
    Examples:
      corymb share hedgerow-jar
      corymb share "hedgerow-jar, later" --for 2027-09-18 -o jar.html
      corymb share barn-supper -o barn-supper.html      a style link, by its file's name
    """
    settings = site_settings(config)
    studio = whole_studio(settings.studio_folder)
    link = studio.links.get(what)
    if link is not None and day is not None:
        raise click.ClickException(
            f"‘{what}’ is a style link, whose day is {long_day(link.date)}: leave out --for."
        )
    page = link or _link_of(studio, what, parse_date(day) if day else None)
    file = out or Path(f"{_file_name(link) if link else page.show[0].recipe}.html")
    try:
        data = link_file(studio, settings, page, today_of(studio), ends=link is not None)
    except (PhotoError, TooLargeError) as error:
        raise click.ClickException(str(error)) from error
    file.parent.mkdir(parents=True, exist_ok=True)
    write_whole(file, data)
    click.echo(f"Written: {path_from_here(file)} ({round(len(data) / 1000)} kB)")
    if link is not None and link.expires < today_of(studio):
        click.echo(
            f"Its last day, {long_day(link.expires)}, has gone by: whoever opens it reads that it "
            "is over. Give it a later `expires`."
        )
        return
    for line in _told(studio, page):
        click.echo(line)


def _file_name(link: StyleLink) -> str:
    """After what the client reads: its own file may be called after what is said of them."""
    return id_from(link.title, "flowers")


def _told(studio: Studio, page: StyleLink) -> Iterator[str]:
    """What of it can't be made on its day, before anyone sends it."""
    day = long_day(page.date)
    looks = [(shown, told) for shown, told in told_looks(studio, page) if not shown.is_draft]
    for shown, told in looks:
        if not shown.can:
            yield f"  {name_of(shown.asked.recipe, shown.asked.look.variant)}: {told}"
    if any(shown.can for shown, _told in looks):
        yield f"As it will be on {day}. Attach it to a mail or a message."
    else:
        yield f"Nothing of it can be made on {day}: give another day before you send it."


def _link_of(studio: Studio, what: str, day: date | None) -> StyleLink:
    """A link for one look; it is for nobody, and written nowhere."""
    if what.partition(",")[0] not in studio.recipes:
        _refuse_unknown(studio, what)
    (asked,) = looks_asked(studio, [what])
    refuse_drafts(studio, [asked])
    on = day or _next_day(studio, asked)
    with in_language(studio.house.language):
        title = _("From {studio}").format(studio=studio.house.name)
    return StyleLink.model_validate({
        "title": title,
        "code": fresh_code(),
        "date": on.isoformat(),
        "expires": (on + STANDS).isoformat(),
        "show": [str(asked)],
    })  # fmt: skip


def _refuse_unknown(studio: Studio, what: str) -> None:
    """Nothing of that name, whether a recipe, by id or name, or a link."""
    names = {recipe.name.casefold() for recipe in studio.recipes.values()}
    head = what.partition(",")[0].strip()
    if head.casefold() not in names:
        known = [*studio.recipes, *studio.links]
        guess = did_you_mean(head, known) or f" There are {few_of(known)}."
        raise click.ClickException(f"There is no recipe and no style link called ‘{head}’.{guess}")


def _next_day(studio: Studio, asked: LinkItemText) -> date:
    """Today where it can be made this week, or the Saturday of the next week that isn't too unsure.

    Today where there is no such week: the page then says when there would be one.
    """
    today, recipe = today_of(studio), studio.recipes[asked.recipe]
    variant, _size = variant_and_size(recipe, *_two(asked.words))
    year = best_of({"": looks_of(recipe, studio.recipes)[variant]}, Makeable.of(studio))
    for week in year_from(IsoWeek.of(today)):
        if year[cell_of(week) - 1].sure in (SURE, LIKELY):
            return today if week == IsoWeek.of(today) else week.monday() + timedelta(days=5)
    return today


def _two(words: tuple[str, ...]) -> tuple[str | None, str | None]:
    """A variant and a size, as a link's line gives them."""
    return (words[0] if words else None, words[1] if len(words) > 1 else None)
