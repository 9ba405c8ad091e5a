"""How is one number changed in a recipe's file: a stem's count, or the time it takes?

The text stays letter by letter but for that number; a short line stays short, a long one long.
Raises ValueError where the file can't be changed so that it reads back as meant.
"""

from __future__ import annotations

import re
from copy import deepcopy
from dataclasses import replace
from pathlib import Path
from typing import Any

from corymb.studio.rewriting import Rewriting
from corymb.studio.shape import Step
from corymb.studio.values.recipe_lines import parse_swap
from corymb.studio.values.time import Duration
from corymb.studio.yaml_tree import read_tree

BY_HAND = "this can't be changed by itself: change it by hand"
COUNT = re.compile(r"^\s*\d+")


def with_number(text: str, path: tuple[Step, ...], number: int) -> str:
    """The file's text with another number at `path`: a line of stems, a swap, or a time."""
    before, problems = read_tree(text, Path())
    if before is None or any(not problem.advice for problem in problems):
        raise ValueError("this file holds errors; put them right first: corymb check")
    file = Rewriting(text)
    path = _to_the_number(before.data, path)
    old = _at(before.data, path)
    new = _written(str(old), path, number)
    node, in_flow = _node(file, path)
    file.replace(node, new, in_flow=in_flow)
    done = file.result()
    wanted = deepcopy(before.data)
    _at(wanted, path[:-1])[path[-1]] = new
    after, faults = read_tree(done, Path())
    if after is None or any(not fault.advice for fault in faults) or after.data != wanted:
        raise ValueError(BY_HAND)
    return done


def _to_the_number(data: Any, path: tuple[Step, ...]) -> tuple[Step, ...]:
    """The path, in a line's long form on to its count."""
    line = _at(data, path)
    if not isinstance(line, dict):
        return path
    key = "in count" if "swap" in path else "count"
    if key not in line:
        raise ValueError(BY_HAND)
    return (*path, key)


def _written(old: str, path: tuple[Step, ...], number: int) -> str:
    """The value as it is written from now on."""
    if path[-1] == "time":
        return str(Duration(number))
    if path[-1] in ("count", "in count"):
        return str(number)
    if path[-2] == "swap":
        return str(replace(parse_swap(old), into_count=number))
    return COUNT.sub(str(number), old)


def _at(data: Any, path: tuple[Step, ...]) -> Any:
    for step in path:
        data = data[step]
    return data


def _node(file: Rewriting, path: tuple[Step, ...]) -> tuple[Any, bool]:
    """The YAML node of a value, and whether it stands in brackets or braces."""
    node, in_flow = file.value(str(path[0])), False
    for step in path[1:]:
        in_flow = in_flow or node.flow_style
        if isinstance(step, int):
            node = node.value[step]
        else:
            node = next(value for name, value in node.value if name.value == step)
    return node, in_flow
