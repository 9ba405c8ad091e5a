"""How many trips does a vehicle make with these buckets, and what doesn't go in at all?

Buckets stand upright on the flat floor, one layer. What is taller than the vehicle is high, or
wider than its floor, is left out and named. Whatever stays behind goes on the next trip.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from corymb.trade.load.exact import exact
from corymb.trade.load.shelves import Place, on_shared_floor

Seats = Literal["up", "down"]

_CLAUSE_ON_SEATS = re.compile(r"[^.,;:]*\bseats?\b[^.,;:]*", re.IGNORECASE)
_DOWN = re.compile(r"\b(?:down|fold(?:ed)?|flat|out|removed)\b", re.IGNORECASE)
_UP = re.compile(r"\b(?:up|in place)\b", re.IGNORECASE)
_NOT = re.compile(r"\b(?:not|no|never|without)\b|n['’]t\b", re.IGNORECASE)


@dataclass(frozen=True)
class LoadSpace:
    """A vehicle by the room in it; `note` is the studio's word to whoever loads."""

    name: str
    long_cm: float
    wide_cm: float
    high_cm: float
    note: str = ""

    @property
    def seats(self) -> Seats | None:
        """Whether its note says that seats are down or up; nothing when it isn't plain."""
        clause = _CLAUSE_ON_SEATS.search(self.note)
        if not clause or _NOT.search(clause[0]):
            return None
        if _DOWN.search(clause[0]):
            return "down"
        return "up" if _UP.search(clause[0]) else None


@dataclass(frozen=True)
class Upright:
    """A bucket as it stands: how wide, and how high with its stems."""

    across_cm: float
    tall_cm: float


@dataclass(frozen=True)
class Trip:
    """One trip: where each bucket stands, by its number in the list."""

    places: tuple[Place, ...]


@dataclass(frozen=True)
class Load:
    """All trips of one vehicle, and the buckets it can't take upright, by number."""

    space: LoadSpace
    trips: tuple[Trip, ...]
    too_tall: tuple[int, ...]
    too_wide: tuple[int, ...]

    @property
    def whole(self) -> bool:
        """Whether every bucket goes in."""
        return not (self.too_tall or self.too_wide)


def load(buckets: Sequence[Upright], space: LoadSpace) -> Load:
    """The trips that carry these buckets. Raises ValueError: a measure not above 0."""
    tall = [i for i, one in enumerate(buckets) if exact(one.tall_cm) > exact(space.high_cm)]
    narrow = min(exact(space.long_cm), exact(space.wide_cm))
    wide = [i for i, one in enumerate(buckets) if exact(one.across_cm) > narrow and i not in tall]
    waiting = [i for i in range(len(buckets)) if i not in tall and i not in wide]
    trips = []
    while waiting:
        trip = _one_trip(buckets, waiting, space)
        trips.append(trip)
        gone = {place.bucket for place in trip.places}
        waiting = [i for i in waiting if i not in gone]
    return Load(space, tuple(trips), tuple(tall), tuple(wide))


def _one_trip(buckets: Sequence[Upright], waiting: Sequence[int], space: LoadSpace) -> Trip:
    widths = [buckets[i].across_cm for i in waiting]
    places = on_shared_floor(space.long_cm, space.wide_cm, widths)
    return Trip(tuple(Place(waiting[place.bucket], place.x, place.y) for place in places))


def best_space(buckets: Sequence[Upright], spaces: Sequence[LoadSpace]) -> Load | None:
    """The load of the vehicle that takes all in the fewest trips, the smallest floor of these.

    Nothing when no vehicle takes them all.
    """
    loads = [one for one in (load(buckets, space) for space in spaces) if one.whole]
    return min(loads, key=lambda one: (len(one.trips), _floor(one.space)), default=None)


def _floor(space: LoadSpace) -> float:
    return space.long_cm * space.wide_cm
