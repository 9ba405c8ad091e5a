"""When is a standing order's year thin, and what would help?

Other recipes of the same style that surely stand then, if the studio has any: they can join the
rotation. If not, the look that comes nearest, and the stems that it lacks.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from corymb.studio.models import StandingOrder
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.looks import Look
from corymb.trade.orders.again import FEW, stand_ins
from corymb.trade.orders.laid_out import LaidOut, Thin, sendable
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.sureness import NOT, TOUCH
from corymb.trade.season.uncovered import Spell, uncovered
from corymb.trade.season.weeks import week_on


@dataclass(frozen=True)
class ThinSpell:
    """Visits one after the other that are thin for one reason, with one look."""

    laid: tuple[LaidOut, ...]
    surer: tuple[Look, ...]
    """Others of the rotation that can be made then, and are no touch and go."""
    helps: tuple[Look, ...]
    """Looks of other recipes that stand in all their weeks, the surest first."""
    nearest: Spell | None
    """Otherwise, what comes nearest to being made besides, and what it lacks."""

    @property
    def why(self) -> Thin:
        """Why they are thin."""
        return self.laid[0].thin


def thin_spells(
    studio: Studio, makeable: Makeable, order: StandingOrder, laid: Sequence[LaidOut]
) -> tuple[ThinSpell, ...]:
    """The thin visits of a year in spells, in order."""
    return tuple(_spell(studio, makeable, order, run) for run in _runs(laid))


def _runs(laid: Sequence[LaidOut]) -> list[list[LaidOut]]:
    if not laid:
        return []
    runs = [[laid[0]]]
    for before, after in pairwise(laid):
        alike = (before.thin, before.best.look.id) == (after.thin, after.best.look.id)
        if alike or before.thin == after.thin == "nothing":
            runs[-1].append(after)
        else:
            runs.append([after])
    return [run for run in runs if run[0].thin]


def _spell(
    studio: Studio, makeable: Makeable, order: StandingOrder, run: Sequence[LaidOut]
) -> ThinSpell:
    own = order.rotation or [order.lines[0].recipe]
    style = studio.recipes[own[0]].style
    standing = [
        {look.id: look for look in stand_ins(style, week_of(each), studio, makeable, own)}
        for each in run
    ]
    helps = [look for known_as, look in standing[0].items() if all(known_as in s for s in standing)]
    surer = _surer(studio, makeable, own, run)
    nearest = None if helps or surer else _nearest(studio, makeable, own, run)
    return ThinSpell(tuple(run), surer, tuple(helps[:FEW]), nearest)


def week_of(laid: LaidOut) -> IsoWeek:
    """The week of a visit."""
    return IsoWeek.of(laid.visit.day)


def _surer(
    studio: Studio, makeable: Makeable, own: Sequence[str], run: Sequence[LaidOut]
) -> tuple[Look, ...]:
    weeks = {week_on(each.visit.day) for each in run}
    sent = run[0].best.look.id
    found = [
        look
        for recipe in own
        for look in sendable(studio.recipes[recipe], studio.recipes)
        if look.id != sent and all(_is_sure(makeable, look, week) for week in weeks)
    ]
    return tuple(found[:FEW])


def _is_sure(makeable: Makeable, look: Look, week: int) -> bool:
    return makeable.answers(look)[week - 1].sure not in (TOUCH, NOT)


def _nearest(
    studio: Studio, makeable: Makeable, own: Sequence[str], run: Sequence[LaidOut]
) -> Spell | None:
    """What comes nearest of the rotation's looks that can't be made in any of these weeks."""
    weeks = {week_on(each.visit.day) for each in run}
    looks = {
        recipe: {
            look.variant: look
            for look in sendable(studio.recipes[recipe], studio.recipes)
            if all(makeable.answers(look)[week - 1].state == "none" for week in weeks)
        }
        for recipe in own
    }
    start = week_on(run[0].visit.day)
    spells = uncovered(studio, looks, makeable, start)
    return next((spell for spell in spells if weeks.intersection(spell.weeks)), None)
