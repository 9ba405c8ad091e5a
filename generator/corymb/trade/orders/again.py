"""Can a line of an old order be made in a new week: as it was, as another variant, with swaps?

A variant that the studio has designed, and that can be made then as pictured, is taken in the
line's place. Swaps are only offered: the walk decides at the cut. Where neither will do, the line
stays as it was, with what keeps it from being made and what of its style could be made instead.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.looks import Look
from corymb.trade.orders.laid_out import sendable
from corymb.trade.orders.pieces import Piece
from corymb.trade.season.best import Best, best_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.sureness import NOT, TOUCH, WORDS
from corymb.trade.season.watch import cell_of
from corymb.trade.swaps.made import with_swaps

FEW = 3
"""So many others are named in the place of a look that can't be made."""


@dataclass(frozen=True)
class LineAgain:
    """A line of an order in a new week."""

    number: int
    quantity: int
    old: Piece
    best: Best
    """The look to make then, and how."""
    instead: tuple[Look, ...] = ()
    """Others of its style that can be made as pictured, where it can't be made at all."""
    put: Look | None = None
    """What to put in its place then; None where it can be made, or where nothing else can."""

    @property
    def taken(self) -> bool:
        """Whether another variant takes its place."""
        return self.can and self.best.look.id != self.old.look.id

    @property
    def can(self) -> bool:
        """Whether it can be made then at all."""
        return self.best.state != "none"

    @property
    def piece(self) -> Piece:
        """What the new line asks for: its variant, without swaps."""
        return replace(self.old, look=self.best.look) if self.taken else self.old

    @property
    def made(self) -> Piece:
        """What would be made: with the swaps."""
        return replace(self.piece, look=with_swaps(self.piece.look, self.best.answer.swaps))


def line_again(
    number: int, quantity: int, piece: Piece, week: IsoWeek, studio: Studio, makeable: Makeable
) -> LineAgain:
    """A line in a new week, that of its cut."""
    others = sendable(piece.recipe, studio.recipes)
    looks = {"": piece.look, **{look.id: look for look in others if look.id != piece.look.id}}
    best = best_of(looks, makeable)[cell_of(week) - 1]
    instead = () if best.state != "none" else stand_ins(piece.recipe.style, week, studio, makeable)
    put = instead[0] if instead else None
    return LineAgain(number, quantity, piece, best, tuple(instead[:FEW]), put)


def stand_ins(
    style: str, week: IsoWeek, studio: Studio, makeable: Makeable, but: Sequence[str] = ()
) -> tuple[Look, ...]:
    """One look of each recipe of a style that surely can be made then as pictured, surest first.

    `but` are recipes that are left out.
    """
    found = sorted(_pictured(style, week, studio, makeable, but), key=lambda each: each[:2])
    return tuple(look for _, _, look in found)


def _pictured(
    style: str, week: IsoWeek, studio: Studio, makeable: Makeable, but: Sequence[str]
) -> Iterator[tuple[int, str, Look]]:
    for recipe in studio.recipes.values():
        looks = {look.variant: look for look in sendable(recipe, studio.recipes)}
        if recipe.style != style or recipe.id in but or not looks:
            continue
        best = best_of(looks, makeable)[cell_of(week) - 1]
        if best.answer.state == "pictured" and best.sure not in (TOUCH, NOT):
            yield WORDS.index(best.sure), recipe.id, best.look
