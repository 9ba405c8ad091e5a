"""`corymb new`: a studio, a recipe or a stem to begin from."""

from __future__ import annotations

import click

from corymb.cli.new_recipe import recipe
from corymb.cli.new_stem import stem
from corymb.cli.new_studio import studio


@click.group()
def new() -> None:
    """Begin a studio, a recipe or a stem.

    What isn't given as an option is asked. Nothing that is there already is ever overwritten.
    """


for command in (studio, recipe, stem):
    new.add_command(command)
