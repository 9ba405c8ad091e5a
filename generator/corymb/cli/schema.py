"""`corymb schema`: what an editor needs to complete and check as one types."""

from __future__ import annotations

from pathlib import Path

import click

from corymb.cli.telling import path_from_here
from corymb.studio.schema import KINDS, SHIPPED, file_name, schema_text, write_schemas


@click.command()
@click.argument("kind", type=click.Choice(KINDS), required=False)
@click.option(
    "--out",
    type=click.Path(file_okay=False, path_type=Path),
    metavar="DIR",
    help="Write all of them into this folder.",
)
def schema(kind: str | None, out: Path | None) -> None:
    """The JSON Schemas of a studio's files, for editors.

    Without anything it says where they are; with a kind it prints that one. A file names its
    schema in its first line, and any editor that knows YAML and JSON Schema then completes keys,
    explains them, and marks mistakes:

    \b
      # yaml-language-server: $schema=../schemas/studio.schema.json

    \b
    Examples:
      corymb schema recipe
      corymb schema --out my-studio/schemas
    """
    if out is not None:
        for file in write_schemas(out):
            click.echo(path_from_here(file))
    elif kind is not None:
        click.echo(schema_text(kind), nl=False)
    else:
        for each in KINDS:
            click.echo(f"{each:<9} {SHIPPED / file_name(each)}")
