"""How can each look of a style link be made on its day? Told before anyone sends what can't be."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from corymb.studio.models import StyleLink
from corymb.studio.studio import Studio
from corymb.studio.today import today_of
from corymb.studio.values.dates import IsoWeek
from corymb.trade.looks import looks_of, name_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.style_links import ShownLook, shown_looks
from corymb.views.compose.answers import not_then
from corymb.views.compose.catalogue import Catalogue


def told_looks(studio: Studio, link: StyleLink) -> Iterator[tuple[ShownLook, str]]:
    """Each look with a sentence's worth of how it will be, in the order of the link."""
    looks = {
        item.recipe: looks_of(studio.recipes[item.recipe], studio.recipes) for item in link.show
    }
    for shown in shown_looks(link, studio.recipes, looks, Makeable.of(studio)):
        yield shown, _state(studio, shown, link.date)


def _state(studio: Studio, shown: ShownLook, day: date) -> str:
    if shown.is_draft:
        return "a draft, so the client's page leaves it out"
    if not shown.can:
        staff = Catalogue(studio, "staff", today_of(studio))
        return f"{not_then(staff, shown.year, IsoWeek.of(day))} The page says so."
    if shown.instead:
        return f"not then; ‘{name_of(shown.asked.recipe, shown.best.look.variant)}’ in its place"
    swaps = [
        f"{studio.stems[swap.in_].name} for {studio.stems[swap.out].name}"
        for swap in shown.best.answer.swaps
    ]
    how = f"with swaps ({'; '.join(swaps)})" if swaps else "as pictured"
    return f"{how}, {shown.best.sure}"
