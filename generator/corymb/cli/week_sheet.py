"""What does a week have in the beds, and what can be made of it? The lines of `corymb season`."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from corymb.cli.wrapping import whole, wrapped
from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.studio.models import Style
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.best import Best
from corymb.trade.season.coming import in_the_beds
from corymb.trade.season.either_side import either_side
from corymb.trade.season.last_chances import WITHIN_WEEKS, LastChance, last_chances
from corymb.trade.season.stands import by_how_sure
from corymb.trade.season.sureness import WORDS
from corymb.trade.season.watch import cell_of, year_from
from corymb.views.compose.answers import look_name, why_not
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.states import words_of_states
from corymb.views.compose.swaps import swap_view
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.week_words import week_third, week_words
from corymb.views.compose.wording import sentence

INDENT = 18
"""What stands before the names, at least: a language may have longer words."""


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
    yield from ("", _("Stands"))
    found = by_how_sure(catalogue.beds, catalogue.studio.stems, week)
    for word in WORDS:
        if word in found:
            stems = _stems(catalogue.studio, found[word])
            yield from _named(trade_word("sureness", word), stems)
    if not found:
        yield f"  {_nothing(catalogue, week)}"


def _nothing(catalogue: Catalogue, week: IsoWeek) -> str:
    """That nothing stands, and what does next."""
    beds, stems = catalogue.beds, catalogue.studio.stems
    for ahead in year_from(week):
        if names := [stem.name for stem in stems.values() if cell_of(ahead) in beds.weeks(stem.id)]:
            told = _("nothing; first {stems}, {when}")
            return told.format(stems="; ".join(names), when=week_third(ahead))
    return _("nothing")


def _beds(catalogue: Catalogue, week: IsoWeek) -> Iterator[str]:
    beds = in_the_beds(catalogue.beds, catalogue.studio.stems, week)
    yield from ("", _("In the beds"))
    for word, stems in (
        (_("coming on"), beds.coming_on),
        (_("at best"), beds.at_best),
        (_("going over"), beds.going_over),
    ):
        yield from _named(word, _stems(catalogue.studio, stems))


def _years(catalogue: Catalogue, style: Style) -> Iterator[Sequence[Best]]:
    for recipe in catalogue.recipes():
        if recipe.style == style.id:
            yield catalogue.best[recipe.id]


def _recipes(catalogue: Catalogue, bests: Sequence[Best]) -> Iterator[str]:
    """The recipes of a style by how they can be made, each with how sure that is or when it is."""
    for state, word in words_of_states().items():
        names = [_recipe(catalogue, best) for best in bests if best.state == state]
        yield from _named(word, names) if names else ()


def _recipe(catalogue: Catalogue, best: Best) -> str:
    recipe = catalogue.studio.recipes[best.look.recipe]
    if best.state == "none":
        return f"{whole(_drafted(recipe.name, recipe.draft))} ({_next(catalogue, best)})"
    variant = recipe.variants.get(best.look.variant)
    draft = recipe.draft or (variant is not None and variant.draft)
    name = whole(_drafted(look_name(catalogue, best.look), draft))
    said = [
        trade_word("sureness", best.sure),
        *(swap_view(catalogue, swap).words for swap in best.answer.swaps),
    ]
    return f"{name} ({'; '.join(said)})"


def _drafted(name: str, draft: bool) -> str:
    return _("{name}, draft").format(name=name) if draft else name


def _next(catalogue: Catalogue, best: Best) -> str:
    """`next mid May 2027`, of any of the recipe's looks."""
    can = {each.week for each in catalogue.best[best.look.recipe] if each.state != "none"}
    sides = either_side(can, IsoWeek.of(catalogue.today))
    if not sides:
        return _("in no week of the year")
    return _("next {when}").format(when=week_third(sides[1]))


def _last_chances(catalogue: Catalogue, week: IsoWeek) -> Iterator[str]:
    found = last_chances(catalogue.best, catalogue.makeable, week)
    told = ngettext(
        "Last chances, within {number} week", "Last chances, within {number} weeks", WITHIN_WEEKS
    )
    yield from ("", told.format(number=WITHIN_WEEKS))
    for chance in found:
        yield from wrapped(_chance(catalogue, chance), "  ")
    if not found:
        yield "  " + _("none")


def _chance(catalogue: Catalogue, chance: LastChance) -> str:
    name = catalogue.studio.recipes[chance.recipe].name
    why = why_not(catalogue, [chance.after])
    told = _("{name}: until {week}. After that {why}. Again from {again}.")
    return told.format(
        name=name, week=week_words(chance.last), why=why, again=week_third(chance.again)
    )


def _stems(studio: Studio, stems: Iterable[str]) -> list[str]:
    """Their names, none of them to be broken over two lines."""
    return [whole(studio.stems[stem].name) for stem in stems]


def _named(word: str, names: Sequence[str]) -> list[str]:
    """A word, and names after it; many names hold a comma themselves."""
    indent = max(INDENT, *(len(state) + 4 for state in words_of_states().values()))
    head = f"  {word:<{indent - 2}}"
    return wrapped(f"{head}{'; '.join(names) or _('none')}", "", " " * indent)
