"""`corymb new stem`: a stem with its facts, in a file of its group."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from corymb.cli.asking import TEXT, ask, id_of_new, refuse_taken, studio_as_it_is, write_new
from corymb.cli.telling import path_from_here
from corymb.cli.values import Value
from corymb.cli.where import site_settings, studio_first_option, studio_folder
from corymb.studio.growing import with_stem
from corymb.studio.models.stem import whole_colours
from corymb.studio.new_files import NewStem, modeline_for, stem_file_text, stem_text
from corymb.studio.saying import or_list
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean
from corymb.studio.values.colour import parse_colour_part
from corymb.studio.values.length import parse_length, parse_length_range
from corymb.studio.values.money import parse_money, print_money
from corymb.studio.values.season_text import parse_season
from corymb.studio.values.text import id_from, parse_count, parse_id
from corymb.studio.values.time import parse_day_range
from corymb.studio.values.weight import parse_weight
from corymb.studio.words import FORMS, HAZARDS, LONG_FORMS, USES

COUNT = Value(parse_count, "count")
COST = Value(parse_money, "money", print_money)
NO_SOURCE = "common practice, no source"


def _several(parse: Any) -> Value:
    """Things set apart by commas, kept as they were read; none is allowed."""
    return Value(
        lambda text: ", ".join(str(parse(p)) for p in text.split(",") if p.strip()), "list"
    )


def _hazard(text: str) -> str:
    word = " ".join(text.split()).casefold()
    if word not in HAZARDS:
        guess = did_you_mean(word, HAZARDS) or f" The hazards are {or_list(HAZARDS)}."
        raise ValueError(f"‘{word}’ is not a hazard.{guess}")
    return word


@click.command()
@studio_first_option
@ask("--name", "Name with its colour, like ‘Dahlia, shell’", TEXT)
@click.option("--id", "known_as", type=Value(parse_id, "id"), help="Its id; made from the name.")
@ask("--group", "Group of plants", TEXT, "Flowers")
@ask("--botanical", "Botanical name", TEXT)
@ask("--use", "Use", click.Choice(USES), "focal")
@ask("--form", "Shape of its head", click.Choice(FORMS), "rosette")
@ask("--colours", "Colours by commas, NAME NUMBER SHARE", _several(parse_colour_part))
@ask("--head", "How wide one head is", Value(parse_length, "length"), "6 cm")
@click.option("--head-length", type=Value(parse_length, "length"), help="For long forms alone.")
@ask("--length", "Length as cut", Value(parse_length_range, "lengths"), "40-60 cm")
@ask("--weight", "Weight of one cut stem", Value(parse_weight, "weight"), "10 g")
@ask("--in-season", "In season, like ‘early July - mid October’", Value(parse_season, "season"))
@ask("--vase-life", "Days in the vase", Value(parse_day_range, "days"), "5-7 days")
@ask("--cut-when", "Cut when", TEXT)
@ask("--hours", "Hours of conditioning", COUNT, "6")
@ask("--do", "Conditioning, in a sentence", TEXT, "Strip, re-cut, stand deep in cool water.")
@ask("--stems-per-bucket", "Stems in a bucket", COUNT, "50")
@ask("--cutting-step", "Cut in multiples of", COUNT, "50")
@ask("--grown", "What a stem of your own costs you", COST, "0.10")
@click.option("--bought", type=COST, help="What a bought stem costs you.")
@ask("--hazards", "Hazards by commas, or nothing", _several(_hazard), "", show_default=False)
@ask("--source", "Where season and hazards come from", TEXT, NO_SOURCE)
def stem(config: Path | None, known_as: str | None, group: str, **answers: Any) -> None:
    """Write a new stem into the file of its group.

    \b
    Example:
      corymb new stem --name "Cosmos, white" --group Annuals --colours "white f6f4ef"
    """
    folder = site_settings(config).studio_folder if config else studio_folder(None)
    studio = studio_as_it_is(folder)
    known_as = known_as or id_of_new(answers["name"])
    refuse_taken(studio, "stem", known_as)
    new = NewStem(
        id=known_as,
        colours=_colours(answers.pop("colours")),
        bought=answers.pop("bought") or "",
        head_length=_head_length(answers["form"], answers.pop("head_length")),
        hazards=[hazard for hazard in answers.pop("hazards").split(", ") if hazard],
        **answers,
    )
    _write(folder, studio, group, new)


def _colours(written: str) -> list[str]:
    try:
        return [
            str(part) for part in whole_colours([parse_colour_part(p) for p in written.split(",")])
        ]
    except ValueError as error:
        raise click.ClickException(str(error)) from error


def _head_length(form: str, given: str | None) -> str:
    if form not in LONG_FORMS:
        return ""
    kind = Value(parse_length, "length")
    return given or str(click.prompt(f"How long one {form} is", type=kind, default="20 cm"))


def _write(folder: Path, studio: Studio, group: str, new: NewStem) -> None:
    """Into the file of its group where there is one, else into a new file."""
    there = next((name for name in studio.groups if name.casefold() == group.casefold()), None)
    if there is None:
        file = folder / "stems" / f"{id_from(group, new.id)}.yml"
        write_new(file, stem_file_text(group, stem_text(new), modeline_for(file, "stems", folder)))
        return
    file = studio.sources["stem", studio.groups[there][0]].file
    try:
        grown = with_stem(file.read_text(encoding="utf-8"), new, file)
    except ValueError as error:
        raise click.ClickException(f"{path_from_here(file)}: {error}") from error
    file.write_text(grown, encoding="utf-8", newline="\n")
    click.echo(f"Written: {new.id}, at the end of {path_from_here(file)}")
