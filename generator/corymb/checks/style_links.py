"""Does a style link show what its client can't have: a draft, or a look that can't be made then?"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from corymb.checks.looks import is_certain
from corymb.checks.reached import has_doubts
from corymb.ledger import kept
from corymb.studio.models.link import StyleLink
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.studio.today import today_of
from corymb.trade.changes import ChangeError
from corymb.trade.looks import Look, looks_of, name_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.style_links import ShownLook, shown_looks, stands

ALL_DRAFTS = (
    "All that this link shows is a draft, which no client sees, so its page would be empty: take "
    "`draft: yes` out of what is ready, or show another look."
)


def shown_in_vain(studio: Studio) -> list[Problem]:
    """Advice on each look of a link that its page leaves out, or says can't be made.

    An error where nothing would be left on its page; and one word alone where the link is over.
    """
    if not studio.links or has_doubts(studio):
        return []
    return list(_shown_in_vain(studio, today_of(studio)))


@kept
def _shown_in_vain(studio: Studio, today: date) -> tuple[Problem, ...]:
    makeable = Makeable.of(studio)
    if makeable.beds.shift.stretched:  # then no date is worth a word, and that is told already
        return ()
    return tuple(
        problem
        for known_as, link in studio.links.items()
        for problem in _of_link(studio, makeable, today, known_as, link)
    )


def _of_link(
    studio: Studio, makeable: Makeable, today: date, known_as: str, link: StyleLink
) -> Iterator[Problem]:
    found = list(_of_its_looks(studio, makeable, known_as, link))
    if found and not stands(link, today):
        over = f"This link is over since {link.expires}; the file may go."
        yield studio.sources["link", known_as].problem(over, "expires", at_key=True, advice=True)
    else:
        yield from found


def _of_its_looks(
    studio: Studio, makeable: Makeable, known_as: str, link: StyleLink
) -> Iterator[Problem]:
    source = studio.sources["link", known_as]
    looks = {item.recipe: _looks(studio, item.recipe) for item in link.show}
    all_shown = shown_looks(link, studio.recipes, looks, makeable)
    if len(all_shown) == len(link.show) and all(shown.is_draft for shown in all_shown):
        yield source.problem(ALL_DRAFTS, "show", at_key=True)
        return
    for shown in all_shown:
        said = _draft(shown) or _not_then(shown, link)
        if said:
            yield source.problem(said, "show", shown.number - 1, advice=True)


def _looks(studio: Studio, recipe_id: str) -> dict[str, Look]:
    """The looks of a recipe; none where something is wrong with it, which is told there."""
    recipe = studio.recipes.get(recipe_id)
    if recipe is None or recipe.style not in studio.styles or not is_certain(studio, recipe):
        return {}
    try:
        looks = looks_of(recipe, studio.recipes)
    except ChangeError:
        return {}
    stems = {line.stem for look in looks.values() for line in look.lines}
    return looks if stems <= set(studio.stems) and _have_lines(looks) else {}


def _have_lines(looks: dict[str, Look]) -> bool:
    return all(look.lines for look in looks.values())


def _draft(shown: ShownLook) -> str:
    if not shown.is_draft:
        return ""
    name = name_of(shown.asked.recipe, shown.asked.look.variant)
    return f"‘{name}’ is a draft, so the client's page leaves it out."


def _not_then(shown: ShownLook, link: StyleLink) -> str:
    never = all(best.state == "none" for best in shown.year)  # told where its recipe stands
    if never or (shown.can and not shown.instead):
        return ""
    name = name_of(shown.asked.recipe, shown.asked.look.variant)
    said = f"‘{name}’ can't be made on {link.date}"
    if shown.instead:
        instead = name_of(shown.asked.recipe, shown.best.look.variant)
        return f"{said}: the client's page shows ‘{instead}’ in its place."
    return f"{said}, and the client's page says so: take it out, or show another."
