"""On which days does a standing order come round, and whose turn is it in the rotation?

The days are those of the rule (RFC 5545) from the order's first day on. `skip` leaves out a
visit, whether it names the planned day or the day the visit was moved to. Visits are numbered
from the very first, in planned order: a moved visit keeps its number, and a skipped one has
none, so that nothing of the rotation is missed by it. Whichever stretch of days is asked for, a
visit has the same number and the same turn.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from itertools import count, takewhile

from corymb.studio.values.recurrence import Recurrence


@dataclass(frozen=True)
class Coming:
    """When a standing order comes round: its rule, its first and last day, and what is changed."""

    rule: Recurrence
    first: date
    last: date | None = None
    skip: Collection[date] = ()
    moved: Mapping[date, date] = field(default_factory=dict)
    rotation: Sequence[str] = ()


@dataclass(frozen=True)
class Visit:
    """One visit: its number from the first ever, planned and real day, and what is sent in turn."""

    number: int
    planned: date
    day: date
    recipe: str | None


class Drawn:
    """A standing order's visits, drawn from its rule as far as anybody asked, and kept."""

    def __init__(self, coming: Coming) -> None:
        self._moved = coming.moved
        self._rest = every_visit(coming)
        self._drawn: list[Visit] = []

    def between(self, start: date, end: date) -> tuple[Visit, ...]:
        """As `visits`."""
        # A visit planned after the stretch may be moved into it.
        planned_until = max([end, *self._moved])
        so_far = takewhile(lambda visit: visit.planned <= planned_until, self._every())
        within = (visit for visit in so_far if start <= visit.day <= end)
        return tuple(sorted(within, key=lambda visit: (visit.day, visit.number)))

    def after(self, day: date) -> Visit | None:
        """As `next_visit`."""
        # Every move is looked at, then one visit that isn't moved: none later can be sooner.
        best = None
        for visit in self._every():
            if visit.day > day and (best is None or visit.day < best.day):
                best = visit
            if best is not None and visit.planned > max([day, *self._moved]):
                break
        return best

    def _every(self) -> Iterator[Visit]:
        """All visits in planned order; those not yet drawn are, and are kept."""
        for place in count():
            if place == len(self._drawn):
                visit = next(self._rest, None)
                if visit is None:
                    return
                self._drawn.append(visit)
            yield self._drawn[place]


def visits(coming: Coming, start: date, end: date) -> tuple[Visit, ...]:
    """The visits that really take place from `start` to `end`, both included, by their days."""
    return Drawn(coming).between(start, end)


def next_visit(coming: Coming, after: date) -> Visit | None:
    """The visit that next takes place after a day; nothing when there is none."""
    return Drawn(coming).after(after)


def every_visit(coming: Coming) -> Iterator[Visit]:
    """All visits in planned order, from the very first; endless when nothing ends them."""
    number = 0
    for planned in _days(coming):
        day = coming.moved.get(planned, planned)
        if planned in coming.skip or day in coming.skip:
            continue
        number += 1
        yield Visit(number, planned, day, turn(coming.rotation, number))


def turn(rotation: Sequence[str], number: int) -> str | None:
    """Which recipe of a rotation is sent on a visit of this number; nothing without a rotation."""
    return rotation[(number - 1) % len(rotation)] if rotation else None


def _days(coming: Coming) -> Iterator[date]:
    before = None
    for each in coming.rule.starting(coming.first):
        day = each.date()
        if coming.last is not None and day > coming.last:
            return
        if day != before:  # a rule may name several hours of a day
            yield day
        before = day
