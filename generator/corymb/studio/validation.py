"""From a file's tree to its model; and from what the model refuses to a florist's sentence."""

from __future__ import annotations

from types import UnionType
from typing import Annotated, Any, TypeVar, Union, get_args, get_origin

from pydantic import ValidationError
from pydantic_core import ErrorDetails

from corymb.studio.models.base import FileModel
from corymb.studio.problems import Problem
from corymb.studio.studio import Source, Step
from corymb.studio.suggest import did_you_mean, known_words

Model = TypeVar("Model", bound=FileModel)


def validate(
    model: type[Model], data: dict[str, Any], source: Source
) -> tuple[Model | None, list[Problem]]:
    """The model made of `data`, or every reason why it can't be."""
    try:
        return model.model_validate(data), []
    except ValidationError as error:
        return None, [
            problem
            for detail in error.errors(include_url=False)
            if (problem := _problem(model, detail, source)) is not None
        ]


def _problem(model: type[FileModel], detail: ErrorDetails, source: Source) -> Problem | None:
    path = _path_in_file(detail["loc"])
    key = path[-1] if path else ""
    if _taken_over(path, source):
        return None
    where = _model_at(model, path[:-1])
    match detail["type"]:
        case "missing":
            return source.problem(_missing(str(key), where), *path[:-1])
        case "extra_forbidden":
            return source.problem(_unknown(str(key), where), *path, at_key=True)
    in_key = "[key]" in detail["loc"]
    return source.problem(_wrong(detail, key), *path, at_key=in_key)


def _path_in_file(loc: tuple[Step, ...]) -> tuple[Step, ...]:
    return tuple(step for step in loc if step != "[key]")


def _taken_over(path: tuple[Step, ...], source: Source) -> bool:
    """Whether the fault lies in a key taken over from another recipe, and is told there."""
    data = source.tree.data
    if not path or not isinstance(data, dict):
        return False
    return "based on" in data and path[0] not in data


def _missing(key: str, where: type[FileModel] | None) -> str:
    example = _example(key, where)
    return f"`{key}` is missing{f': write for instance `{key}: {example}`' if example else ''}."


def _unknown(key: str, where: type[FileModel] | None) -> str:
    keys = keys_of(where) if where else ()
    guess = did_you_mean(key, keys)
    known = "" if guess else known_words(keys)
    return f"`{key}` is not a key that is known here.{guess}{known}"


def _wrong(detail: ErrorDetails, key: Step) -> str:
    match detail["type"]:
        case "value_error":
            text = str(detail["ctx"]["error"])
            return text if isinstance(key, int) or not key else f"`{key}`: {text}"
        case "list_type":
            return f"`{key}` should be a list: one thing a line, each beginning with `- `."
        case "dict_type" | "model_type" | "model_attributes_type":
            return f"`{key}` should have keys of its own below it, each on a line, set in by two."
        case "too_short":
            return f"`{key}` is empty: it needs at least one line beginning with `- `."
    return f"`{key}`: {detail['msg'][0].lower()}{detail['msg'][1:]}."


def keys_of(model: type[FileModel]) -> tuple[str, ...]:
    """The keys that a model reads, as they are written in YAML."""
    return tuple(str(field.alias) for field in model.model_fields.values())


def _example(key: str, where: type[FileModel] | None) -> str:
    if where is None:
        return ""
    properties = where.model_json_schema().get("properties", {}).get(key, {})
    examples = properties.get("examples") or properties.get("enum") or [""]
    return str(examples[0])


def _model_at(model: type[FileModel], path: tuple[Step, ...]) -> type[FileModel] | None:
    """The model that reads the mapping at `path`, as far as the fields' types tell."""
    kind: Any = model
    for step in path:
        here = _as_model(kind)
        if here is not None:
            fields = {str(f.alias): f.annotation for f in here.model_fields.values()}
            kind = fields.get(str(step))
        else:  # a list or a dict: what it holds
            kind = (get_args(kind) or (None,))[-1]
    return _as_model(kind)


def _as_model(kind: Any) -> type[FileModel] | None:
    """The model itself, or the one inside `Annotated[Model, ...]` or `Model | None`."""
    if isinstance(kind, type) and issubclass(kind, FileModel):
        return kind
    if get_origin(kind) is Annotated:
        return _as_model(get_args(kind)[0])
    if get_origin(kind) in (Union, UnionType):
        return next((m for m in map(_as_model, get_args(kind)) if m is not None), None)
    return None
