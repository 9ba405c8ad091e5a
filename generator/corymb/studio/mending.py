"""What would a file say without its slips? So that all others are found in the same run.

A part that is wrong or missing gets an example in its place, or is left out where it may be.
The thing made that way is good for looking further, never for building from; each such place is
*in doubt*, and nothing is told about it twice.
"""

from __future__ import annotations

from typing import Any

from corymb.studio.examples import data_of, example_of
from corymb.studio.models.base import FileModel
from corymb.studio.shape import Step, Steps, keys_of, model_at, needed_keys
from corymb.studio.values.text import slug

Doubts = frozenset[Steps]
NONE: Doubts = frozenset()
ALL: Doubts = frozenset({()})


def in_doubt(doubts: Doubts, path: Steps) -> bool:
    """Whether `path` lies in a part of the file that isn't known for certain."""
    return bool(doubts) and any(path[:length] in doubts for length in range(len(path) + 1))


def has_doubts(doubts: Doubts, path: Steps) -> bool:
    """Whether `path`, or anything in it, isn't known for certain."""
    return in_doubt(doubts, path) or any(doubt[: len(path)] == path for doubt in doubts)


def copy_of(data: Any) -> Any:
    """The same lists and keys anew; the texts in them are never changed."""
    if isinstance(data, dict):
        return {key: copy_of(value) for key, value in data.items()}
    return [copy_of(value) for value in data] if isinstance(data, list) else data


def value_at(data: Any, path: Steps) -> Any:
    """What stands at `path`; None where nothing does."""
    for step in path:
        data = _step(data, step)
    return data


def as_far_as_written(data: Any, path: Steps) -> Steps:
    """The path cut where the file goes on as one line of text."""
    for length, step in enumerate(path):
        if not isinstance(data, dict | list):
            return path[:length]
        data = _step(data, step)
    return path


def leave_out(data: Any, path: Steps) -> None:
    """Take a key out."""
    parent = value_at(data, path[:-1])
    if isinstance(parent, dict):
        parent.pop(path[-1], None)


def rename(data: Any, path: Steps) -> Steps:
    """Give what stands under an id that can't be one the id that was meant; its new path."""
    parent, meant = value_at(data, path[:-1]), slug(str(path[-1]))
    if not isinstance(parent, dict) or not meant or meant in parent:
        leave_out(data, path)
        return path
    things = {meant if key == path[-1] else key: value for key, value in parent.items()}
    parent.clear()
    parent.update(things)
    return (*path[:-1], meant)


def mend(model: type[FileModel], data: Any, path: Steps) -> None:
    """Leave out what may be left out; put an example in the place of all else."""
    reader = model_at(model, path[:-1])
    if reader is not None and path[-1] in set(keys_of(reader)) - set(needed_keys(reader)):
        leave_out(data, path)
        return
    put_example(model, data, path)


def put_example(model: type[FileModel], data: Any, path: Steps) -> None:
    """Put an example in the place of what is at `path`, if there is one to put."""
    parent, example = value_at(data, path[:-1]), _example_at(model, path)
    if isinstance(parent, dict) and example is not None:
        parent[path[-1]] = example
    if isinstance(parent, list) and isinstance(path[-1], int) and example is not None:
        parent[path[-1]] = example


def _example_at(model: type[FileModel], path: Steps) -> Any:
    """The example of a key; in a list, or under an id, the first of the example's own."""
    reader = model_at(model, path[:-1])
    if reader is not None:
        text = example_of(reader, str(path[-1]))
        return data_of(text) if text else None
    around = _example_at(model, path[:-1])
    if isinstance(around, dict):
        return next(iter(around.values()), None)
    return around[0] if isinstance(around, list) and around else None


def _step(data: Any, step: Step) -> Any:
    if isinstance(data, dict):
        return data.get(str(step))
    if isinstance(data, list) and isinstance(step, int) and step < len(data):
        return data[step]
    return None
