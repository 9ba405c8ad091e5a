"""What staff read of the weeks ahead. None of it is for clients: it says what the studio lacks."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Link
from corymb.views.season import AnswerView


@dataclass(frozen=True)
class WeekAhead:
    """What a week brings in the beds."""

    id: str  # '2026-W38', an anchor
    title: str  # 'Week 38'
    when: str  # '14 to 20 September 2026'
    coming_on: tuple[Link, ...]
    at_best: tuple[Link, ...]  # told in the first week alone
    to_best: tuple[Link, ...]  # in the others, those that weren't the week before
    going_over: tuple[Link, ...]


@dataclass(frozen=True)
class LastChanceView:
    """A recipe that can't be made any more some weeks from now."""

    recipe: Link
    last: str  # 'week 40, 28 September to 4 October 2026'
    how: AnswerView  # in its last week
    why: str  # 'Nothing stands in for shell dahlia.'
    again: str  # 'early July 2027'


@dataclass(frozen=True)
class LackView:
    """A stem that keeps the nearest recipe from being made, and what would mend that."""

    stem: Link
    mend: str  # 'A variant with 5 ... in place of 3 ... would do.', 'Nothing near it stands then.'
    careful: tuple[str, ...]  # of what comes nearest, where what is lacking didn't ask for it


@dataclass(frozen=True)
class UncoveredSpell:
    """Weeks in which no recipe of a style can be made, and what would mend that."""

    when: str  # 'from mid October to early November', 'in mid June', 'in any week of the year'
    weeks: int
    nearest: Link  # the recipe or variant that comes nearest
    lacks: tuple[LackView, ...]


@dataclass(frozen=True)
class UncoveredStyle:
    """A style and the weeks it has nothing for."""

    style: Link
    spells: tuple[UncoveredSpell, ...]


@dataclass(frozen=True)
class MonthAhead:
    """The weeks whose Thursday lies in a month."""

    name: str  # 'January 2027'
    weeks: tuple[WeekAhead, ...]


@dataclass(frozen=True)
class WeeksAheadView:
    """For the people who grow and make: what comes, what goes, and where the year is thin."""

    last_chances: tuple[LastChanceView, ...]
    within: int  # weeks that the last chances look ahead
    best_always: tuple[Link, ...]  # stems at their best in every week, told once
    next_weeks: tuple[WeekAhead, ...]
    months: tuple[MonthAhead, ...]  # the rest of a year
    uncovered: tuple[UncoveredStyle, ...]
    covered: tuple[Link, ...]  # the styles with something in every week
    season_note: tuple[str, ...]  # how book dates came to this garden, and what the log adds
