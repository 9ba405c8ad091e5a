"""Recipes, stems, a style and lessons for the trade's tests, as a studio would write them."""

from __future__ import annotations

from typing import Any

from corymb.studio.models import Recipe, Stem, Style, Technique

RECIPE: dict[str, Any] = {
    "name": "Gate jar",
    "summary": "A jar for the gate.",
    "difficulty": "easy",
    "time": "20 min",
    "across": "20 cm",
    "high": "26 cm",
    "vessel": {"kind": "jar", "name": "pint jar"},
    "stems": ["6 rose, light, essential", "4 mint, depth", "2 poppy, accent"],
    "method": ["Fill the jar."],
}

STEM: dict[str, Any] = {
    "name": "Rose",
    "botanical": "Rosa",
    "use": "focal",
    "form": "rosette",
    "colours": ["blush e8c2b4 100 %"],
    "head": "6 cm",
    "length": "40-60 cm",
    "weight": "20 g",
    "in season": "June - September",
    "vase life": "5-7 days",
    "cut when": "half open",
    "conditioning": {"hours": "6", "do": "Stand deep."},
    "stems per bucket": "25",
    "cutting step": "25",
    "grown": "0.40",
    "source": "common practice, no source",
}


STYLE: dict[str, Any] = {
    "name": "Posy",
    "plural": "Posies",
    "about": "Small and rounded.",
    "place": "table with food",
    "stem length": "12-30 cm",
    "heaviest stem": "30 g",
    "excludes": ["poisonous if eaten", "thorns"],
}


LESSON: dict[str, Any] = {
    "title": "Tying",
    "summary": "Tie it once.",
    "minutes": "20",
    "level": "easy",
}


def recipe(known_as: str = "gate-jar", **keys: Any) -> Recipe:
    """A recipe with some keys of its own; `based_on=...` is the key `based on`."""
    own = {key.rstrip("_").replace("_", " "): value for key, value in keys.items()}
    data = {key: value for key, value in {**RECIPE, **own}.items() if value is not None}
    return Recipe.model_validate(data).with_id(known_as).in_style("posy")


def stem(known_as: str = "rose", **keys: Any) -> Stem:
    """A stem with some keys of its own."""
    own = {key.rstrip("_").replace("_", " "): value for key, value in keys.items()}
    return Stem.model_validate({**STEM, **own}).with_id(known_as)


def style(known_as: str = "posy", **keys: Any) -> Style:
    """A style with some keys of its own."""
    own = {key.rstrip("_").replace("_", " "): value for key, value in keys.items()}
    return Style.model_validate({**STYLE, **own}).with_id(known_as)


def variant(**keys: Any) -> dict[str, Any]:
    """A variant with some keys of its own."""
    own = {key.rstrip("_").replace("_", " "): value for key, value in keys.items()}
    return {"name": "Other", "about": "Another way.", **own}


def lesson(known_as: str = "tying", **keys: Any) -> Technique:
    """A lesson's heading with some keys of its own."""
    own = {key.rstrip("_").replace("_", " "): value for key, value in keys.items()}
    return Technique.model_validate({**LESSON, "title": known_as, **own}).with_id(known_as)
