"""How many trips does a vehicle make with these buckets, and what doesn't go in at all?

Buckets stand upright on the flat floor, one layer. Stems that touch the roof are cut shorter if
they may be. What is taller even then, or wider than the floor, is left out and named. Whatever
stays behind goes on the next trip.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from corymb.trade.load.buckets import Filled
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
    """A bucket as it stands: how wide, how high with its stems, and how high when trimmed."""

    across_cm: float
    tall_cm: float
    trimmed_cm: float

    @classmethod
    def of(cls, bucket: Filled) -> Upright:
        """A filled bucket as it stands."""
        return cls(bucket.kind.across_cm, bucket.tall_cm, bucket.trimmed_cm)


@dataclass(frozen=True)
class Trip:
    """One trip: where each bucket stands, by its number in the list."""

    places: tuple[Place, ...]


@dataclass(frozen=True)
class Load:
    """All trips of one vehicle; by number, what to trim for it and what it can't take upright."""

    space: LoadSpace
    trips: tuple[Trip, ...]
    to_trim: tuple[int, ...]
    too_tall: tuple[int, ...]
    too_wide: tuple[int, ...]

    @property
    def whole(self) -> bool:
        """Whether every bucket goes in."""
        return not (self.too_tall or self.too_wide)


def load(buckets: Sequence[Upright], space: LoadSpace) -> Load:
    """The trips that carry these buckets. Raises ValueError: a measure not above 0."""
    roof, narrow = exact(space.high_cm), min(exact(space.long_cm), exact(space.wide_cm))
    tall = [i for i, one in enumerate(buckets) if exact(one.trimmed_cm) > roof]
    wide = [i for i, one in enumerate(buckets) if exact(one.across_cm) > narrow and i not in tall]
    waiting = [i for i in range(len(buckets)) if i not in tall and i not in wide]
    trim = [i for i in waiting if exact(buckets[i].tall_cm) > roof]
    trips = []
    while waiting:
        trip = _one_trip(buckets, waiting, space)
        trips.append(trip)
        gone = {place.bucket for place in trip.places}
        waiting = [i for i in waiting if i not in gone]
    return Load(space, tuple(trips), tuple(trim), tuple(tall), tuple(wide))


def _one_trip(buckets: Sequence[Upright], waiting: Sequence[int], space: LoadSpace) -> Trip:
    widths = [buckets[i].across_cm for i in waiting]
    places = on_shared_floor(space.long_cm, space.wide_cm, widths)
    return Trip(tuple(Place(waiting[place.bucket], place.x, place.y) for place in places))
