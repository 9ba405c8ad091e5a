"""The plan of a look from above, for the part of its page that only staff see."""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.trade.looks import Look
from corymb.views.compose.catalogue import Catalogue, PlanDrawing
from corymb.views.pieces import PictureView
from corymb.views.recipe import PlanKeyLine


def plan_view(catalogue: Catalogue, look: Look) -> PictureView | None:
    """The plan, described in words; none where no plans were drawn."""
    plan = catalogue.plans.get(look.id)
    return plan_of_drawing(catalogue, look, plan) if plan else None


def plan_of_drawing(catalogue: Catalogue, look: Look, plan: PlanDrawing) -> PictureView:
    """A plan that was drawn of a look, or of a piece of it, described in words."""
    told = _("{name} from above, each stem where it goes, numbered in the order of placing.")
    alt = told.format(name=catalogue.studio.recipes[look.recipe].name)
    return PictureView(plan.drawing.href, alt, plan.drawing.width, plan.drawing.height)


def plan_key(catalogue: Catalogue, look: Look) -> tuple[PlanKeyLine, ...]:
    """Number, name and count of each kind of stem, the first placed first."""
    plan = catalogue.plans.get(look.id)
    return plan.key if plan else ()
