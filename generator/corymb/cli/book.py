"""`corymb book`: the whole recipe book as a PDF, through the browser's own print."""

from __future__ import annotations

import shutil
from collections.abc import Sequence
from pathlib import Path

import click

from corymb.cli.reading import whole_studio
from corymb.cli.telling import Progress, few_of, path_from_here
from corymb.cli.where import config_option, site_settings
from corymb.files.whole import write_whole
from corymb.language import in_language
from corymb.site.book import (
    PAPERS,
    Asked,
    Book,
    BrowserError,
    NothingInBookError,
    Paper,
    book_of,
    find_browser,
    printed_book,
)
from corymb.site.drawn.pictures import draw_all
from corymb.site.one_file import TooLargeError
from corymb.site.settings import SiteSettings
from corymb.studio.saying import counted
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean
from corymb.studio.today import today_of
from corymb.views.pieces import AUDIENCES, Audience

BY_HAND = "Or write the book as one file, with --html book.html, and print that from any browser."
TOO_LARGE = "The book is too large for one file: write some chapters at a time, with --style."


@click.command()
@click.option(
    "-o", "--out", type=click.Path(path_type=Path, dir_okay=False), metavar="PDF", help="Where to."
)
@click.option(
    "--for",
    "audience",
    type=click.Choice(AUDIENCES),
    default="clients",
    show_default=True,
    help="The staff's has method, cautions, costs, notes and lessons too.",
)
@click.option(
    "--paper",
    type=click.Choice(PAPERS),
    default="a4",
    show_default=True,
    help="The size of its pages.",
)
@click.option(
    "--style", "styles", multiple=True, metavar="STYLE", help="This chapter alone, or several."
)
@click.option(
    "--html",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Write it as one file instead, to print by hand.",
)
@click.option(
    "--browser", metavar="PROGRAM", help="The Chromium to print with. Without it: the one found."
)
@config_option
def book(
    out: Path | None,
    audience: Audience,
    paper: Paper,
    styles: tuple[str, ...],
    html: Path | None,
    browser: str | None,
    config: Path | None,
) -> None:
    """Print the whole recipe book: contents, a chapter for each style, an index of stems.

    Every recipe begins on a page of its own, and the contents name the true pages. The book for
    clients holds what clients may see on the site. A Chromium or Chrome on this machine prints
    it; nothing is asked of the network.

    \b
    Examples:
      corymb book -o recipes.pdf
      corymb book --for staff --paper a5 -o bench-book.pdf
      corymb book --style posy --style crown --html posies.html
    """
    settings = site_settings(config)
    program = None if html else _browser(browser)
    studio = whole_studio(settings.studio_folder)
    _refuse_unknown(studio, styles)
    progress = Progress()
    try:
        made = _made(studio, settings, Asked(audience, paper, styles), progress)
        file = (
            html or out or Path(f"{'recipe-book' if audience == 'clients' else 'bench-book'}.pdf")
        )
        data = made.one_file if program is None else _printed(program, made, progress)
    except (BrowserError, NothingInBookError) as error:
        hint = f" {BY_HAND}" if isinstance(error, BrowserError) else ""
        raise click.ClickException(f"{error}{hint}") from error
    except TooLargeError as error:
        raise click.ClickException(TOO_LARGE) from error
    finally:
        progress.end()
    file.parent.mkdir(parents=True, exist_ok=True)
    write_whole(file, data)
    recipes = sum(len(chapter.recipes) for chapter in made.view.chapters)
    told = f"{counted(recipes, 'recipe', 'recipes')}, {round(len(data) / 1000)} kB"
    click.echo(f"Written: {path_from_here(file)} ({told})")
    if audience == "staff":
        click.echo("Costs and notes are in it: keep it in the house.")


def _browser(named: str | None) -> str:
    """The browser to print with, before anything is made for it."""
    if named:
        if found := shutil.which(named):
            return found
        raise click.ClickException(f"There is no program {named} to print with. {BY_HAND}")
    if found := find_browser():
        return found
    raise click.ClickException(
        "No Chromium or Chrome was found on this machine, and the book is printed by one. Install "
        f"it, or name yours with --browser. {BY_HAND}"
    )


def _refuse_unknown(studio: Studio, styles: Sequence[str]) -> None:
    for style in styles:
        if style not in studio.styles:
            guess = did_you_mean(style, studio.styles) or f" There are {few_of(studio.styles)}."
            raise click.ClickException(f"There is no style called ‘{style}’.{guess}")


def _made(studio: Studio, settings: SiteSettings, asked: Asked, progress: Progress) -> Book:
    with in_language(studio.house.language):  # a picture says what it shows
        pictures = draw_all(studio, settings.cache_folder / "pictures", progress)
    return book_of(studio, settings, pictures, asked, today_of(studio))


def _printed(program: str, made: Book, progress: Progress) -> bytes:
    return printed_book(program, made, lambda done, of: progress("printing", done, of))
