"""What day is it at the studio?

Its own clock decides, wherever the computer stands that builds: a style link is there through its
last day in the studio's garden, whatever the date is by then where the host's machines are.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

from corymb.studio.studio import Studio


def today_of(studio: Studio) -> date:
    """The studio's own day, now."""
    return day_at(datetime.now(UTC), studio.house.place.time_zone)


def day_at(moment: datetime, time_zone: str) -> date:
    """The date of a moment (one that knows its own zone) in another zone (IANA name)."""
    return moment.astimezone(ZoneInfo(time_zone)).date()
