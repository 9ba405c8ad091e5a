"""What the other pages show: home, the lists, made work, lessons, and pages of plain text."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Link, Patch, PhotoView, RoleShare
from corymb.views.recipe import RecipeCard
from corymb.views.stem import StemCard, StemGroup


@dataclass(frozen=True)
class StyleView:
    """A family of arrangement and its recipes."""

    id: str
    name: str
    plural: str
    href: str
    about: str
    known_object: str
    recipes: tuple[RecipeCard, ...]


@dataclass(frozen=True)
class HomeView:
    """The front page."""

    about: str
    place: str
    lead: RecipeCard | None  # the arrangement shown large
    in_season: tuple[RecipeCard, ...]  # can be made as pictured in the week of the build
    season_words: str  # 'Late November' at the time of the build
    styles: tuple[StyleView, ...]
    standing_now: tuple[StemCard, ...]  # stems in season in the week of the build
    made: tuple[MadeCard, ...]


@dataclass(frozen=True)
class PriceLimit:
    """An amount that a list can be narrowed down by."""

    amount: str  # '40'
    words: str  # 'up to €40'


@dataclass(frozen=True)
class ArrangementsView:
    """Every arrangement by style, with what can be filtered by."""

    styles: tuple[StyleView, ...]
    colour_words: tuple[str, ...]
    months: tuple[str, ...]
    prices: tuple[PriceLimit, ...]


@dataclass(frozen=True)
class FlowersView:
    """Every flower by group."""

    groups: tuple[StemGroup, ...]
    colour_words: tuple[str, ...]
    months: tuple[str, ...]


@dataclass(frozen=True)
class MadeCard:
    """A piece of made work in a list."""

    title: str
    href: str
    when: str  # 'September 2025'
    photo: PhotoView
    recipe_name: str


@dataclass(frozen=True)
class MadeView:
    """A piece of made work: its photos, and the recipe it was made from."""

    title: str
    when: str
    about: str
    photos: tuple[PhotoView, ...]
    recipe: RecipeCard
    variant_name: str


@dataclass(frozen=True)
class PhotoColourView:
    """A plain colour of a photo: its shades, and their sum in percent."""

    word: str
    percent: float
    patches: tuple[Patch, ...]


@dataclass(frozen=True)
class PhotoBeside:
    """A photo's colours, without what lies behind the flowers, against its look's."""

    alt: str
    colours: tuple[PhotoColourView, ...]  # the largest first
    how_far: str  # 'Not far from the recipe's colours (14, where 1 is just seen).'
    lacking: str  # 'no plum (‘Smoke bush’) where the recipe has 30 %'


@dataclass(frozen=True)
class StaffMade(MadeView):
    """Made work as staff see it: every photo that staff may see, the client and the notes."""

    client: str
    notes: str
    band: tuple[RoleShare, ...]  # of the look it was made from
    beside: tuple[PhotoBeside, ...]  # each photo against it
    indicative: str


@dataclass(frozen=True)
class MadeListView:
    """The portfolio, newest first."""

    pieces: tuple[MadeCard, ...]


@dataclass(frozen=True)
class ProseView:
    """A page of plain text; `html` was made from Markdown with raw HTML escaped."""

    title: str
    summary: str
    html: str
    headings: tuple[Link, ...]  # href is '#anchor'


@dataclass(frozen=True)
class LessonView(ProseView):
    """A lesson: how long, how hard, what to know before, what to be careful of."""

    href: str
    time: str
    level: str
    needs: tuple[Link, ...]
    leads_to: tuple[Link, ...]
    careful: tuple[str, ...]
    used_in: tuple[Link, ...]


@dataclass(frozen=True)
class LessonsView:
    """All lessons in the order to take them."""

    lessons: tuple[LessonView, ...]


@dataclass(frozen=True)
class SearchView:
    """The search, and the lists to look through where it can't run."""

    instead: tuple[Link, ...]


@dataclass(frozen=True)
class NotFoundView:
    """The page for an address that leads nowhere."""

    suggestions: tuple[Link, ...]
