"""What would the studio rather know before a client finds it?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.checks.looks import is_certain
from corymb.ledger import kept
from corymb.studio.problems import Problem
from corymb.studio.saying import and_list
from corymb.studio.studio import Studio
from corymb.trade.changes import ChangeError
from corymb.trade.looks import Look, looks_of
from corymb.trade.season.apart import never_together
from corymb.trade.season.beds import Beds
from corymb.trade.season.hopkins import OUT_OF_DEPTH, is_stretched
from corymb.trade.season.weeks import weeks_of_look


def overlooked(studio: Studio) -> list[Problem]:
    """Recipes that can't be made as pictured, and book dates that don't fit the place."""
    return [*_never_together(studio), *_too_far_from_the_book(studio)]


def _never_together(studio: Studio) -> Iterator[Problem]:
    for recipe_id in studio.recipes:
        yield from _never_in(studio, recipe_id)


@kept
def _beds(studio: Studio) -> Beds:
    """They remember what they work out of stems and logs, so all of them are looked at here."""
    studio.stems.values()
    studio.logs.values()
    return Beds.of(studio)


@kept
def _never_in(studio: Studio, recipe_id: str) -> tuple[Problem, ...]:
    recipe, beds = studio.recipes[recipe_id], _beds(studio)
    if not is_certain(studio, recipe):
        return ()
    try:
        look = looks_of(recipe, studio.recipes)[""]
    except ChangeError:
        return ()
    known = all(_is_known(studio, line.stem) for line in look.lines)
    if not known or not look.lines or weeks_of_look(look, beds):
        return ()
    message = (
        f"{_which(studio, look, beds)} are never in season together, so it can't be made "
        "as pictured: swap one of them for another."
    )
    source = studio.sources["recipe", recipe.id]
    place = "stems" if recipe.stems else "based on"
    return (source.problem(message, place, advice=True, at_key=True),)


def _which(studio: Studio, look: Look, beds: Beds) -> str:
    """Two stems by name; all of them where each two do meet."""
    apart = never_together((line.stem for line in look.lines), beds)
    return and_list(f"‘{studio.stems[stem].name}’" for stem in apart) if apart else "Its stems"


def _too_far_from_the_book(studio: Studio) -> Iterator[Problem]:
    """Whether Hopkins' law is asked for what it isn't meant for."""
    source = studio.sources["studio", "studio"]
    doubtful = source.has_doubts("place") or source.has_doubts("reference place")
    reference, place = studio.house.reference_place, studio.house.place
    if not doubtful and is_stretched(reference, place):
        message = (
            f"The book dates of {reference.name} can't be worked out for here by Hopkins' law: "
            f"{OUT_OF_DEPTH}. Write your own garden's dates under `in season`, and its place under "
            "`reference place`."
        )
        yield source.problem(message, "place", "latitude", advice=True)


def _is_known(studio: Studio, stem: str) -> bool:
    return stem in studio.stems and not studio.sources["stem", stem].has_doubts()
