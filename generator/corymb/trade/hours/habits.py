"""When in the day does the studio do what, where nothing else is said?

All of these are house values: common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import time, timedelta

from corymb.studio.models.studio_file import Work


@dataclass(frozen=True)
class Habits:
    """The studio's hours. Common practice, no source."""

    cut_at: time = time(6, 30)
    """The cut begins, if it is light by then."""
    cut_at_in_heat: time = time(5, 0)
    """The cut begins on hot days, if it is light by then."""
    cut_hours: float = 4.0
    """The cut of a morning takes no longer: then the sun is on the beds."""
    stems_an_hour: int = 150
    """How many stems one person cuts and strips in an hour."""
    make_at: time = time(8, 0)
    """Making begins."""
    make_hours: float = 7.0
    """A day at the bench, breaks left out."""
    make_days_before: int = 1
    """Making is over so many days before the flowers are handed over."""
    before_delivery: timedelta = timedelta(hours=2)
    """Driving and setting out, before the first guests look."""
    before_collection: timedelta = timedelta(hours=4)
    """Clients fetch their flowers, take them home and set them out."""

    @classmethod
    def of(cls, work: Work) -> Habits:
        """The hours that a studio's own file gives; what it leaves out is the house's."""
        return cls(
            cut_at=work.cut_at,
            cut_at_in_heat=work.cut_at_in_heat,
            cut_hours=work.cut_hours,
            stems_an_hour=work.stems_an_hour,
            make_at=work.make_at,
            make_hours=work.hours_a_day,
            make_days_before=work.make_days_before,
            before_delivery=timedelta(minutes=work.before_delivery.minutes),
            before_collection=timedelta(minutes=work.before_collection.minutes),
        )


HABITS = Habits()
