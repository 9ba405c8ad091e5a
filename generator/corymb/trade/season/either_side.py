"""When could it be made last, and when can it be next, from a week in which it can't?"""

from __future__ import annotations

from collections.abc import Collection

from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.watch import cell_of, weeks_after
from corymb.trade.season.weeks import WEEKS

LONGEST = len(WEEKS) + 1  # weeks in a year


def either_side(can: Collection[int], week: IsoWeek) -> tuple[IsoWeek, IsoWeek] | None:
    """The nearest weeks whose cell is in `can`, before and after; None where the year has none."""
    if not can:
        return None
    back = (week.plus(-n) for n in range(1, LONGEST + 1))
    ahead = weeks_after(week.plus(1), LONGEST)
    return (
        next(each for each in back if cell_of(each) in can),
        next(each for each in ahead if cell_of(each) in can),
    )
