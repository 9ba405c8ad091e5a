"""`corymb learn`: what the orders that were made say of the recipes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

import click

from corymb.checks import read_and_check
from corymb.cli.learn_sheet import Learnt, learn_sheet
from corymb.cli.plain import for_terminal, is_plain
from corymb.cli.speaking import speak_as
from corymb.cli.telling import few_of, path_from_here, sum_of, tell_problems
from corymb.cli.where import config_option, site_settings, studio_folder
from corymb.studio.models import Recipe
from corymb.studio.recipe_numbers import with_number
from corymb.studio.saying import counted
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean
from corymb.trade.made_orders import learnt, made_orders


@click.command()
@click.argument("recipe", required=False)
@click.option("--write", is_flag=True, help="Write what is proposed into the recipes' files.")
@config_option
def learn(recipe: str | None, write: bool, config: Path | None) -> None:
    """Hold the recipes against what orders really took.

    An order may tell afterwards what went in (`used`) and how long it took (`minutes`). Where two
    orders speak against a recipe's count or time, or one by more than a quarter, a better one is
    proposed, with the file and line to write it in. Without --write nothing is changed.

    \b
    Examples:
      corymb learn
      corymb learn hedgerow-jar --write
    """
    folder = site_settings(config).studio_folder if config else studio_folder(None)
    studio = _read(folder)
    speak_as(studio)
    wanted = _found(studio, recipe) if recipe else None
    found = [
        each
        for each in (Learnt(*one) for one in learnt(studio.orders.values(), studio.recipes))
        if wanted is None or each.recipe == wanted.id
    ]
    _tell(studio, found)
    if write and found:
        _write(studio, found)
    elif found:
        click.echo("Nothing was changed. To write it: add --write.")


def _read(folder: Path) -> Studio:
    """The studio; with an error in it, what was asked for is a guess."""
    studio, problems = read_and_check(folder)
    errors = [problem for problem in problems if not problem.advice]
    if studio is None or errors:
        tell_problems(errors)
        raise click.ClickException(f"{sum_of(errors)}; put them right first.")
    return studio


def _found(studio: Studio, wanted: str) -> Recipe:
    """The recipe by its id, or by its name as a client reads it."""
    by_name = {r.name.casefold(): r for r in studio.recipes.values()}
    found = studio.recipes.get(wanted) or by_name.get(wanted.casefold())
    if found is None:
        guess = did_you_mean(wanted, studio.recipes) or f" There are {few_of(studio.recipes)}."
        raise click.ClickException(f"There is no recipe called ‘{wanted}’.{guess}")
    return found


def _tell(studio: Studio, found: Sequence[Learnt]) -> None:
    for each in found:
        for line in for_terminal(learn_sheet(studio, each), is_plain()):
            click.echo(line)
        click.echo()
    if not found:
        made = len(made_orders(studio.orders.values(), studio.recipes))
        click.echo(
            f"{counted(made, 'order tells what it', 'orders tell what they')} took; nothing "
            "speaks against the recipes."
            if made
            else "No order tells yet what it took: write `used` and `minutes` into its file."
        )


def _write(studio: Studio, found: Sequence[Learnt]) -> None:
    """Change the files, and put them back as they were where they can't be read any more."""
    texts, by_hand = _changed(studio, found)
    before = {file: file.read_bytes() for file in texts}
    for file, text in texts.items():
        file.write_bytes(_as_it_was_kept(text, before[file]))
    _, problems = read_and_check(studio.folder)
    errors = [problem for problem in problems if not problem.advice]
    if errors:
        for file, raw in before.items():
            file.write_bytes(raw)
        tell_problems(errors)
        raise click.ClickException("The files would hold errors, so they are as they were.")
    done = counted(len(found) - by_hand, "number", "numbers")
    files = ", ".join(path_from_here(file).as_posix() for file in texts)
    click.echo(f"Wrote {done} into {files}." if texts else "Nothing was changed.")
    if by_hand:
        click.echo(f"{counted(by_hand, 'number is', 'numbers are')} left to change by hand.")


def _changed(studio: Studio, found: Sequence[Learnt]) -> tuple[Mapping[Path, str], int]:
    """The new texts by their files, and how many numbers are left to change by hand."""
    texts: dict[Path, str] = {}
    by_hand = 0
    for each in found:
        source = studio.sources["recipe", each.recipe]
        text = texts.get(source.file, "\n".join(source.lines))
        try:
            if each.place is None:
                raise ValueError
            texts[source.file] = with_number(text, each.place.path, each.correction.proposed)
        except ValueError:
            by_hand += 1
    return texts, by_hand


def _as_it_was_kept(text: str, before: bytes) -> bytes:
    """The text with the line ends, and the mark at its head, that its file had."""
    ends = "\r\n" if b"\r\n" in before else "\n"
    mark = b"\xef\xbb\xbf" if before.startswith(b"\xef\xbb\xbf") else b""
    return mark + text.replace("\n", ends).encode()
