"""`corymb colours`: what a photo's colours are, and which of the studio's stems are like them."""

from __future__ import annotations

from pathlib import Path

import click

from corymb.cli.asking import studio_as_it_is
from corymb.cli.colour_sheet import colour_sheet
from corymb.cli.plain import for_terminal, is_plain
from corymb.cli.speaking import speak_as
from corymb.cli.where import config_option, site_settings, studio_folder
from corymb.photos import PhotoError, flower_colours

STEMS = 15


@click.command()
@click.argument("photo", type=click.Path(path_type=Path))
@click.option(
    "--stems",
    "count",
    type=click.IntRange(1, 999),
    default=STEMS,
    show_default=True,
    metavar="N",
    help="So many stems in the first recipe.",
)
@config_option
def colours(photo: Path, count: int, config: Path | None) -> None:
    """Begin a recipe from a photo.

    Its colours with how much of each there is, wall and table left out as far as can be told;
    the stems of yours that come nearest to each, with when they stand; and lines to paste into a
    recipe. A beginning: it knows colours and sizes, and nothing of what looks well.

    \b
    Examples:
      corymb colours content/photos/jug.jpg
      corymb colours content/photos/jug.jpg --stems 25
    """
    folder = site_settings(config).studio_folder if config else studio_folder(None)
    studio = studio_as_it_is(folder)
    speak_as(studio)
    try:
        found = flower_colours(photo)
    except PhotoError as error:
        raise click.ClickException(str(error)) from error
    parts = tuple((each.hex, each.share) for each in found)
    for line in for_terminal(colour_sheet(studio, photo.name, parts, count), is_plain()):
        click.echo(line)
