"""A short form as the keys of its long form, for the models.

Each short form is read into a frozen value that prints itself again (`recipe_lines.py`,
`order_lines.py`); here it becomes the keys a file would have had, the given ones only.
"""

from typing import Any

from corymb.studio.keys import key_of
from corymb.studio.values.order_lines import (
    LinkItemText,
    OrderLineText,
    parse_link_item,
    parse_order_line,
)
from corymb.studio.values.recipe_lines import (
    DropText,
    RecipeLineText,
    SundryText,
    SwapText,
    parse_drop,
    parse_recipe_line,
    parse_sundry,
    parse_swap,
)

__all__ = [
    "DropText",
    "LinkItemText",
    "OrderLineText",
    "RecipeLineText",
    "SundryText",
    "SwapText",
    "drop",
    "link_item",
    "order_line",
    "parse_drop",
    "parse_link_item",
    "parse_order_line",
    "parse_recipe_line",
    "parse_sundry",
    "parse_swap",
    "recipe_line",
    "sundry",
    "swap",
]


def recipe_line(text: str) -> dict[str, Any]:
    """A recipe line's keys."""
    line = parse_recipe_line(text)
    return _given(
        stem=line.stem, count=line.count, role=line.role, use=line.use, essential=line.essential
    )


def swap(text: str) -> dict[str, Any]:
    """A swap's keys."""
    read = parse_swap(text)
    return _given(
        out=read.out,
        out_count=read.out_count,
        in_=read.into,
        in_count=read.into_count,
        role=read.role,
    )


def drop(text: str) -> dict[str, Any]:
    """A drop's keys."""
    read = parse_drop(text)
    return _given(stem=read.stem, count=read.count)


def order_line(text: str) -> dict[str, Any]:
    """An order line's keys; a single word is given as the variant, and may be the size."""
    read = parse_order_line(text)
    variant, size = (*read.words, None, None)[:2]
    return _given(
        quantity=read.quantity,
        recipe=read.recipe,
        variant=variant,
        size=size,
        in_buckets=read.in_buckets,
        from_the_mix=read.from_the_mix,
    )


def sundry(text: str) -> dict[str, Any]:
    """A sundry's keys."""
    read = parse_sundry(text)
    return _given(name=read.name, count=read.count, unit=read.unit or None, cost=read.cost)


def link_item(text: str) -> dict[str, Any]:
    """A link item's keys; a single word is given as the variant, and may be the size."""
    read = parse_link_item(text)
    variant, size = (*read.words, None, None)[:2]
    return _given(recipe=read.recipe, variant=variant, size=size)


def _given(**values: object) -> dict[str, Any]:
    """The keys that have a value, as they are written in a file."""
    return {key_of(name): value for name, value in values.items() if value is not None}
