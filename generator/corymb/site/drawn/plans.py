"""The plans from above: every look has one, shown to those who make the flowers and no others."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.picture import Arrangement
from corymb.picture.plan import key_of
from corymb.trade.looks import Look
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing, PlanDrawing
from corymb.views.recipe import PlanKeyLine


def plan_drawing(look: Look, arrangement: Arrangement, sheet: tuple[float, float]) -> PlanDrawing:
    """Where a look's plan will be published, how large its sheet is, and its key."""
    return PlanDrawing(Drawing(addresses.of_plan(look), *sheet), key_lines(arrangement))


def key_lines(arrangement: Arrangement) -> tuple[PlanKeyLine, ...]:
    """Number, name and count of each kind of stem, the first placed first."""
    return tuple(PlanKeyLine(one.number, one.name, one.count) for one in key_of(arrangement))


def plans_shown(catalogue: Catalogue) -> Iterator[str]:
    """The addresses of the plans that an audience's site shows; clients are shown none."""
    if catalogue.staff:
        for looks in catalogue.looks.values():
            yield from map(addresses.of_plan, looks.values())
