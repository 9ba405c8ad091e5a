"""The book of recipes: what goes into it, in which order, and for whom.

Clients' book is made of what clients may see, as their site is; the staff's has the making, the
costs and the lessons too.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping

from corymb.language import gettext as _
from corymb.language.locales import month_of_year
from corymb.studio.models import Recipe, Style, Technique
from corymb.studio.studio import Document
from corymb.studio.words import ROLES
from corymb.trade.looks import Look
from corymb.views.book import (
    BookBench,
    BookChapter,
    BookLesson,
    BookPlace,
    BookRecipe,
    BookRole,
    BookStem,
    BookView,
)
from corymb.views.compose.bench import bench_view
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.images import picture_view
from corymb.views.compose.prices import tax_words
from corymb.views.compose.prose import Prose, lesson_view, lessons_shown
from corymb.views.compose.recipes import client_view
from corymb.views.compose.tint import tint_of
from corymb.views.pieces import Fact, PictureView
from corymb.views.recipe import ClientRecipe, StaffLine

LESSONS, INDEX = "lessons", "index"


def of_chapter(style_id: str) -> str:
    """Where a style's chapter begins."""
    return f"style-{style_id}"


def of_recipe(recipe_id: str) -> str:
    """Where a recipe begins."""
    return f"recipe-{recipe_id}"


def of_lesson(technique_id: str) -> str:
    """Where a lesson begins."""
    return f"lesson-{technique_id}"


def recipes_in(catalogue: Catalogue, styles: Collection[str] = ()) -> list[Recipe]:
    """The recipes of the book in their order; of these styles alone, where any are named."""
    return [each for each in catalogue.recipes() if not styles or each.style in styles]


def lessons_in(catalogue: Catalogue, recipes: Collection[Recipe]) -> list[Document[Technique]]:
    """The lessons of the staff's book: all of them, or with some recipes those they ask for."""
    if not catalogue.staff:
        return []
    whole = len(recipes) == len(catalogue.looks)
    asked = {each for recipe in recipes for each in recipe.techniques}
    return [each for each in lessons_shown(catalogue) if whole or each.id in asked]


def book_view(
    catalogue: Catalogue,
    prose: Mapping[str, Prose],
    styles: Collection[str] = (),
) -> BookView:
    """The book before any printing has told its pages; `prose` are its lessons, by id."""
    recipes = recipes_in(catalogue, styles)
    lessons = [each for each in lessons_in(catalogue, recipes) if each.id in prose]
    known = {each.id for each in lessons}
    anchors = {each.id for each in recipes}
    by_style: dict[str, list[BookRecipe]] = {}
    for recipe in recipes:
        by_style.setdefault(recipe.style, []).append(_recipe(catalogue, recipe, anchors, known))
    priced = any(recipe.price for recipe in recipes)
    return BookView(
        title=_("The recipe book") if catalogue.staff else _("Our arrangements"),
        made_on=month_of_year(catalogue.today),
        lead=_lead(catalogue, recipes),
        tax=tax_words(catalogue.studio.house) if priced else "",
        chapters=tuple(
            _chapter(catalogue.studio.house.styles[style], found)
            for style, found in by_style.items()
        ),
        lessons_anchor=LESSONS,
        lessons=tuple(_lesson(catalogue, each, prose[each.id]) for each in lessons),
        index_anchor=INDEX,
        index=tuple(_index(catalogue, recipes)),
        numbers=(),
    )


def _lead(catalogue: Catalogue, recipes: Iterable[Recipe]) -> PictureView | None:
    """The most generous of them, for the title page."""
    looks = (catalogue.looks[recipe.id][""] for recipe in recipes)
    most = max(looks, key=lambda look: (look.stems_total, look.id), default=None)
    return picture_view(catalogue, most) if most else None


def _chapter(style: Style, recipes: list[BookRecipe]) -> BookChapter:
    return BookChapter(of_chapter(style.id), style.plural, style.about, tuple(recipes))


def _recipe(
    catalogue: Catalogue, recipe: Recipe, known: Collection[str], lessons: Collection[str]
) -> BookRecipe:
    look = catalogue.looks[recipe.id][""]
    view = client_view(catalogue, look)
    return BookRecipe(
        anchor=of_recipe(recipe.id),
        view=view,
        tint=tint_of(view.band),
        roles=tuple(_roles(catalogue, look, view)),
        goes_with=tuple(
            BookPlace(of_recipe(kin.recipe), catalogue.studio.recipes[kin.recipe].name)
            for kin in catalogue.kin[recipe.id]
            if kin.recipe in known
        ),
        bench=_bench(catalogue, recipe, look, lessons) if catalogue.staff else None,
    )


def _roles(catalogue: Catalogue, look: Look, view: ClientRecipe) -> Iterator[BookRole]:
    noted = [
        StaffLine(**vars(line), note=own.note if catalogue.staff else "")
        for line, own in zip(view.lines, look.lines, strict=True)
    ]
    for role in ROLES:
        lines = tuple(line for line in noted if line.role == role)
        if lines:
            yield BookRole(role, lines, sum(line.count for line in lines))


def _bench(catalogue: Catalogue, recipe: Recipe, look: Look, lessons: Collection[str]) -> BookBench:
    bench = bench_view(catalogue, look)
    return BookBench(
        facts=(Fact(bench.difficulty, _("how hard")),) if bench.difficulty else (),
        know_first=tuple(
            BookPlace(of_lesson(each), catalogue.studio.techniques[each].heading.title)
            for each in recipe.techniques
            if each in lessons
        ),
        plan=bench.plan,
        plan_key=bench.plan_key,
        method=bench.method,
        looks_right=bench.looks_right,
        careful=bench.careful,
        conditioning=bench.conditioning,
        sundries=tuple(each.name for each in bench.sundries),
        costs=bench.price.sizes,
        notes=bench.notes,
        draft=bench.draft,
    )


def _lesson(catalogue: Catalogue, lesson: Document[Technique], prose: Prose) -> BookLesson:
    return BookLesson(of_lesson(lesson.id), lesson_view(catalogue, lesson, prose), prose.html)


def _index(catalogue: Catalogue, recipes: Iterable[Recipe]) -> Iterator[BookStem]:
    """Every stem of the recipes as they are pictured, by name."""
    found: dict[str, dict[str, BookPlace]] = {}
    for recipe in recipes:
        for line in catalogue.looks[recipe.id][""].lines:
            place = BookPlace(of_recipe(recipe.id), recipe.name)
            found.setdefault(line.stem, {})[recipe.id] = place
    stems = sorted(map(catalogue.stem, found), key=lambda stem: stem.name.casefold())
    for stem in stems:
        yield BookStem(stem.name, stem.botanical, tuple(found[stem.id].values()))
