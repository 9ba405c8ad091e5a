"""What does a standing order get on each of its visits, so that it never gets the same twice?

A rotation names recipes; each of their looks that isn't a draft may be sent. For every visit in
turn the looks that can be made in its week are weighed: not the one sent last, if anything else
can be made; made as designed before swapped; surer before touch and go; not sent in the last four
visits before sent lately; then the one sent longest ago, then whose turn it is in the rotation.
Visits that were written out as orders of their own count with what they really sent.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import partial
from typing import Literal

from corymb.studio.models import Recipe, StandingOrder
from corymb.trade.hours.visits import Coming, Visit, every_visit
from corymb.trade.looks import Look, looks_of
from corymb.trade.season.best import Best, best_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.sureness import NOT, TOUCH
from corymb.trade.season.weeks import week_on

LATELY = 4
"""So many visits back, a look still counts as sent lately."""

Thin = Literal["", "nothing", "one", "touch and go"]


@dataclass(frozen=True)
class LaidOut:
    """A visit and the look it gets."""

    visit: Visit
    best: Best
    choices: int
    """How many looks could be made that week."""
    since: int | None
    """How many visits ago the same look was sent; None for never."""

    @property
    def thin(self) -> Thin:
        """Why its week is thin: nothing can be made, one look alone, or nothing that is likely."""
        if self.best.state == "none":
            return "nothing"
        if self.best.sure in (TOUCH, NOT):
            return "touch and go"
        return "one" if self.choices == 1 else ""


def coming_of(order: StandingOrder) -> Coming:
    """When a standing order comes round."""
    return Coming(order.repeats, order.from_, order.until, order.skip, order.moved, order.rotation)


def laid_out(
    order: StandingOrder,
    until: date,
    recipes: Mapping[str, Recipe],
    makeable: Makeable,
    sent: Mapping[date, str] | None = None,
) -> tuple[LaidOut, ...]:
    """Every visit from the first to the last planned until a day, each with its look.

    `sent` are looks, by id, that were really sent on a day, earlier orders' among them.
    """
    sent = dict(sent or {})
    choosing = _Choosing(order.rotation, recipes, makeable)
    before = [look for day, look in sorted(sent.items()) if day < order.from_]
    laid: list[LaidOut] = []
    for visit in every_visit(coming_of(order)):
        if visit.planned > until:
            break
        laid.append(choosing.next(visit, before, sent.get(visit.day)))
        before.append(sent.get(visit.day, laid[-1].best.look.id))
    return tuple(laid)


class _Choosing:
    """The looks of a rotation, with the answer of each week."""

    def __init__(
        self, rotation: Sequence[str], recipes: Mapping[str, Recipe], makeable: Makeable
    ) -> None:
        self._rotation = rotation
        self._looks = [
            look
            for recipe_id in dict.fromkeys(rotation)
            for look in sendable(recipes[recipe_id], recipes)
        ]
        self._bests = {look.id: best_of({"": look}, makeable) for look in self._looks}

    def next(self, visit: Visit, before: Sequence[str], really: str | None) -> LaidOut:
        """The look of a visit, after those sent before; `really` where it is known."""
        week = week_on(visit.day)
        bests = [self._bests[look.id][week - 1] for look in self._looks]
        can = [best for best in bests if best.state != "none"]
        known = [best for best in bests if best.look.id == really]
        chosen = min(known or can or bests, key=partial(self._rank, visit, before))
        return LaidOut(visit, chosen, len(can), _since(chosen.look.id, before))

    def _rank(self, visit: Visit, before: Sequence[str], best: Best) -> tuple[object, ...]:
        since = _since(best.look.id, before)
        return (
            since == 1,
            best.state != "pictured",
            len(best.answer.blocks),
            best.sure in (TOUCH, NOT),
            since is not None and since <= LATELY,
            -(since or len(before) + 1),
            self._turn(visit, best.look),
            self._looks.index(best.look),
        )

    def _turn(self, visit: Visit, look: Look) -> int:
        """How long it is until its recipe's turn comes."""
        length = len(self._rotation)
        places = [place for place, each in enumerate(self._rotation) if each == look.recipe]
        return min((place - (visit.number - 1)) % length for place in places)


def sendable(recipe: Recipe, recipes: Mapping[str, Recipe]) -> Iterator[Look]:
    """The looks of a recipe that aren't drafts."""
    for variant_id, look in looks_of(recipe, recipes).items():
        draft = recipe.variants[variant_id].draft if variant_id else False
        if not (draft or recipe.draft):
            yield look


def _since(look: str, before: Sequence[str]) -> int | None:
    return next((back for back, each in enumerate(reversed(before), 1) if each == look), None)


def thin_weeks(laid: Iterable[LaidOut]) -> tuple[LaidOut, ...]:
    """The visits whose weeks are thin."""
    return tuple(each for each in laid if each.thin)
