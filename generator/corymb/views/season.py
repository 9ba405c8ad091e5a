"""What pages say of when: the strip of 52 weeks, the year in spells, a day, the weeks ahead."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.trade.season.best import BestState
from corymb.views.pieces import Fact, ImagePair, Link

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

    words: str  # '5 plum scabious in place of 3 plum sweet pea'; without counts for clients
    coming: Link
    going: Link
    reasons: tuple[str, ...]  # 'nearly the same colour'; for staff 'heads half as wide' as well
    careful: tuple[str, ...]  # what to be careful of that what goes out didn't ask for


@dataclass(frozen=True)
class AnswerView:
    """How an arrangement can be made at a time, or what keeps it from being made."""

    state: CellState
    words: str  # 'As pictured', 'With the variant ‘Later in the year’', 'Not then'
    look: Link | None  # the look to make; None for `none`
    image: ImagePair | None  # and how it looks
    swaps: tuple[SwapView, ...]
    blocks: str  # 'Not out then: shell dahlia.' or ''; 'Nothing stands in for ...' for staff
    nearest: str  # 'Again from week 23, 1 to 7 June 2027.' or ''


@dataclass(frozen=True)
class SpellView:
    """Weeks on end with one answer."""

    when: str  # 'Early July to mid October'
    weeks: str  # 'weeks 27 to 41, 29 June to 11 October 2026', or 'every week'
    sure: str  # 'sure', or 'sure, touch and go at both ends'
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

    made_on: str  # '16 September 2026', the day of the build
    now: MonthView  # the month of that day
    styles: tuple[StyleYear, ...]
    months: tuple[MonthView, ...]

    @property
    def seasons(self) -> tuple[SeasonView, ...]:
        """The strips of all recipes, for the key to them."""
        return tuple(recipe.row.season for style in self.styles for recipe in style.recipes)


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
    next: tuple[int, ...]  # the same for whoever can't have the nearest, since it has gone by
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
    sure_means: tuple[Fact, ...]  # 'likely', and how many years that is
    doubt: str  # why nothing is sure here, or ''
    styles: tuple[DatedStyle, ...]
