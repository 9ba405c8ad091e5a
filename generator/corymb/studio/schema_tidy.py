"""How does a generated schema become one that an editor's user likes to read?

Titles that only repeat the key go, as do empty defaults and the choice of writing nothing;
defaults and examples stand as one would write them in YAML.
"""

from __future__ import annotations

from typing import Any

NOTHING = {"type": "null"}


def tidied(node: Any, in_properties: bool = False) -> Any:
    """The schema, or a part of it, tidied throughout."""
    if isinstance(node, list):
        return [tidied(part) for part in node]
    if not isinstance(node, dict):
        return node
    if in_properties:
        return {key: _property(tidied(part)) for key, part in node.items()}
    parts = {key: tidied(part, key in ("properties", "$defs")) for key, part in node.items()}
    return _named_things(_plain_values(_never_nothing(parts)))


def _property(part: dict[str, Any]) -> dict[str, Any]:
    if part.get("type") == "object" and "properties" in part:  # a definition keeps its name
        return part
    return {key: value for key, value in part.items() if key != "title"}


def _never_nothing(node: dict[str, Any]) -> dict[str, Any]:
    """`anyOf` without the choice of nothing; folded in when one choice is left."""
    choices = node.get("anyOf")
    if not isinstance(choices, list) or NOTHING not in choices:
        return node
    left = [choice for choice in choices if choice != NOTHING]
    rest = {key: value for key, value in node.items() if key != "anyOf"}
    return {**left[0], **rest} if len(left) == 1 else {**rest, "anyOf": left}


def _plain_values(node: dict[str, Any]) -> dict[str, Any]:
    node = dict(node)
    if "default" in node:
        default = _as_written(node.pop("default"))
        if default is not None:
            node["default"] = default if "string" in _types(node) else _number(default)
    if node.get("examples") == []:
        del node["examples"]
    if "string" not in _types(node) and isinstance(node.get("examples"), list):
        node["examples"] = [_number(example) for example in node["examples"]]
    return node


def _number(example: Any) -> Any:
    if not isinstance(example, str):
        return example
    return float(example) if "." in example else int(example)


def _types(node: dict[str, Any]) -> tuple[str, ...]:
    kinds = node.get("type", "string")
    return (kinds,) if isinstance(kinds, str) else tuple(kinds)


def _as_written(default: Any) -> Any:
    """A default as one writes it; None where there is nothing to say."""
    if default in (None, "", [], {}) or isinstance(default, dict):
        return None
    if isinstance(default, bool):
        return "yes" if default else "no"
    if isinstance(default, str):
        return default.removeprefix("#")  # in YAML a comment would begin there
    return default


def _named_things(node: dict[str, Any]) -> dict[str, Any]:
    """Things by id: every key is held to the pattern of ids, and what isn't one is told."""
    patterns = node.get("patternProperties")
    if not patterns:
        return node
    ((pattern, things),) = patterns.items()
    rest = {key: value for key, value in node.items() if key != "patternProperties"}
    names = {**node.get("propertyNames", {}), "pattern": pattern}
    return {**rest, "propertyNames": names, "additionalProperties": things}
