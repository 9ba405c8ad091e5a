"""Which answers make a new file? Each is an option, and asked for where it isn't given."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import click

from corymb.cli.telling import path_from_here, sum_of, tell_problems
from corymb.cli.values import Value
from corymb.studio.load import read_studio
from corymb.studio.studio import Studio
from corymb.studio.values.text import id_from, parse_text

Decorator = Callable[[Callable[..., Any]], Callable[..., Any]]

TEXT = Value(parse_text, "text")


def ask(
    option: str, question: str, kind: click.ParamType[Any], default: str | None = None, **more: Any
) -> Decorator:
    """An option that is asked for when it isn't given; `default` is offered in the question."""
    return click.option(
        option, prompt=question, type=kind, default=default, help=f"{question}.", **more
    )


def several(question: str, kind: click.ParamType[Any], example: str) -> list[str]:
    """Answers one by one until an empty line; at least one."""
    click.echo(f"{question}, one a line like ‘{example}’; an empty line ends them.")
    answers: list[str] = []
    while True:
        wanted = "" if answers else None
        answer = click.prompt(
            f"  {len(answers) + 1}", default=wanted, show_default=False, value_proc=_or_none(kind)
        )
        if not answer:
            return answers
        answers.append(answer)


def _or_none(kind: click.ParamType[Any]) -> Callable[[str], Any]:
    return lambda text: kind.convert(text, None, None) if text.strip() else ""


def studio_as_it_is(folder: Path) -> Studio:
    """The studio to write into, errors in some of its files or not."""
    studio, problems = read_studio(folder)
    if studio is None:
        errors = [problem for problem in problems if not problem.advice]
        tell_problems(errors)
        raise click.ClickException(f"{sum_of(errors)}; put studio.yml right first.")
    return studio


def id_of_new(name: str) -> str:
    """The id that goes with a name; stops where it has no letters to make one of."""
    if known_as := id_from(name):
        return known_as
    raise click.ClickException(
        f"No id can be made of ‘{name}’: give one in letters from a to z, with --id."
    )


def refuse_taken(studio: Studio, kind: str, known_as: str) -> None:
    """Stop where a recipe or a stem has this id already."""
    taken = studio.sources.get((kind, known_as))
    if taken is not None:
        raise click.ClickException(
            f"There is a {kind} called ‘{known_as}’ already, in {path_from_here(taken.file)}. "
            "Give this one another name, or an --id of its own."
        )


def write_new(file: Path, text: str) -> None:
    """Write a file that isn't there yet, and say so."""
    file.parent.mkdir(parents=True, exist_ok=True)
    try:
        with file.open("x", encoding="utf-8", newline="\n") as written:
            written.write(text)
    except FileExistsError as error:
        raise click.ClickException(
            f"{path_from_here(file)} is there already; nothing was written."
        ) from error
    click.echo(f"Written: {path_from_here(file)}")
