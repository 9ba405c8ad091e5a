"""The `corymb` command. One file a command; each only asks, calls and tells."""

from __future__ import annotations

import errno
from typing import Any

import click

from corymb import __version__
from corymb.cli.book import book
from corymb.cli.build import build
from corymb.cli.check import check
from corymb.cli.colours import colours
from corymb.cli.cut import cut
from corymb.cli.learn import learn
from corymb.cli.link import link
from corymb.cli.new import new
from corymb.cli.repeat import repeat
from corymb.cli.schema import schema
from corymb.cli.season import season
from corymb.cli.serve import serve
from corymb.cli.share import share
from corymb.cli.show import show


class Commands(click.Group):
    """Says what a file or folder refuses in a sentence, whichever command meets it."""

    def invoke(self, ctx: click.Context) -> Any:
        """Run the command; a folder that can't be written is no crash, nor is Ctrl+C."""
        try:
            return super().invoke(ctx)
        except (KeyboardInterrupt, click.Abort):
            click.echo("\nStopped.", err=True)
            ctx.exit(1)
        except OSError as error:
            if error.errno == errno.EPIPE:  # someone stopped reading, as `head` does
                raise
            where = f"{error.filename}: " if error.filename else ""
            raise click.ClickException(f"{where}{error.strerror or error}.") from error


@click.group(
    cls=Commands, context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 100}
)
@click.version_option(__version__, prog_name="corymb")
def main() -> None:
    """Build a floral studio's recipes, photos and orders into two sites: one for clients, one
    for the people who make the flowers.

    \b
    Begin:
      corymb new studio my-studio     a small studio to make your own
      cd my-studio
      corymb serve                    see it, and see every change as you save it
    """


for command in (
    build,
    serve,
    check,
    show,
    season,
    colours,
    link,
    share,
    book,
    repeat,
    cut,
    learn,
    new,
    schema,
):
    main.add_command(command)
