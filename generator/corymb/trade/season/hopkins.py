"""When does a season come here, if the book gives its dates for somewhere else?

Hopkins' bioclimatic law: in spring and early summer things come 4 days later for each degree of
latitude polewards, each 5 degrees of longitude eastwards and each 400 feet (121.92 m) upwards; in
autumn that much earlier. A. D. Hopkins, Monthly Weather Review Supplement 9 (1918); Journal of the
Washington Academy of Sciences 10:34-40 (1920); US Department of Agriculture Misc. Publ. 280 (1938).

Its limits: it was drawn up for North America's springs and is a rule of thumb for woody plants out
of doors. The longitude is used in North America alone, for in Britain and Ireland it misleads. A
warm wall or a frost pocket outweighs it, it isn't meant for the tropics, and it knows nothing of
plants forced under glass. The studio's own log (`logged`) overrules it as years add up.

How much of the rule holds on which day, and how a date is carried along, is told in `pace`.
In the other half of the world everything is half a year (182.5 days) on.
"""

from __future__ import annotations

from dataclasses import dataclass

from corymb.language import noted
from corymb.studio.models.studio_file import ReferencePlace
from corymb.studio.values.season import DAYS_IN_YEAR, Season
from corymb.trade.season.circle import Span, on_circle
from corymb.trade.season.pace import carried

DAYS_A_DEGREE_OF_LATITUDE = 4.0
DAYS_A_DEGREE_OF_LONGITUDE = 4.0 / 5
DAYS_A_METRE = 4.0 / 121.92  # 400 feet of 0.3048 m
HALF_YEAR = DAYS_IN_YEAR / 2

FARTHEST_DAYS = 30.0
"""Beyond a month the law is stretched too far: our own choice, no source."""
TROPIC = 23.44
"""Latitude of the tropics in degrees: the tilt of the earth's axis."""

OUT_OF_DEPTH = noted("it isn't meant for the tropics, nor for places more than a month apart")
"""What a studio is told where the law is stretched."""

# A box around the mainland and its islands, roughly: latitudes, then longitudes.
NORTH_AMERICA = ((15.0, 75.0), (-170.0, -52.0))


@dataclass(frozen=True)
class Way:
    """From the book's place to the studio's, as far as the law counts it."""

    polewards: float = 0.0
    """Degrees of latitude; below nought towards the equator."""
    eastwards: float = 0.0
    """Degrees of longitude; below nought westwards, and nought where they aren't counted."""
    upwards: float = 0.0
    """Metres."""
    longitude_counts: bool = False
    """Whether both places lie in North America, where the law counts it."""

    @property
    def days(self) -> float:
        """So much later in spring, and earlier in autumn."""
        return (
            DAYS_A_DEGREE_OF_LATITUDE * self.polewards
            + DAYS_A_DEGREE_OF_LONGITUDE * self.eastwards
            + DAYS_A_METRE * self.upwards
        )


@dataclass(frozen=True)
class Shift:
    """How the studio's seasons differ from the book's."""

    days: float = 0.0
    """So much later in spring, and earlier in autumn; below nought the other way round."""
    half_year: bool = False
    """Whether the studio lies in the other half of the world than the book's place."""
    south: bool = False
    """Whether the studio lies south of the equator."""
    stretched: bool = False
    """Whether the law is asked for what it isn't meant for: the tropics, or too far a way."""
    way: Way = Way()
    """What was counted."""

    @property
    def nothing(self) -> bool:
        """Whether the book's dates hold good as they are."""
        return self.days == 0 and not self.half_year


def shift_between(reference: ReferencePlace, place: ReferencePlace) -> Shift:
    """What Hopkins' law says of the way from the book's place to the studio's."""
    way, south = way_between(reference, place), place.latitude < 0
    return Shift(
        way.days,
        half_year=south != (reference.latitude < 0),
        south=south,
        stretched=is_stretched(reference, place),
        way=way,
    )


def way_between(reference: ReferencePlace, place: ReferencePlace) -> Way:
    """How far it is, in the ways that the law counts."""
    counted = _in_north_america(reference) and _in_north_america(place)
    return Way(
        abs(place.latitude) - abs(reference.latitude),
        place.longitude - reference.longitude if counted else 0.0,
        place.height.metres - reference.height.metres,
        counted,
    )


def _in_north_america(place: ReferencePlace) -> bool:
    (south, north), (west, east) = NORTH_AMERICA
    return south <= place.latitude <= north and west <= place.longitude <= east


def is_stretched(reference: ReferencePlace, place: ReferencePlace) -> bool:
    """Whether the law is asked for what it isn't meant for.

    Never where the book's dates hold good as they are: for them nothing is asked of it. Between
    two places of the tropics that lie as far from the equator, one on either side, it is.
    """
    days = way_between(reference, place).days
    halves = (reference.latitude < 0) != (place.latitude < 0)
    tropical = min(abs(reference.latitude), abs(place.latitude)) < TROPIC
    return (days != 0 or halves) and (tropical or abs(days) > FARTHEST_DAYS)


def moved(day: float, shift: Shift) -> float:
    """A day of the book's plain year (1 <= day < 366), brought to the studio's place."""
    if shift.nothing:
        return on_circle(day)
    from_south = shift.south != shift.half_year
    northern = on_circle(day + HALF_YEAR if from_south else day)
    there = carried(northern, shift.days)
    return on_circle(there + HALF_YEAR if shift.south else there)


def moved_span(span: Span, shift: Shift) -> Span:
    """A span with both its ends brought to the studio's place."""
    return Span.between(moved(span.first, shift), moved(span.last, shift))


def moved_season(season: Season, shift: Shift) -> Season:
    """All windows brought to the studio's place, in whole days; all year stays all year."""
    if shift.nothing or is_all_year(season):
        return season
    spans = (moved_span(Span.of(window), shift) for window in season.windows)
    return Season(tuple(span.window() for span in spans))


def is_all_year(season: Season) -> bool:
    """Whether there is no day of the year on which it is out of season."""
    return len(season.days()) == DAYS_IN_YEAR
