"""Which model reads which part of a file, and under which keys?"""

from __future__ import annotations

from functools import cache
from types import UnionType
from typing import Annotated, Any, Union, get_args, get_origin

from corymb.studio.models.base import FileModel

Step = str | int
Steps = tuple[Step, ...]


@cache
def keys_of(model: type[FileModel]) -> tuple[str, ...]:
    """The keys that a model reads, as they are written in YAML."""
    return tuple(str(field.alias) for field in model.model_fields.values())


@cache
def needed_keys(model: type[FileModel]) -> tuple[str, ...]:
    """Those of them that can't be left out."""
    return tuple(str(f.alias) for f in model.model_fields.values() if f.is_required())


def kind_at(model: type[FileModel], path: Steps) -> Any:
    """The type of what stands at `path`; None where the model has nothing."""
    kind: Any = model
    for step in path:
        here = as_model(kind)
        if here is not None:
            fields = {str(f.alias): f.annotation for f in here.model_fields.values()}
            kind = fields.get(str(step))
        else:  # a list or a dict: what it holds
            kind = (get_args(kind) or (None,))[-1]
    return kind


def model_at(model: type[FileModel], path: Steps) -> type[FileModel] | None:
    """The model that reads the keys at `path`; None where a value or a list stands."""
    return as_model(kind_at(model, path))


def holds_several(kind: Any) -> bool:
    """Whether a list or keys are wanted, rather than one value."""
    return as_model(kind) is not None or get_origin(kind) in (list, dict)


def as_model(kind: Any) -> type[FileModel] | None:
    """The model itself, or the one inside `Annotated[Model, ...]` or `Model | None`."""
    if isinstance(kind, type) and issubclass(kind, FileModel):
        return kind
    if get_origin(kind) is Annotated:
        return as_model(get_args(kind)[0])
    if get_origin(kind) in (Union, UnionType):
        return next((m for m in map(as_model, get_args(kind)) if m is not None), None)
    return None
