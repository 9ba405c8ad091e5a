"""Views filled in by their types alone: every text the same, every list two long.

So a field that is added to a view is tried in the templates without anyone remembering to.
"""

from __future__ import annotations

import dataclasses
from types import NoneType, UnionType
from typing import Any, Literal, Union, get_args, get_origin, get_type_hints

# Texts that the core made safe itself; the templates print them as they are.
TRUSTED = {"html": "<p>Made from Markdown.</p>", "structured_data": '{"@type": "Product"}'}


def filled(kind: Any, text: str, *, empty: bool = False) -> Any:
    """A value of a type: `text` for every text; with `empty`, nothing where that may be."""
    if dataclasses.is_dataclass(kind):
        return filled_view(kind, text, empty)
    origin = get_origin(kind)
    if origin is Literal:
        return get_args(kind)[0]
    if origin is tuple:
        return () if empty else (filled(get_args(kind)[0], text),) * 2
    if origin in (Union, UnionType):
        return None if empty else filled(not_none(kind), text)
    return {str: "" if empty else text, int: 3, float: 12.5, bool: not empty}[kind]


def filled_view(kind: Any, text: str, empty: bool) -> Any:
    """A view of a class, field by field."""
    hints = get_type_hints(kind)
    return kind(
        **{
            field.name: TRUSTED.get(field.name, filled(hints[field.name], text, empty=empty))
            for field in dataclasses.fields(kind)
        }
    )


def not_none(kind: Any) -> Any:
    """What an optional type is when it is there."""
    return next(part for part in get_args(kind) if part is not NoneType)
