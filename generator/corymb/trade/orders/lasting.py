"""Do the stems of an order keep until its flowers have done their work, or the next visit comes?

The cut is taken to be at the studio's habit: in the morning two days before. Each stem counts by
its shortest number of days.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from corymb.studio.models import Order, StandingOrder
from corymb.studio.studio import Studio
from corymb.trade.hours.clock import between, moment
from corymb.trade.hours.habits import HABITS
from corymb.trade.hours.keeping import Keeping, too_short_lived
from corymb.trade.orders.pieces import Piece

NOON = time(12, 0)
"""When flowers are wanted, where an order names no hours."""


@dataclass(frozen=True)
class Lasting:
    """From the cut until the flowers have done their work."""

    cut: datetime
    until: datetime
    next_visit: date | None
    short: tuple[tuple[str, int], ...]
    """The stems that don't surely keep so long, by id, with their fewest days; shortest first."""

    @property
    def days(self) -> int:
        """Days for which they are wanted, a part of one counted whole."""
        return -(-between(self.cut, self.until) // timedelta(days=1))


def lasting(
    order: Order | StandingOrder,
    day: date,
    next_visit: date | None,
    pieces: Iterable[Piece],
    studio: Studio,
) -> Lasting:
    """How long the stems of these pieces are wanted, and which of them don't keep so long."""
    zone = studio.house.place.time_zone
    cut = moment(day - timedelta(days=HABITS.make_days_before + 1), HABITS.cut_at, zone)
    until = _until(order, day, next_visit, zone)
    ids = dict.fromkeys(line.stem for piece in pieces for line in piece.look.lines)
    stems = [_keeping(studio, known_as) for known_as in ids]
    flagged = {flag.stem for flag in too_short_lived(stems, cut, until)}
    short = [(stem.stem, stem.fewest_days) for stem in stems if stem.stem in flagged]
    return Lasting(cut, until, next_visit, tuple(sorted(short, key=lambda each: each[1])))


def _keeping(studio: Studio, known_as: str) -> Keeping:
    stem = studio.stems[known_as]
    return Keeping(known_as, stem.name, stem.conditioning.hours, stem.vase_life.fewest)


def _until(order: Order | StandingOrder, day: date, next_visit: date | None, zone: str) -> datetime:
    hours = order.hours
    if next_visit is not None:
        return moment(next_visit, hours.start if hours else NOON, zone)
    if hours is None:
        return moment(day, NOON, zone)
    last = day + timedelta(days=1) if hours.overnight else day
    return moment(last, hours.end, zone)
