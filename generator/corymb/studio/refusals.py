"""What does the writer hear when a model refuses something: what is wrong, and what is right?"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from corymb.studio.examples import data_of, example_of
from corymb.studio.models.base import FileModel
from corymb.studio.saying import and_list
from corymb.studio.shape import (
    Steps,
    as_model,
    holds_several,
    keys_of,
    kind_at,
    model_at,
    needed_keys,
)
from corymb.studio.slip import Slip
from corymb.studio.suggest import quoted

Model = type[FileModel]
SET_IN = "moved in by two spaces"
NOTHING = ("none", "no", "nothing", "safe", "not known", "n/a")
UNTIL = {"may be shown to": ", until the client has said yes"}
"""How long an example holds that keeps something back. Consent is given, never suggested."""


def missing(model: Model, slip: Slip) -> str:
    """For a key that has to be there, or a word that a line of text lacks."""
    key = str(slip.path[-1])
    example = example_of(model_at(model, slip.path[:-1]), key)
    if isinstance(slip.found, str):
        right = quoted(f"{slip.found}, {example}")
        return f"{quoted(slip.found)} doesn't say its {key}: write it last, like {right}."
    if isinstance(data_of(example), list):
        return (
            f"`{key}` is missing: write it with one thing a line below, like {_line(model, slip)}."
        )
    until = UNTIL.get(key, "")
    return f"`{key}` is missing: write for instance `{key}: {example}`{until}."


def unknown(model: Model, slip: Slip, meant: str, free: Iterable[str]) -> str:
    """For a key that no one reads: the one `meant`, or where it belongs, or all that are free."""
    head = f"`{slip.path[-1]}` is not a key here"
    if meant:
        return f"{head}. Did you mean `{meant}`?"
    return f"{head}{_belongs(model, slip.path) or _the_keys(free)}"


def wrong(model: Model, slip: Slip) -> str:
    """For a value that isn't what its key wants, and for keys that don't go together."""
    key = slip.written[-1] if slip.written else ""
    alone = slip.keys or slip.in_key or not isinstance(key, str)
    if _says_no_hazards(slip):
        return (
            "`hazards` names what is known to hurt. Where you know of nothing, leave it out: "
            "that means not known, never safe."
        )
    match slip.kind:
        case "list_type":
            return _a_list(model, slip)
        case "too_short":
            return f"`{key}` is empty: it needs one line at least, like {_line(model, slip)}."
        case "value_error":
            several = "" if slip.keys or slip.in_key else _not_several(model, slip)
            return several or (str(slip.error) if alone else f"`{key}`: {slip.error}")
    return _keys_of_its_own(model, slip)


def _says_no_hazards(slip: Slip) -> bool:
    found = slip.found
    return "hazards" in slip.written[-2:] and isinstance(found, str) and found.casefold() in NOTHING


def _belongs(model: Model, path: Steps) -> str:
    """Where a key belongs that stands one step too far out or in."""
    here, key = model_at(model, path[:-1]), path[-1]
    for fellow in keys_of(here) if here else ():
        inner = as_model(kind_at(model, (*path[:-1], fellow)))
        if inner is not None and key in keys_of(inner):
            return f": it belongs below `{fellow}`, {SET_IN}."
    for length in range(len(path) - 2, -1, -1):
        outer = model_at(model, path[:length])
        if outer is not None and key in keys_of(outer):
            return f": it belongs further out, in line with `{path[length]}`."
    return ""


def _the_keys(free: Iterable[str]) -> str:
    keys = tuple(free)
    return f". The keys still free here are {_and(keys)}." if keys else ": take it out."


def _not_several(model: Model, slip: Slip) -> str:
    """Where a list or keys stand and one value is wanted.

    Nothing where a colon has made one key of a text: its reader tells that better.
    """
    found = slip.found
    if not isinstance(found, list | dict) or holds_several(kind_at(model, slip.written)):
        return ""
    if isinstance(found, dict) and len(found) == 1 and isinstance(next(iter(found.values())), str):
        return ""
    key = slip.written[-1]
    several = "a list" if isinstance(found, list) else "keys of its own"
    if not isinstance(key, str):
        line = _line(model, slip, slip.written[:-1])
        return f"Each line of `{slip.written[-2]}` takes one value, like {line}, not {several}."
    example = example_of(model_at(model, slip.written[:-1]), key)
    return f"`{key}` takes one value, like `{key}: {example}`, not {several}."


def _a_list(model: Model, slip: Slip) -> str:
    key, found = slip.written[-1], slip.found
    if isinstance(found, str) and "," not in found:
        return f"`{key}` is a list, even of one: write `- {found}` on a line of its own below it."
    line = _line(model, slip)
    return f"`{key}` is a list: each thing goes on a line of its own, after a dash, like {line}."


def _line(model: Model, slip: Slip, path: Steps = ()) -> str:
    """The first line of the example of a list, the slip's own or the one at `path`."""
    path = path or slip.written
    text = example_of(model_at(model, path[:-1]), str(path[-1]))
    return f"`- {_in_flow(data_of(text)[0])}`"


def _keys_of_its_own(model: Model, slip: Slip) -> str:
    """Where keys are wanted and a text or a list stands."""
    reader, key = as_model(kind_at(model, slip.written)), slip.written[-1]
    given = quoted(slip.found) if isinstance(slip.found, str) else "A list"
    needed = needed_keys(reader) if reader else ()
    if needed and isinstance(key, int):
        return f"{given} isn't enough: each of `{slip.written[-2]}` needs {_and(needed)}."
    if needed:
        return f"{given} isn't enough: `{key}` needs {_and(needed)} on lines below it, {SET_IN}."
    example = data_of(example_of(model_at(model, slip.written[:-1]), str(key)) or "{}")
    if isinstance(example, str):
        return f"`{key}` takes one value, like `{key}: {example}`, or keys of its own, not a list."
    first, value = next(iter(example.items()), ("…", "…"))
    right = f"`{first}: {_in_flow(value)}`"
    return f"`{key}` takes keys on the lines below it, {SET_IN}, like {right}."


def _in_flow(data: Any) -> str:
    """A value of an example as it is written on one line."""
    if isinstance(data, dict):
        return f"{{{', '.join(f'{key}: {_in_flow(value)}' for key, value in data.items())}}}"
    return str(data)


def _and(keys: Iterable[str]) -> str:
    return and_list(f"`{key}`" for key in keys)
