"""From when is it light enough to cut on a day?

From civil dawn on, when the sun is 6 degrees below the horizon: what is out of doors can then be
told apart without a lamp (common practice). Rounded up to a quarter of an hour, as hours of work
are written.
"""

from __future__ import annotations

from datetime import date, time

from corymb.trade.light.sun import Site, sun_day

QUARTER = 15


def first_light(site: Site, day: date) -> time | None:
    """By the place's own clock; None where a day has no dawn, light or dark throughout."""
    dawn = sun_day(site, day).civil_dawn
    if dawn is None or dawn.date() != day:
        return None
    minutes = 60 * dawn.hour + dawn.minute + bool(dawn.second or dawn.microsecond)
    hour, minute = divmod(-(-minutes // QUARTER) * QUARTER, 60)
    return time(hour, minute) if hour < 24 else None
