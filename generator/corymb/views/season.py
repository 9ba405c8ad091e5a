"""What pages say of when: the strip of 52 weeks, the year in spells, a day, the weeks ahead."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.trade.season.best import BestState
from corymb.views.pieces import ImagePair, Link

CellState = BestState


@dataclass(frozen=True)
class WeekCell:
    """One of the 52 cells of a season strip."""

    week: int
    month: str  # January ... December, by the week's Thursday
    state: CellState
    says: str  # 'Week 31, early August: as pictured'


@dataclass(frozen=True)
class SeasonView:
    """When something can be had: the strip's cells and the same in sentences, '' for none."""

    cells: tuple[WeekCell, ...]
    sentence: str  # 'Early July to mid October.'
    variant_sentence: str  # 'With a variant: late June, late October.'
    swaps_sentence: str = ""  # 'With swaps: mid June.'

    @property
    def months(self) -> tuple[str, ...]:
        """The months with at least one week in which it can be had (for filters)."""
        return tuple(dict.fromkeys(c.month for c in self.cells if c.state != "none"))


@dataclass(frozen=True)
class SwapView:
    """One stem standing in for another, and why that one."""

    words: str  # '5 Scabious, plum for 3 Sweet pea, plum'
    coming: Link
    going: Link
    reasons: tuple[str, ...]  # 'nearly the same colour', 'heads half as wide'
    careful: tuple[str, ...]  # what to be careful of that what goes out didn't ask for


@dataclass(frozen=True)
class AnswerView:
    """How an arrangement can be made at a time, or what keeps it from being made."""

    state: CellState
    words: str  # 'As pictured', 'As ‘Later in the year’', 'With swaps', 'Not then'
    look: Link | None  # the look to make; None for `none`
    image: ImagePair | None  # and how it looks
    swaps: tuple[SwapView, ...]
    blocks: str  # 'Nothing stands in for Dahlia, shell.' or ''
    nearest: str  # 'The nearest is late June.' or ''


@dataclass(frozen=True)
class SpellView:
    """Weeks on end with one answer."""

    when: str  # 'Early July to mid October'
    weeks: str  # 'weeks 27 to 41'
    sure: str  # 'sure', or 'sure, touch and go at the ends'
    answer: AnswerView


@dataclass(frozen=True)
class StripRow:
    """A name and its year beside it."""

    name: str
    href: str
    season: SeasonView


@dataclass(frozen=True)
class RecipeYear:
    """A recipe's year, and below it the year of each of its stems."""

    row: StripRow
    stems: tuple[StripRow, ...]


@dataclass(frozen=True)
class StyleYear:
    """The recipes of a style, each with its year."""

    name: str
    href: str
    recipes: tuple[RecipeYear, ...]


@dataclass(frozen=True)
class MonthView:
    """What a month has: arrangements by how they can be made, and flowers."""

    id: str  # 'september', an anchor
    name: str
    pictured: tuple[Link, ...]
    otherwise: tuple[Link, ...]  # with a variant or with swaps
    at_best: tuple[Link, ...]
    standing: tuple[Link, ...]  # the other flowers


@dataclass(frozen=True)
class InSeasonView:
    """The year at a glance."""

    now: str  # 'Mid September', at the time of the build
    this_month: str  # the anchor of the month of the build
    styles: tuple[StyleYear, ...]
    months: tuple[MonthView, ...]


@dataclass(frozen=True)
class DatedImage:
    """How a look of a recipe looks, and the answers that it goes with."""

    image: ImagePair
    answers: tuple[int, ...]


@dataclass(frozen=True)
class DatedRecipe:
    """A recipe and its answer for each week of the year."""

    name: str
    href: str
    images: tuple[DatedImage, ...]  # each once: several answers may share one
    answers: tuple[AnswerView, ...]
    prices: tuple[str, ...]  # of each answer, '' where none is written down
    weeks: tuple[int, ...]  # for each of the 52 weeks, which of `answers`
    sure: tuple[str, ...]  # for each of the 52 weeks, as 'sure' or 'touch and go'


@dataclass(frozen=True)
class DatedStyle:
    """The recipes of a style, to be asked for a day."""

    name: str
    href: str
    recipes: tuple[DatedRecipe, ...]


@dataclass(frozen=True)
class YourDateView:
    """Choose a day: what can be made then, how, and how sure that is."""

    today: str  # the day of the build, YYYY-MM-DD
    months: tuple[Link, ...]  # to the year at a glance
    styles: tuple[DatedStyle, ...]


@dataclass(frozen=True)
class WeekAhead:
    """What a week brings in the beds."""

    id: str  # '2026-W38', an anchor
    title: str  # 'Week 38'
    when: str  # '14 to 20 September 2026'
    coming_on: tuple[Link, ...]
    at_best: tuple[Link, ...]
    going_over: tuple[Link, ...]


@dataclass(frozen=True)
class LastChance:
    """A recipe that can't be made any more some weeks from now."""

    recipe: Link
    last: str  # 'week 40, 28 September to 4 October 2026'
    how: AnswerView  # in its last week
    why: str  # 'Nothing stands in for Dahlia, shell after that.'
    again: str  # 'early July 2027'


@dataclass(frozen=True)
class LackView:
    """A stem that keeps the nearest recipe from being made, and what would mend that."""

    stem: Link
    mend: str  # 'Nearest is 5 ... for 3 ...: too short. Grow or buy a focal stem near it ...'
    careful: tuple[str, ...]  # of what comes nearest, where what is lacking didn't ask for it


@dataclass(frozen=True)
class UncoveredSpell:
    """Weeks in which no recipe of a style can be made, and what would mend that."""

    when: str  # 'from mid October to early November', 'in mid June'
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

    last_chances: tuple[LastChance, ...]
    within: int  # weeks that the last chances look ahead
    next_weeks: tuple[WeekAhead, ...]
    months: tuple[MonthAhead, ...]  # the rest of a year
    uncovered: tuple[UncoveredStyle, ...]
    covered: tuple[Link, ...]  # the styles with something in every week
    season_note: tuple[str, ...]  # how book dates came to this garden, and what the log adds
