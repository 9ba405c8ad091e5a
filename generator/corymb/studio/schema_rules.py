"""What holds between the keys of a file, and which things may be written as one line of text?

Patterns are held no tighter than the readers in `corymb.studio.values`, but for capitals: those
read any, and an editor asks for small letters.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from corymb.studio.models import Recipe
from corymb.studio.models.recipe import inherited_keys
from corymb.studio.words import ESSENTIAL, FROM_THE_MIX, LONG_FORMS, MAKINGS, ROLES, USES


@dataclass(frozen=True)
class ShortForm:
    """A thing written as one line."""

    description: str
    pattern: str
    examples: tuple[str, ...]
    kinds: tuple[str, ...] = ("string",)


def _needed() -> list[str]:
    """The keys that a recipe needs unless it takes them over from the one it is based on."""
    inherited = inherited_keys()
    return [
        str(field.alias)
        for field in Recipe.model_fields.values()
        if field.is_required() and field.alias in inherited
    ]


_ID = "[a-z0-9]+(-[a-z0-9]+)*"
_COUNT = "[0-9]+( *[x×])? +"
_ROLE = "|".join(ROLES)
_PARTS = "|".join((*ROLES, *USES, ESSENTIAL))
_ORDERED = "|".join((*MAKINGS, FROM_THE_MIX))

SHORT_FORMS = {
    "RecipeLine": ShortForm(
        "COUNT STEM, ROLE; and after more commas a use, `essential`.",
        rf"^(?=.*, *({_ROLE}) *(,|$)) *{_COUNT}{_ID}( *, *({_PARTS}))* *$",
        ("7 smoke-bush, depth", "3 dahlia-shell, light, essential"),
    ),
    "Swap": ShortForm(
        "OUT -> IN; with counts where they differ, and a role after a comma where it changes.",
        rf"^ *({_COUNT})?{_ID} *(->|→|=>|⇒) *({_COUNT})?{_ID}( *, *({_ROLE}))? *$",
        ("sweet-pea-plum -> scabious-plum", "3 dahlia-shell -> 5 cosmos-white, accent"),
    ),
    "Drop": ShortForm(
        "STEM, for all of it; or COUNT STEM, for so many fewer.",
        rf"^ *({_COUNT})?{_ID} *$",
        ("wild-carrot", "2 dahlia-shell"),
    ),
    "Sundry": ShortForm(
        "COUNT NAME, COST; a unit may stand before the name.",
        r"^ *[0-9][0-9.]*( *[x×])? +.+, *[^,]+$",
        ("1 pint jar, 1.20", "0.3 m jute twine, 0.05"),
    ),
    "Scales": ShortForm(
        "All of it, so many times as much.",
        r"^ *[0-9.]+ *(%|[Pp]er *[Cc]ent)? *$",
        ("120 %",),
        ("string", "number"),
    ),
    "OrderLine": ShortForm(
        "QUANTITY RECIPE, VARIANT, SIZE; then `made up` or `in buckets`, and `from the mix`.",
        rf"^ *{_COUNT}{_ID}( *, *({_ORDERED}|{_ID}))* *$",
        ("12 hedgerow-jar", "6 hedgerow-jar, later, small, in buckets"),
    ),
    "LinkItem": ShortForm(
        "RECIPE, VARIANT, SIZE.",
        rf"^ *{_ID}( *, *{_ID}){{0,2}} *$",
        ("hedgerow-jar", "hedgerow-jar, later, small"),
    ),
}

RULES: dict[str, dict[str, Any]] = {
    "Stem": {
        "if": {"properties": {"form": {"enum": list(LONG_FORMS)}}, "required": ["form"]},
        "then": {"required": ["head length"]},
    },
    "Recipe": {
        "required": ["name"],
        "if": {"not": {"required": ["based on"]}},
        "then": {"required": ["stems", *_needed()]},
    },
    "Variant": {"anyOf": [{"required": [key]} for key in ("swap", "add", "drop", "scale")]},
    "StandingOrder": {"anyOf": [{"required": ["lines"]}, {"required": ["rotation"]}]},
}
