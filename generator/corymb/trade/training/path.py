"""What does a helper learn and make next, from the first lesson to the hardest piece, and why now?

A lesson comes after those it needs, a recipe after the lessons that it asks for. Of what may come
next the easier goes first. At one level a recipe that puts a lesson to its first use comes at
once, since what is practised the same day is kept; then the next lesson; then more practice, a
style not made before first, the shorter piece first.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from graphlib import TopologicalSorter
from typing import Literal

from corymb.studio.models import Recipe
from corymb.studio.words import DIFFICULTIES
from corymb.trade.hours.learning import HELPER, whole_minutes
from corymb.trade.training.lessons import Lessons

Kind = Literal["lesson", "recipe"]
Node = tuple[Kind, str]


@dataclass(frozen=True)
class PathStep:
    """One lesson to learn or one recipe to make, and why it comes now."""

    kind: Kind
    id: str
    minutes: int
    """Of a lesson its own; of a recipe what a helper's first piece takes."""
    after: tuple[str, ...]
    """The lessons it asks for, in the order of the path."""
    first_use_of: tuple[str, ...] = ()
    """Of a recipe: the lessons that nothing before it has put to use."""
    first_of_style: bool = False
    opens: tuple[str, ...] = ()
    """Of a lesson: the recipes that lacked only this one."""


@dataclass
class _Way:
    """How far one has come."""

    lessons: Lessons
    recipes: Mapping[str, Recipe]
    learnt: list[str] = field(default_factory=list)
    used: set[str] = field(default_factory=set)
    styles: set[str] = field(default_factory=set)

    def asked(self, recipe: str) -> list[str]:
        return [each for each in self.recipes[recipe].techniques if each in self.lessons]

    def new_in(self, recipe: str) -> tuple[str, ...]:
        asked = self.asked(recipe)
        return tuple(each for each in self.learnt if each in asked and each not in self.used)

    def rank(self, node: Node) -> tuple[object, ...]:
        """Lower comes sooner."""
        kind, known_as = node
        if kind == "lesson":
            lesson = self.lessons[known_as]
            return DIFFICULTIES.index(lesson.level), 1, lesson.order, False, 0.0, known_as
        recipe = self.recipes[known_as]
        new, seen = len(self.new_in(known_as)), recipe.style in self.styles
        first = (0, -new) if new else (2, 0)
        level = DIFFICULTIES.index(recipe.difficulty)
        return level, *first, seen, recipe.time.minutes, known_as

    def go(self, node: Node) -> PathStep:
        """Take the step, and tell why it came."""
        kind, known_as = node
        if kind == "lesson":
            lesson = self.lessons[known_as]
            after = tuple(each for each in self.learnt if each in lesson.needs)
            self.learnt.append(known_as)
            return PathStep(kind, known_as, lesson.minutes, after, opens=self._opened(known_as))
        recipe = self.recipes[known_as]
        asked = self.asked(known_as)
        step = PathStep(
            kind,
            known_as,
            whole_minutes(HELPER.piece_minutes(recipe.time.minutes, 1)),
            tuple(each for each in self.learnt if each in asked),
            self.new_in(known_as),
            recipe.style not in self.styles,
        )
        self.used.update(asked)
        self.styles.add(recipe.style)
        return step

    def _opened(self, lesson: str) -> tuple[str, ...]:
        return tuple(
            each
            for each in self.recipes
            if lesson in self.asked(each) and set(self.asked(each)) <= set(self.learnt)
        )


def path(lessons: Lessons, recipes: Mapping[str, Recipe]) -> tuple[PathStep, ...]:
    """Every lesson and every recipe once, in the order to take them.

    Raises graphlib.CycleError where lessons need each other in a circle.
    """
    return tuple(_steps(_Way(lessons, recipes)))


def _steps(way: _Way) -> Iterator[PathStep]:
    sorter: TopologicalSorter[Node] = TopologicalSorter()
    for known_as, lesson in way.lessons.items():
        needs = [each for each in lesson.needs if each in way.lessons]
        sorter.add(("lesson", known_as), *(("lesson", each) for each in needs))
    for known_as in way.recipes:
        sorter.add(("recipe", known_as), *(("lesson", each) for each in way.asked(known_as)))
    sorter.prepare()
    ready: set[Node] = set()
    while sorter.is_active():
        ready.update(sorter.get_ready())
        node = min(ready, key=way.rank)
        ready.remove(node)
        yield way.go(node)
        sorter.done(node)
