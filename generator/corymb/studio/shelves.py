"""Where in the studio does each thing that was read belong?"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from corymb.studio.filing import Filed
from corymb.studio.folder import MARKDOWN_KINDS
from corymb.studio.mending import ALL
from corymb.studio.models import StemFile
from corymb.studio.problems import Problem
from corymb.studio.studio import Document, Source, Studio

Key = tuple[str, str]
"""A kind of file, and the id that its name gives it."""


@dataclass(frozen=True)
class Shelved:
    """A thing as its model made it, the file it comes from, and where that is."""

    model: Any
    filed: Filed
    source: Source


def fill(studio: Studio, things: Mapping[Key, Shelved]) -> list[Problem]:
    """Put everything into the studio by id; the stems that are there twice."""
    problems = []
    for (kind, known_as), thing in things.items():
        studio.sources[kind, known_as] = thing.source
        if kind == "stems":
            problems += _add_stems(studio, thing.model, thing.source)
        elif kind != "studio":
            _add(studio, kind, known_as, thing)
    for style_id, style in studio.house.styles.items():
        style.with_id(style_id)
    return problems


def _add(studio: Studio, kind: str, known_as: str, thing: Shelved) -> None:
    shelves: dict[str, dict[str, Any]] = {
        "recipe": studio.recipes,
        "made": studio.made,
        "order": studio.orders,
        "standing": studio.standing_orders,
        "walk": studio.walks,
        "log": studio.logs,
        "link": studio.links,
        "page": studio.pages,
        "technique": studio.techniques,
    }
    model = thing.model
    if hasattr(model, "with_id"):
        model = model.with_id(known_as)
    if kind == "recipe":
        model = model.in_style(thing.filed.found.parent)
    if kind in MARKDOWN_KINDS:
        model = Document(known_as, model, thing.filed.markdown, thing.filed.found.file)
    shelves[kind][known_as] = model


def _add_stems(studio: Studio, group: StemFile, source: Source) -> list[Problem]:
    problems = []
    for stem_id, stem in group.stems.items():
        here = source.within("stems", stem_id)
        first = studio.sources.get(("stem", stem_id))
        if first is not None:
            problems.append(_twice(studio, stem_id, first, here))
            studio.sources["stem", stem_id] = replace(first, doubts=ALL)
            continue
        studio.stems[stem_id] = stem.with_id(stem_id)
        studio.groups.setdefault(group.group, []).append(stem_id)
        studio.sources["stem", stem_id] = here
    return problems


def _twice(studio: Studio, stem_id: str, first: Source, here: Source) -> Problem:
    line, _ = first.tree.key_place(first.path)
    there = first.file.relative_to(studio.folder).as_posix()
    message = (
        f"There is a stem called ‘{stem_id}’ already, in line {line} of {there}. "
        "Give one of the two another id."
    )
    return here.problem(message, at_key=True)
