"""The helper's path in words: each step says why it comes now."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import and_list
from corymb.ledger import kept
from corymb.studio.models import Recipe
from corymb.trade.looks import Look, look_id
from corymb.trade.training.path import PathStep, path
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import time_words
from corymb.views.compose.prose import headings_of
from corymb.views.compose.trade_words import trade_word
from corymb.views.training import PathStepView, PathView

NAMED = 3  # of more recipes that a lesson opens only the number is said: our own choice


def learnt_from(catalogue: Catalogue) -> dict[str, Recipe]:
    """The recipes that a helper is trained on: all but drafts."""
    return {recipe.id: recipe for recipe in catalogue.recipes() if not recipe.draft}


def learnt_looks(catalogue: Catalogue) -> Iterator[Look]:
    """Their looks: as written, and with each variant that is no draft."""
    for recipe in learnt_from(catalogue).values():
        looks = catalogue.looks[recipe.id]
        yield from (looks[variant_id] for variant_id in _learnt_variants(recipe))


def looks_learnt(catalogue: Catalogue) -> Iterator[str]:
    """The same by their ids alone."""
    yield from _looks_learnt(catalogue)


@kept
def _looks_learnt(catalogue: Catalogue) -> tuple[str, ...]:
    recipes = learnt_from(catalogue).values()
    return tuple(look_id(r.id, each) for r in recipes for each in _learnt_variants(r))


def _learnt_variants(recipe: Recipe) -> Iterator[str]:
    """Those to learn from, by id; '' is the recipe itself."""
    yield ""
    yield from (known_as for known_as, variant in recipe.variants.items() if not variant.draft)


def path_view(catalogue: Catalogue) -> PathView:
    """The whole path, and how long it is."""
    steps = path(headings_of(catalogue.studio), learnt_from(catalogue))
    lessons = sum(step.kind == "lesson" for step in steps)
    return PathView(
        steps=tuple(_step(catalogue, step) for step in steps),
        lessons=lessons,
        recipes=len(steps) - lessons,
        time=time_words(sum(step.minutes for step in steps)),
        indicative=indicative(),
    )


def indicative() -> str:
    """What stands beside every time that a helper is measured against."""
    return _(
        "Times are indicative: what a helper’s pieces take by Wright’s learning curve and the "
        "recipes’ own times. Whoever learns well is not always quick."
    )


def _step(catalogue: Catalogue, step: PathStep) -> PathStepView:
    if step.kind == "lesson":
        lesson = catalogue.studio.techniques[step.id].heading
        title, level, practice = lesson.title, lesson.level, ""
        href, why = addresses.of_lesson(step.id), _why_lesson(catalogue, step)
    else:
        recipe = catalogue.studio.recipes[step.id]
        look = catalogue.looks[step.id][""]
        title, level, practice = recipe.name, recipe.difficulty, addresses.of_practice(look)
        href, why = addresses.of_look(look), _why_recipe(catalogue, step)
    return PathStepView(
        kind=step.kind,
        id=step.id,
        title=title,
        href=href,
        practice_href=practice,
        level=trade_word("level", level),
        time=time_words(step.minutes),
        minutes=step.minutes,
        why=tuple(why),
    )


def _why_lesson(catalogue: Catalogue, step: PathStep) -> Iterator[str]:
    if step.after:
        yield _("It builds on {lessons}.").format(lessons=_lessons(catalogue, step.after))
    else:
        yield _("It needs no lesson before it.")
    names = [catalogue.studio.recipes[each].name for each in step.opens]
    if len(names) > NAMED:
        opens = ngettext("It opens {number} recipe.", "It opens {number} recipes.", len(names))
        yield opens.format(number=len(names))
    elif names:
        yield _("It opens {recipes}.").format(recipes=and_list(names))


def _why_recipe(catalogue: Catalogue, step: PathStep) -> Iterator[str]:
    if step.first_use_of:
        told = _("It puts to use for the first time: {lessons}.")
        yield told.format(lessons=_lessons(catalogue, step.first_use_of))
    elif step.after:
        yield _("More practice of {lessons}.").format(lessons=_lessons(catalogue, step.after))
    else:
        yield _("It asks for no lesson.")
    if step.first_of_style:
        style = catalogue.style_of(catalogue.studio.recipes[step.id])
        yield _("The first of a new style: {style}.").format(style=style.name)


def _lessons(catalogue: Catalogue, lessons: tuple[str, ...]) -> str:
    return and_list(catalogue.studio.techniques[each].heading.title for each in lessons)
