"""Where does the sun stand, and when does it rise, set, and make the golden hour?

Its height and direction are astral's (NOAA's formulas after J. Meeus, Astronomical Algorithms,
1998), for an even horizon at the height of the sea. Its ways through a height are looked for on
that curve, from midnight to midnight by the sun, so that a day on which it doesn't rise, or
doesn't set, is a day like any other and no error. The golden hour is taken as a sun from 4 degrees
below the horizon to 6 above (common practice), civil twilight as down to 6 below; the sun rises
when its upper edge does, with the air's refraction, at 0.833 degrees below.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from functools import lru_cache
from itertools import pairwise
from zoneinfo import ZoneInfo

from astral import Observer
from astral.julian import julianday, julianday_to_juliancentury
from astral.sun import azimuth, elevation, eq_of_time

from corymb.language import gettext as _
from corymb.studio.models.studio_file import Place

CIVIL, GOLDEN_FROM, RISE, GOLDEN_TO = -6.0, -4.0, -0.833, 6.0

STEP = timedelta(minutes=10)
CLOSE = timedelta(seconds=0.5)


@dataclass(frozen=True)
class Site:
    """A place on earth and the time that its clocks show."""

    latitude: float
    longitude: float
    zone: str

    @classmethod
    def of(cls, place: Place) -> Site:
        """A studio's place."""
        return cls(place.latitude, place.longitude, place.time_zone)


@dataclass(frozen=True)
class Sun:
    """Where it stands."""

    height: float
    """Degrees above the horizon, below 0 when it is down; without refraction."""
    direction: float
    """Degrees clockwise from north."""


@dataclass(frozen=True)
class Crossing:
    """The sun going through a height."""

    at: datetime
    rising: bool


@dataclass(frozen=True)
class SunDay:
    """One day's sun, in the place's own time; None for what doesn't happen that day."""

    civil_dawn: datetime | None
    sunrise: datetime | None
    noon: datetime
    sunset: datetime | None
    civil_dusk: datetime | None
    golden: tuple[tuple[datetime, datetime], ...]
    """From when to when each golden hour lasts; one that goes on past midnight is cut there."""
    height_at_noon: float
    never_sets: bool
    never_rises: bool

    @property
    def words(self) -> str:
        """What is out of the ordinary about it; nothing on most days."""
        if self.never_sets:
            return _("The sun doesn't set that day.")
        return _("The sun doesn't rise that day.") if self.never_rises else ""


def sun_at(site: Site, moment: datetime) -> Sun:
    """Where the sun stands. A moment without a time zone is in the place's own time."""
    if moment.tzinfo is None:
        moment = moment.replace(tzinfo=ZoneInfo(site.zone))
    utc = moment.astimezone(UTC)
    return Sun(_height(site, utc), _direction(site, utc))


@lru_cache(maxsize=512)
def sun_day(site: Site, day: date) -> SunDay:
    """The sun of a day."""
    noon = _noon(site, day)
    rises = crossings(site, day, RISE)
    civil = crossings(site, day, CIVIL)
    highest, lowest = (_height(site, noon + timedelta(hours=h)) for h in (0, 12))
    return SunDay(
        civil_dawn=_first(civil, rising=True),
        sunrise=_first(rises, rising=True),
        noon=noon.astimezone(ZoneInfo(site.zone)),
        sunset=_first(rises, rising=False),
        civil_dusk=_first(civil, rising=False),
        golden=_golden(site, day),
        height_at_noon=highest,
        never_sets=not rises and lowest > RISE,
        never_rises=not rises and highest < RISE,
    )


def crossings(site: Site, day: date, height: float) -> tuple[Crossing, ...]:
    """When the sun goes through a height, from midnight to midnight by the sun, in order."""
    return tuple(_crossings(site, day, height))


def _crossings(site: Site, day: date, height: float) -> Iterator[Crossing]:
    for (before, low), (after, high) in pairwise(_through_the_day(site, day)):
        was, is_ = low > height, high > height
        if was != is_:
            at = _between(site, before, after, height, rising=is_)
            yield Crossing(at.astimezone(ZoneInfo(site.zone)), rising=is_)


@lru_cache(maxsize=16)
def _through_the_day(site: Site, day: date) -> tuple[tuple[datetime, float], ...]:
    """The sun's height at every step of a day: several heights are looked for in one day."""
    start = _noon(site, day) - timedelta(hours=12)
    moments = [start + n * STEP for n in range(int(timedelta(hours=24) / STEP) + 1)]
    return tuple((moment, _height(site, moment)) for moment in moments)


def _between(
    site: Site, before: datetime, after: datetime, height: float, *, rising: bool
) -> datetime:
    """By halving."""
    while after - before > CLOSE:
        middle = before + (after - before) / 2
        if (_height(site, middle) > height) == rising:
            after = middle
        else:
            before = middle
    return after


def _golden(site: Site, day: date) -> tuple[tuple[datetime, datetime], ...]:
    """The spells in which the sun is within the golden hour's heights."""
    start = _noon(site, day) - timedelta(hours=12)
    ends = [start, start + timedelta(hours=24)]
    turns = [*crossings(site, day, GOLDEN_FROM), *crossings(site, day, GOLDEN_TO)]
    edges = sorted([*ends, *(turn.at for turn in turns)])
    zone = ZoneInfo(site.zone)
    return tuple(
        (before.astimezone(zone), after.astimezone(zone))
        for before, after in pairwise(edges)
        if GOLDEN_FROM < _height(site, (before + (after - before) / 2).astimezone(UTC)) < GOLDEN_TO
    )


def _first(found: tuple[Crossing, ...], *, rising: bool) -> datetime | None:
    return next((each.at for each in found if each.rising == rising), None)


@lru_cache(maxsize=1024)
def _noon(site: Site, day: date) -> datetime:
    """When the sun stands due south (or north) on a day of the place's own, in universal time."""
    middle = datetime.combine(day, time(12), tzinfo=UTC) - timedelta(hours=site.longitude / 15)
    there = middle.astimezone(ZoneInfo(site.zone)).date()  # clocks may keep the other side's date
    middle += timedelta(days=(day - there).days)
    century = julianday_to_juliancentury(julianday(middle))
    return middle - timedelta(minutes=eq_of_time(century))


def _height(site: Site, utc: datetime) -> float:
    return float(elevation(Observer(site.latitude, site.longitude), utc, with_refraction=False))


def _direction(site: Site, utc: datetime) -> float:
    return float(azimuth(Observer(site.latitude, site.longitude), utc))
