"""The plans from above: drawn for every look, shown to those who make the flowers and no others."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.picture import Arrangement
from corymb.picture.plan import draw_plan, key_of, plan_of
from corymb.trade.looks import Look
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing, PlanDrawing
from corymb.views.recipe import PlanKeyLine


def drawn_plan(arrangement: Arrangement) -> str:
    """The plan of an arrangement, as SVG."""
    return draw_plan(plan_of(arrangement))


def plan_drawing(look: Look, arrangement: Arrangement, sheet: tuple[float, float]) -> PlanDrawing:
    """Where a look's plan will be published, how large its sheet is, and its key."""
    key = tuple(PlanKeyLine(one.number, one.name, one.count) for one in key_of(arrangement))
    return PlanDrawing(Drawing(addresses.of_plan(look), *sheet), key)


def plans_shown(catalogue: Catalogue) -> Iterator[str]:
    """The addresses of the plans that an audience's site shows; clients are shown none."""
    if catalogue.staff:
        for looks in catalogue.looks.values():
            yield from map(addresses.of_plan, looks.values())
