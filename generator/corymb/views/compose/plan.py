"""The plan of a look from above, for the part of its page that only staff see."""

from __future__ import annotations

from corymb.trade.looks import Look
from corymb.views.compose.catalogue import Catalogue
from corymb.views.pieces import PictureView
from corymb.views.recipe import PlanKeyLine


def plan_view(catalogue: Catalogue, look: Look) -> PictureView | None:
    """The plan, described in words; none where no plans were drawn."""
    plan = catalogue.plans.get(look.id)
    if plan is None:
        return None
    drawing = plan.drawing
    name = catalogue.studio.recipes[look.recipe].name
    alt = f"{name} from above, each stem where it goes, numbered in the order of placing."
    return PictureView(drawing.href, alt, drawing.width, drawing.height)


def plan_key(catalogue: Catalogue, look: Look) -> tuple[PlanKeyLine, ...]:
    """Number, name and count of each kind of stem, the first placed first."""
    plan = catalogue.plans.get(look.id)
    return plan.key if plan else ()
