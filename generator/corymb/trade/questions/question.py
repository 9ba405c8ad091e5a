"""What is a question, and what is it made from?

A question has one right answer among three or four, and none of the others is right in any
reading of the studio's files. Which come up is chosen by a digest of names, so the same studio is
always asked the same. Words are put to it in the views.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from hashlib import sha256

from corymb.studio.models import Recipe, Stem, Style
from corymb.trade.looks import Look
from corymb.trade.season.beds import Beds
from corymb.trade.swaps.limits import HOUSE_LIMITS, SwapLimits
from corymb.trade.swaps.standing_in import StandIns
from corymb.trade.training.lessons import Lessons

FEWEST, MOST = 3, 4
"""Choices of a question."""


@dataclass(frozen=True)
class Question:
    """One question; what `about` and `choices` hold is told by the module of its kind."""

    kind: str
    style: str
    """The style it is of, by id; empty where it is of none."""
    recipe: str
    """The recipe it is of, by id; empty where it is of none."""
    about: tuple[str, ...]
    choices: tuple[str, ...]
    right: int

    @property
    def answer(self) -> str:
        """The right one of the choices."""
        return self.choices[self.right]

    @property
    def wrong(self) -> tuple[str, ...]:
        """The other choices."""
        return tuple(each for i, each in enumerate(self.choices) if i != self.right)


@dataclass(frozen=True)
class Known:
    """All that questions are made from: a studio's plants, looks, styles and lessons, and a week.

    `looks` are by recipe and variant, as a catalogue has them.
    """

    stems: Mapping[str, Stem]
    recipes: Mapping[str, Recipe]
    looks: Mapping[str, Mapping[str, Look]]
    styles: Mapping[str, Style]
    lessons: Lessons
    beds: Beds
    week: int
    limits: SwapLimits = HOUSE_LIMITS

    @cached_property
    def stand_ins(self) -> StandIns:
        """What may stand in for what."""
        return StandIns(self.stems, self.limits)

    def own(self, recipe: str) -> Look:
        """A recipe as it is written."""
        return self.looks[recipe][""]

    def of_recipe(self, recipe: str) -> list[str]:
        """The stems of a recipe and of its variants, by id."""
        lines = (line for look in self.looks[recipe].values() for line in look.lines)
        return list(dict.fromkeys(line.stem for line in lines))

    def of_style(self, style: str) -> list[str]:
        """The stems of all recipes of a style."""
        recipes = (each for each in self.looks if self.recipes[each].style == style)
        return list(dict.fromkeys(stem for each in recipes for stem in self.of_recipe(each)))

    def apart(self, right: str, wrong: Iterable[str]) -> list[str]:
        """Those of the wrong stems that nobody takes for the right one or for each other."""
        names, kept = {self.stems[right].name}, []
        for each in wrong:
            name = self.stems[each].name
            if name not in names:
                names.add(name)
                kept.append(each)
        return kept


def dealt(items: Iterable[str], seed: str) -> list[str]:
    """In an order that looks like chance and is always the same for a seed."""
    return sorted(items, key=lambda item: sha256(f"{seed}: {item}".encode()).digest())


def put(
    kind: str, style: str, recipe: str, about: tuple[str, ...], right: str, wrong: Iterable[str]
) -> Iterator[Question]:
    """The question, where there are wrong answers enough; they stand in no order to go by."""
    wrong = list(wrong)[: MOST - 1]
    if len(wrong) < FEWEST - 1:
        return
    choices = dealt([right, *wrong], f"{kind} {style} {recipe} {' '.join(about)}")
    yield Question(kind, style, recipe, about, tuple(choices), choices.index(right))


def in_numbers(questions: Iterable[Question]) -> Iterator[Question]:
    """The same with choices that are numbers, in their order."""
    for each in questions:
        choices = tuple(sorted(each.choices, key=int))
        yield Question(
            each.kind,
            each.style,
            each.recipe,
            each.about,
            choices,
            choices.index(each.answer),
        )
