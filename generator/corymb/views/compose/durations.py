"""How is a length of time said: hours and minutes at the bench, days in the vase?"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.studio.values.time import DayRange


def time_words(minutes: int) -> str:
    """`1 h 30 min`, `8 h`, `45 min`."""
    hours, rest = divmod(minutes, 60)
    if hours and rest:
        return _("{hours} h {minutes} min").format(hours=hours, minutes=rest)
    if hours:
        return _("{hours} h").format(hours=hours)
    return _("{minutes} min").format(minutes=rest)


def days_words(days: DayRange) -> str:
    """`5-7 days`, `1 day`."""
    span = f"{days.fewest}-{days.most}" if days.fewest != days.most else str(days.most)
    return ngettext("{number} day", "{number} days", days.most).format(number=span)
