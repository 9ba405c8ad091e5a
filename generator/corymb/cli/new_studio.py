"""`corymb new studio`: a small studio that builds at once, to make one's own."""

from __future__ import annotations

from importlib import resources
from importlib.resources.abc import Traversable
from pathlib import Path

import click

from corymb.cli.asking import TEXT, ask
from corymb.cli.telling import path_from_here
from corymb.cli.values import Value
from corymb.studio.scalars import as_scalar
from corymb.studio.schema import write_schemas
from corymb.studio.values.number import plain
from corymb.studio.values.place import (
    parse_currency,
    parse_language,
    parse_latitude,
    parse_longitude,
    parse_time_zone,
)
from corymb.studio.values.text import parse_email

SITE_STAND_INS = {"name": "site_name: Your studio"}
STUDIO_STAND_INS = {
    "name": "name: Your studio",
    "village": "name: Your village",
    "latitude": "latitude: 51.2          #",
    "longitude": "longitude: -1.0         #",
    "time_zone": "time zone: Europe/London",
    "language": "language: en-GB",
    "currency": "currency: GBP           #",
    "email": "email: flowers@studio.example",
}


PRIVATE = """
The folder will hold orders, clients' names and photos as the camera took them: keep it, and a
repository of it, private. What may be published is what `corymb build` puts into clients/."""


def _empty(_: click.Context, __: click.Parameter, folder: Path) -> Path:
    """The folder, told of before a single question is asked where there is something in it."""
    if folder.exists() and any(folder.iterdir()):
        raise click.ClickException(
            f"{path_from_here(folder)} is not empty; nothing was written. Name a new folder."
        )
    return folder


@click.command()
@click.argument(
    "folder",
    metavar="DIR",
    type=click.Path(file_okay=False, path_type=Path),
    is_eager=True,
    callback=_empty,
)
@ask("--name", "Your studio's name", TEXT, "Your studio")
@ask("--village", "The place where you grow", TEXT, "Your village")
@ask("--latitude", "Its latitude, north is plus", Value(parse_latitude, "degrees", plain), "51.2")
@ask("--longitude", "Its longitude, east is plus", Value(parse_longitude, "degrees", plain), "-1.0")
@ask("--time-zone", "Its time zone", Value(parse_time_zone, "zone"), "Europe/London")
@ask("--language", "Language and country", Value(parse_language, "language"), "en-GB")
@ask("--currency", "Currency, three letters", Value(parse_currency, "currency"), "GBP")
@ask("--email", "Where clients write", Value(parse_email, "e-mail"), "flowers@studio.example")
def studio(folder: Path, **answers: str) -> None:
    """Begin a studio in the new folder DIR: eight stems, two recipes, a lesson, a care page.

    \b
    Examples:
      corymb new studio my-studio
      corymb new studio my-studio --name "Hazel Row" --email hello@hazelrow.example
    """
    _copy(resources.files("corymb").joinpath("starter"), folder)
    _fill_in(folder / "content" / "studio.yml", answers, STUDIO_STAND_INS)
    _fill_in(folder / "mkdocs.yml", answers, SITE_STAND_INS)
    write_schemas(folder / "schemas")
    here = path_from_here(folder)
    click.echo(f"Written: {here}\n\nNow see it, and change it while you see it:")
    click.echo(f"  cd {here}\n  corymb serve")
    click.echo(PRIVATE)


def _copy(source: Traversable, target: Path) -> None:
    target.mkdir(parents=True, exist_ok=True)
    for entry in source.iterdir():
        # A package's files may not begin with a dot everywhere, so this one gets its dot here.
        name = ".gitignore" if entry.name == "gitignore" else entry.name
        if entry.is_dir():
            _copy(entry, target / name)
        else:
            (target / name).write_bytes(entry.read_bytes())


def _fill_in(file: Path, answers: dict[str, str], stand_ins: dict[str, str]) -> None:
    """Put the answers in the place of what stands in for them in the starter."""
    text = file.read_text(encoding="utf-8")
    for key, line in stand_ins.items():
        head, colon, rest = line.partition(": ")
        remark = "  " + "#" if rest.endswith("#") else ""
        text = text.replace(line, head + colon + _written(key, answers[key]) + remark, 1)
    file.write_text(text, encoding="utf-8", newline="\n")


def _written(key: str, answer: str) -> str:
    return answer if key in ("latitude", "longitude") else as_scalar(answer)
