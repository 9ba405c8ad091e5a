"""From all files as read to the studio: once of what is right, once with the rest mended."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from corymb.studio.based_on import RecipeKeys, fill_in
from corymb.studio.filing import Filed
from corymb.studio.hearsay import hear
from corymb.studio.mending import ALL, Doubts
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
from corymb.studio.models.base import FileModel
from corymb.studio.problems import Problem
from corymb.studio.shelves import Key, Shelved, fill
from corymb.studio.studio import Source, Studio
from corymb.studio.validation import Outcome, validate
from corymb.studio.yaml_tree import Tree

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
HOUSE = ("studio", "studio")

MadeOut = dict[Key, tuple[Filed, RecipeKeys, Outcome[Any]]]
"""What was made of each file when the folder was read before, and of what."""

Files = Mapping[Key, Filed]
Outcomes = Mapping[Key, Outcome[Any]]


@dataclass(frozen=True)
class Assembled:
    """The studio of the whole files, the one of all files, and what is wrong with them."""

    studio: Studio | None
    mended: Studio
    problems: list[Problem]


def assemble(
    folder: Path, files: Files, doubles: Iterable[Filed], made_out: MadeOut | None = None
) -> Assembled:
    """The studio of `files`. `doubles` have a name that was taken; they are only looked over.

    `made_out` is what `assemble` was given before, for files that are the same, and is kept so.
    """
    named = frozenset(known_as for kind, known_as in files if kind == "recipe")
    recipes = {k: f.source for (kind, k), f in files.items() if kind == "recipe" and f.source}
    filled = fill_in(recipes, named)
    outcomes = _outcomes(files, filled.recipes, {} if made_out is None else made_out)
    mended = _mended_house(folder, outcomes.get(HOUSE))
    lost = files.keys() - {key for key, outcome in outcomes.items() if outcome.mended}
    wrong = [f for key, f in files.items() if not _is_right(f, outcomes.get(key))]
    hear(mended, lost, [filed for filed in wrong if filed.found.kind == "stems"])
    problems = fill(mended, _things(files, outcomes))
    for outcome in outcomes.values():
        problems += outcome.problems
    problems += (*filled.problems, *_looked_over(doubles, named))
    whole = mended if not wrong and HOUSE in outcomes else _whole(folder, files, outcomes)
    return Assembled(whole, mended, problems)


def _outcomes(files: Files, recipes: Mapping[str, RecipeKeys], made_out: MadeOut) -> Outcomes:
    """What the models make of all files; of a file that is the same, what they made before."""
    before, outcomes = dict(made_out), {}
    made_out.clear()
    for key, filed in files.items():
        if filed.source is None:
            continue
        written = _written(filed, filed.source, recipes)
        known = before.get(key)
        if known is None or known[0] is not filed or known[1] != written:
            known = filed, written, _outcome(filed, filed.source, written)
        made_out[key] = known
        outcomes[key] = known[2]
    return outcomes


def _written(filed: Filed, source: Source, recipes: Mapping[str, RecipeKeys]) -> RecipeKeys:
    is_recipe = filed.found.kind == "recipe"
    return recipes[filed.found.id] if is_recipe else RecipeKeys(source.tree.data)


def _outcome(filed: Filed, source: Source, written: RecipeKeys) -> Outcome[Any]:
    """What a file's model makes of it; a line that can't be read right is told of once."""
    model = MODELS[filed.found.kind]
    outcome = validate(model, written.data, source, written.doubts, written.elsewhere)
    problems = tuple(p for p in outcome.problems if p.line not in filed.slips)
    return replace(outcome, problems=problems)


def _looked_over(doubles: Iterable[Filed], recipes: frozenset[str]) -> Iterator[Problem]:
    for filed in doubles:
        if filed.source is not None:
            alone = fill_in({filed.found.id: filed.source}, recipes).recipes
            written = _written(filed, filed.source, alone)
            yield from _outcome(filed, filed.source, written).problems


def _is_right(filed: Filed, outcome: Outcome[Any] | None) -> bool:
    return outcome is not None and outcome.is_whole and not filed.slips


def _whole(folder: Path, files: Files, outcomes: Outcomes) -> Studio | None:
    right = {key: o for key, o in outcomes.items() if _is_right(files[key], o)}
    house = right[HOUSE].mended if HOUSE in right else None
    if house is None:
        return None
    studio = Studio(folder, house)
    studio.sources.update({k: f.source for k, f in files.items() if f.source is not None})
    fill(studio, _things(files, right))
    return studio


def _mended_house(folder: Path, outcome: Outcome[StudioFile] | None) -> Studio:
    """A studio with nothing on its shelves; an example of one where its own file can't be read."""
    if outcome is not None and outcome.mended is not None:
        return Studio(folder, outcome.mended)
    nowhere = Source(folder / "studio.yml", (), Tree({}), doubts=ALL)
    example = validate(StudioFile, {}, nowhere).mended
    assert example is not None
    return Studio(folder, example, sources={HOUSE: nowhere})


def _things(files: Files, outcomes: Outcomes) -> dict[Key, Shelved]:
    """All that could be made out, whole or mended."""
    return {
        key: Shelved(outcome.mended, files[key], _with_doubts(source, outcome.doubts))
        for key, outcome in outcomes.items()
        if outcome.mended is not None and (source := files[key].source) is not None
    }


def _with_doubts(source: Source, doubts: Doubts) -> Source:
    """The same object where there are none, so that a file that is the same is seen to be."""
    return source if source.doubts == doubts else replace(source, doubts=doubts)
