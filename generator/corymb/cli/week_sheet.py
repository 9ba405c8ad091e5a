"""What does a week have in the beds, and what can be made of it? The lines of `corymb season`."""

from __future__ import annotations

import textwrap
from collections.abc import Iterable, Iterator, Sequence

from corymb.cli.then import WIDE, why_not
from corymb.studio.models import Style
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.best import Best
from corymb.trade.season.coming import in_the_beds
from corymb.trade.season.last_chances import WITHIN_WEEKS, LastChance, last_chances
from corymb.trade.season.stands import by_how_sure
from corymb.trade.season.sureness import WORDS
from corymb.trade.season.watch import cell_of
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.week_words import week_third, week_words
from corymb.views.compose.wording import sentence

INDENT = 18
WHOLE = "\N{NO-BREAK SPACE}"
STATES = {
    "pictured": "as pictured",
    "variant": "with a variant",
    "swaps": "with swaps",
}


def week_sheet(catalogue: Catalogue) -> Iterator[str]:
    """The lines to print, for the week of the catalogue's day."""
    studio, week = catalogue.studio, IsoWeek.of(catalogue.today)
    yield sentence(f"{week_words(week)}, {studio.house.place.name}").rstrip(".")
    yield from _stands(catalogue, week)
    yield from _beds(catalogue, week)
    for style in studio.styles.values():
        bests = [year[cell_of(week) - 1] for year in _years(catalogue, style)]
        if bests:
            yield from ("", style.plural, *_recipes(catalogue, bests))
    yield from _last_chances(catalogue, week)


def _stands(catalogue: Catalogue, week: IsoWeek) -> Iterator[str]:
    yield from ("", "Stands")
    found = by_how_sure(catalogue.beds, catalogue.studio.stems, week)
    for word in WORDS:
        if word in found:
            yield from _named(word, _stems(catalogue.studio, found[word]))
    if not found:
        yield "  nothing"


def _beds(catalogue: Catalogue, week: IsoWeek) -> Iterator[str]:
    beds = in_the_beds(catalogue.beds, catalogue.studio.stems, week)
    yield from ("", "In the beds")
    for word, stems in (
        ("coming on", beds.coming_on),
        ("at best", beds.at_best),
        ("going over", beds.going_over),
    ):
        yield from _named(word, _stems(catalogue.studio, stems))


def _years(catalogue: Catalogue, style: Style) -> Iterator[Sequence[Best]]:
    for recipe in catalogue.recipes():
        if recipe.style == style.id:
            yield catalogue.best[recipe.id]


def _recipes(catalogue: Catalogue, bests: Sequence[Best]) -> Iterator[str]:
    """The recipes of a style by how they can be made; those that can't are only counted."""
    for state, word in STATES.items():
        names = [_recipe(catalogue, best) for best in bests if best.state == state]
        yield from _named(word, names) if names else ()
    none = sum(best.state == "none" for best in bests)
    if none:
        yield f"  {'not then':<{INDENT - 2}}{none}"


def _recipe(catalogue: Catalogue, best: Best) -> str:
    name = look_name(catalogue, best.look)
    swaps = [
        f"{swap.in_count} {catalogue.stem(swap.in_).name} "
        f"for {swap.out_count} {catalogue.stem(swap.out).name}"
        for swap in best.answer.swaps
    ]
    return f"{name} ({'; '.join(swaps)})" if swaps else name


def _last_chances(catalogue: Catalogue, week: IsoWeek) -> Iterator[str]:
    found = last_chances(catalogue.best, catalogue.makeable, week)
    yield from ("", f"Last chances, within {WITHIN_WEEKS} weeks")
    for chance in found:
        yield from _wrapped(_chance(catalogue, chance), "  ", "    ")
    if not found:
        yield "  none"


def _chance(catalogue: Catalogue, chance: LastChance) -> str:
    name = catalogue.studio.recipes[chance.recipe].name
    why = why_not(catalogue, chance.after)
    return (
        f"{name}: until {week_words(chance.last)}. After that {why}. "
        f"Again from {week_third(chance.again)}."
    )


def _stems(studio: Studio, stems: Iterable[str]) -> list[str]:
    """Their names, none of them to be broken over two lines."""
    return [studio.stems[stem].name.replace(" ", WHOLE) for stem in stems]


def _named(word: str, names: Sequence[str]) -> list[str]:
    """A word, and names after it; many names hold a comma themselves."""
    head = f"  {word:<{INDENT - 2}}"
    return _wrapped(f"{head}{'; '.join(names) or 'none'}", "", " " * INDENT)


def _wrapped(text: str, first: str, then: str) -> list[str]:
    lines = textwrap.wrap(
        text, WIDE, initial_indent=first, subsequent_indent=then, break_on_hyphens=False
    )
    return [line.replace(WHOLE, " ") for line in lines]
