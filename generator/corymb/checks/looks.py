"""Can every change that a variant, or a recipe based on another, asks for be made?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.checks.changing import Lines, try_changes
from corymb.ledger import kept
from corymb.studio.circles import ARROW, circles
from corymb.studio.models import Recipe, Variant
from corymb.studio.problems import Problem
from corymb.studio.saying import and_list
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean
from corymb.trade.changes import ChangeError
from corymb.trade.looks import base_lines

CHANGES = ("swap", "add", "drop", "scale")
NOTHING_LEFT = "Nothing is left after these changes: drop less of it, or add something."


def broken_changes(studio: Studio) -> list[Problem]:
    """Every change that can't be made, in all recipes whose stems are known for certain."""
    return [problem for recipe_id in studio.recipes for problem in _broken_in(studio, recipe_id)]


@kept
def _broken_in(studio: Studio, recipe_id: str) -> tuple[Problem, ...]:
    recipe = studio.recipes[recipe_id]
    return tuple(_Changed(studio, recipe).problems()) if is_certain(studio, recipe) else ()


def is_certain(studio: Studio, recipe: Recipe) -> bool:
    """Whether a recipe's stems, and those of what it is based on, are as the writer meant."""
    source = studio.sources["recipe", recipe.id]
    if any(source.has_doubts(key) for key in ("based on", "stems", *CHANGES)):
        return False
    if recipe.based_on is None:
        return True
    base = studio.recipes.get(recipe.based_on)
    return base is not None and is_certain(studio, base)


class _Changed:
    """One recipe, its own changes and those of its variants tried in turn."""

    def __init__(self, studio: Studio, recipe: Recipe) -> None:
        self.studio, self.recipe = studio, recipe
        self.source = studio.sources["recipe", recipe.id]
        self._lines: dict[str, Lines | None] = {}
        """The lines of each variant that was worked out; None where something is wrong with it."""

    def problems(self) -> Iterator[Problem]:
        """Whatever can't be made."""
        try:
            own = base_lines(self.recipe, self.studio.recipes)
        except ChangeError:  # in a recipe that this one is based on, and told there
            return
        if self.recipe.based_on is None:
            yield from self._idle()
        else:
            own, wrong = try_changes(self.studio, own, self.recipe, self.source)
            yield from wrong
            if wrong:
                return
            if not own:
                yield self.source.problem(NOTHING_LEFT, "drop", at_key=True)
                return
        yield from self._strange_parents()
        for variant_id in self.recipe.variants:
            yield from self._variant(variant_id, own)

    def _idle(self) -> Iterator[Problem]:
        """Changes in a recipe that starts from nothing."""
        for key in CHANGES:
            if key in self.source.tree.data and "stems" in self.source.tree.data:
                message = (
                    f"`{key}` has nothing to change here: put it below a variant, or say which "
                    "recipe this one is `based on`."
                )
                yield self.source.problem(message, key, at_key=True)

    def _strange_parents(self) -> Iterator[Problem]:
        """Variants that build on one that isn't there, or on themselves."""
        variants = self.recipe.variants
        for variant_id, variant in variants.items():
            below = variant.builds_on
            if below is not None and below not in variants:
                others = [name for name in variants if name != variant_id]
                there = f" It has {and_list(others)}." if others else " It has no other."
                message = f"This recipe has no variant called ‘{below}’."
                message += did_you_mean(below, others) or there
                yield self.source.problem(message, "variants", variant_id, "builds on")
                self._lines[variant_id] = None
        leads = {name: [v.builds_on] if v.builds_on else [] for name, v in variants.items()}
        for way in circles(leads):
            message = (
                f"These variants build on each other: {ARROW.join(way)}. "
                "One of them must start from the recipe itself, with no `builds on`."
                if len(way) > 2
                else "This variant builds on itself: name another one, or take the line out."
            )
            yield self.source.problem(message, "variants", way[0], "builds on")
            self._lines |= dict.fromkeys(way)

    def _variant(self, variant_id: str, own: Lines) -> Iterator[Problem]:
        """What can't be made in a variant, those that it builds on worked out before it."""
        if variant_id in self._lines:
            return
        variant = self.recipe.variants[variant_id]
        start: Lines | None = own
        if variant.builds_on is not None:
            yield from self._variant(variant.builds_on, own)
            start = self._lines[variant.builds_on]
        self._lines[variant_id] = None
        if start is not None and not self._is_unclear(variant_id):
            yield from self._changed_variant(variant_id, variant, start)

    def _is_unclear(self, variant_id: str) -> bool:
        return any(
            self.source.has_doubts("variants", variant_id, key) for key in ("builds on", *CHANGES)
        )

    def _changed_variant(
        self, variant_id: str, variant: Variant, start: Lines
    ) -> Iterator[Problem]:
        here = self.source.within("variants", variant_id)
        lines, wrong = try_changes(self.studio, start, variant, here)
        yield from wrong
        if not wrong and not lines and start:
            yield here.problem(NOTHING_LEFT, at_key=True)
        elif not wrong:
            self._lines[variant_id] = lines
