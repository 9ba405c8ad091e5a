"""A studio's folder in; the studio, and everything that is wrong with its files, out."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from corymb.studio import based_on, front_matter
from corymb.studio.folder import MARKDOWN_KINDS, Found, files_of
from corymb.studio.models import (
    CutLog,
    MadeWork,
    Order,
    Page,
    Recipe,
    StandingOrder,
    StemFile,
    StudioFile,
    StyleLink,
    Technique,
    Walk,
)
from corymb.studio.models.base import FileModel, NamedModel
from corymb.studio.problems import Problem
from corymb.studio.studio import Document, Source, Studio
from corymb.studio.validation import validate
from corymb.studio.yaml_tree import decode, read_tree

MODELS: dict[str, type[FileModel]] = {
    "studio": StudioFile,
    "stems": StemFile,
    "recipe": Recipe,
    "made": MadeWork,
    "order": Order,
    "standing": StandingOrder,
    "walk": Walk,
    "log": CutLog,
    "link": StyleLink,
    "page": Page,
    "technique": Technique,
}


@dataclass
class Reading:
    """What has been read so far, and what was wrong with it."""

    problems: list[Problem] = field(default_factory=list)
    sources: dict[tuple[str, str], Source] = field(default_factory=dict)
    found: dict[tuple[str, str], Found] = field(default_factory=dict)
    markdown: dict[tuple[str, str], str] = field(default_factory=dict)


def read_studio(folder: Path) -> tuple[Studio | None, list[Problem]]:
    """The studio in `folder`, as far as it can be read, and all problems in the order of files.

    There is no studio when `studio.yml` itself can't be read.
    """
    if not folder.is_dir():
        return None, [Problem(folder, 1, 1, "there is no studio here: this folder doesn't exist.")]
    reading = Reading()
    for found in files_of(folder):
        if isinstance(found, Problem):
            reading.problems.append(found)
        else:
            _read_file(found, reading)
    studio = _assemble(folder, reading)
    return studio, sorted(set(reading.problems))


def _read_file(found: Found, reading: Reading) -> None:
    key = (found.kind, found.id)
    if key in reading.found:
        first = reading.found[key].file
        message = (
            f"there is another {found.kind} called ‘{found.id}’: {first}. "
            "Rename one of the two; every name is used once."
        )
        reading.problems.append(Problem(found.file, 1, 1, message))
        return
    text = _text_of(found, reading)
    if text is None:
        return
    if found.kind in MARKDOWN_KINDS:
        parts = front_matter.split(text, found.file)
        if isinstance(parts, Problem):
            reading.problems.append(parts)
            return
        heading, reading.markdown[key] = parts
        tree, problems = read_tree(heading, found.file)
    else:
        tree, problems = read_tree(text, found.file)
    reading.problems += problems
    reading.found[key] = found
    if tree is not None:
        reading.sources[key] = Source(found.file, tuple(text.split("\n")), tree)


def _text_of(found: Found, reading: Reading) -> str | None:
    try:
        raw = found.file.read_bytes()
    except FileNotFoundError:
        message = "the studio's own file is missing: make one with `corymb new studio`."
        reading.problems.append(Problem(found.file, 1, 1, message))
        return None
    except OSError as error:
        message = f"this file can't be read: {error.strerror}."
        reading.problems.append(Problem(found.file, 1, 1, message))
        return None
    text, problems = decode(raw, found.file)
    reading.problems += problems
    return text


def _assemble(folder: Path, reading: Reading) -> Studio | None:
    written = {key: _plain(source) for key, source in reading.sources.items()}
    reading.problems += based_on.fill_in(written, reading.sources)
    models: dict[tuple[str, str], Any] = {}
    for key, source in reading.sources.items():
        model, problems = validate(MODELS[key[0]], written[key], source)
        reading.problems += problems
        if model is not None:
            models[key] = model.with_id(key[1]) if isinstance(model, NamedModel) else model
    house = models.get(("studio", "studio"))
    if house is None:
        return None
    studio = Studio(folder, house, sources=dict(reading.sources))
    _fill(studio, models, reading)
    return studio


def _plain(source: Source) -> dict[str, Any]:
    data = source.tree.data
    return dict(data) if isinstance(data, dict) else {}


def _fill(studio: Studio, models: dict[tuple[str, str], Any], reading: Reading) -> None:
    shelves: dict[str, dict[str, Any]] = {
        "made": studio.made,
        "order": studio.orders,
        "standing": studio.standing_orders,
        "walk": studio.walks,
        "log": studio.logs,
        "link": studio.links,
    }
    for (kind, known_as), model in models.items():
        key = (kind, known_as)
        if kind in shelves:
            shelves[kind][known_as] = model
        elif kind == "stems":
            _add_stems(studio, model, reading.sources[key], reading)
        elif kind == "recipe":
            studio.recipes[known_as] = model.in_style(reading.found[key].parent)
        elif kind in MARKDOWN_KINDS:
            document = Document(known_as, model, reading.markdown[key], reading.found[key].file)
            (studio.pages if kind == "page" else studio.techniques)[known_as] = document
    for style_id, style in studio.house.styles.items():
        style.with_id(style_id)


def _add_stems(studio: Studio, group: StemFile, source: Source, reading: Reading) -> None:
    for stem_id, stem in group.stems.items():
        here = source.within("stems", stem_id)
        first = studio.sources.get(("stem", stem_id))
        if first is not None:
            message = (
                f"there is a stem called ‘{stem_id}’ already, in {first.file}. "
                "Give one of the two another id."
            )
            reading.problems.append(here.problem(message, at_key=True))
            continue
        studio.stems[stem_id] = stem.with_id(stem_id)
        studio.groups.setdefault(group.group, []).append(stem_id)
        studio.sources["stem", stem_id] = here
