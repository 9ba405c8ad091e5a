"""What the printed book of recipes shows: chapters, recipes, lessons, and where each begins."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from corymb.views.frame import Tint
from corymb.views.money import SizePrice
from corymb.views.pages import LessonView
from corymb.views.pieces import Fact, PictureView
from corymb.views.recipe import ClientRecipe, PlanKeyLine, StaffLine, StepView


@dataclass(frozen=True)
class BookRole:
    """The stems of one colour part."""

    role: str
    lines: tuple[StaffLine, ...]  # without a note in the clients' book
    total: int


@dataclass(frozen=True)
class BookBench:
    """How it is made, for the staff's book alone."""

    facts: tuple[Fact, ...]  # how hard
    know_first: tuple[BookPlace, ...]
    plan: PictureView | None
    plan_key: tuple[PlanKeyLine, ...]
    method: tuple[StepView, ...]
    looks_right: tuple[StepView, ...]
    careful: tuple[str, ...]
    conditioning: tuple[str, ...]
    sundries: tuple[str, ...]
    costs: tuple[SizePrice, ...]
    notes: str
    draft: bool


@dataclass(frozen=True)
class BookPlace:
    """What is called so, and where in the book it begins."""

    anchor: str
    name: str


@dataclass(frozen=True)
class BookRecipe:
    """A recipe, which begins on a page of its own."""

    anchor: str
    view: ClientRecipe
    tint: Tint | None
    roles: tuple[BookRole, ...]
    goes_with: tuple[BookPlace, ...]
    bench: BookBench | None


@dataclass(frozen=True)
class BookChapter:
    """A style and its recipes."""

    anchor: str
    name: str
    about: str
    recipes: tuple[BookRecipe, ...]


@dataclass(frozen=True)
class BookLesson:
    """A lesson, which begins on a page of its own too."""

    anchor: str
    view: LessonView
    html: str  # made from Markdown, with its headings below the lesson's own


@dataclass(frozen=True)
class BookStem:
    """A stem in the index, and the recipes it is in."""

    name: str
    botanical: str
    recipes: tuple[BookPlace, ...]


@dataclass(frozen=True)
class PageNumber:
    """The page on which something begins, as read from a first printing."""

    anchor: str
    page: int


@dataclass(frozen=True)
class BookView:
    """The whole book; without `numbers` its contents and its index name no pages yet."""

    title: str
    made_on: str
    lead: PictureView | None  # on the title page
    tax: str  # whether tax is in the prices; '' where none are shown
    chapters: tuple[BookChapter, ...]
    lessons_anchor: str
    lessons: tuple[BookLesson, ...]
    index_anchor: str
    index: tuple[BookStem, ...]
    numbers: tuple[PageNumber, ...]

    def page(self, anchor: str) -> str:
        """The page on which something begins; '' where that isn't known."""
        return str(self._pages.get(anchor, ""))

    @cached_property
    def _pages(self) -> dict[str, int]:
        return {each.anchor: each.page for each in self.numbers}
