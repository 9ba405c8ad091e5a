"""What is drawn on a bench sheet: the piece from the front and from above, as it will be made?"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from corymb.language import gettext as _
from corymb.trade.orders.as_cut import Met
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.one_made import OneMade, one_made
from corymb.views.compose.catalogue import Catalogue, Drawing, PlanDrawing
from corymb.views.compose.images import describe
from corymb.views.compose.plan import plan_of_drawing
from corymb.views.papers import SheetDrawn
from corymb.views.pieces import PictureView


@dataclass(frozen=True)
class DrawnLine:
    """The drawings of an order's line that has some of its own."""

    picture: Drawing
    plan: PlanDrawing


DrawnLines = dict[tuple[str, int], DrawnLine]
"""By the order's id and the line's number."""


def sheet_drawn(
    catalogue: Catalogue,
    due: Due,
    line: DueLine,
    mets: Sequence[Met],
    drawn: Mapping[tuple[str, int], DrawnLine],
) -> SheetDrawn:
    """The drawings of a line: its own, or else those of its look."""
    made = one_made(line, mets)
    look = line.piece.look
    own = drawn.get((due.id, line.number))
    picture = own.picture if own else catalogue.drawings[look.id]
    words = describe(catalogue, made.look if own else look)
    plan = None if line.piece.in_buckets else own.plan if own else catalogue.plans.get(look.id)
    return SheetDrawn(
        picture=PictureView(picture.href, words, picture.width, picture.height),
        plan=plan_of_drawing(catalogue, look, plan) if plan else None,
        key=plan.key if plan else (),
        told=" ".join(_told(line, made, bool(own))) if plan else "",
    )


def _told(line: DueLine, made: OneMade, own: bool) -> Iterator[str]:
    if not own and not made.as_written:
        yield _("Drawn as the recipe is written, not as it will be made.")
    elif not made.as_written:
        yield _("Drawn as it will be made, not as the recipe is written.")
    if line.quantity > 1 and not made.all_alike:
        yield _("This is one of them: another may have a stem more or less.")
