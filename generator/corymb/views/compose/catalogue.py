"""What does one audience's site draw on? The studio, what was worked out of it, and its images.

Drafts are left out here for clients, once, so that no view has to remember to.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property

from corymb.photos import PreparedPhoto
from corymb.studio.models import MadeWork, Page, Photo, Recipe, Stem, Style, Technique
from corymb.studio.studio import Studio
from corymb.trade.colour.advice import Adviser
from corymb.trade.kinship import Kin, goes_with
from corymb.trade.looks import Look, looks_of
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.cutting_ahead import CuttingAhead
from corymb.trade.orders.due import Due, Dues
from corymb.trade.orders.gets import cut_for_it
from corymb.trade.orders.looked_at import dues_looked_at
from corymb.trade.orders.timed import Timed, timed
from corymb.trade.season.beds import Beds
from corymb.trade.season.best import Best, best_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.weeks import week_on
from corymb.views.pieces import AUDIENCES, Audience
from corymb.views.recipe import PlanKeyLine


@dataclass(frozen=True)
class Drawing:
    """A drawn picture as it will be published: its address and the size of its sheet.

    `card` is the address of its share card, where messages have no photo to show; `small` and
    `small_wide` those of its pixels for a phone's lists, in a high frame and in a wide one.
    """

    href: str
    width: float
    height: float
    card: str = ""
    small: str = ""
    small_wide: str = ""


@dataclass(frozen=True)
class PlanDrawing:
    """A plan from above as it will be published, and its key."""

    drawing: Drawing
    key: tuple[PlanKeyLine, ...]


@dataclass(frozen=True)
class Catalogue:
    """Everything the views of one audience are made from.

    `photos` is by the path written in the studio's files; `drawings` and `plans` by the look's id;
    `sizes` by the recipe's; `heads` by the stem's.
    """

    studio: Studio
    audience: Audience
    today: date
    photos: Mapping[str, PreparedPhoto] = field(default_factory=dict)
    drawings: Mapping[str, Drawing] = field(default_factory=dict)
    heads: Mapping[str, str] = field(default_factory=dict)
    plans: Mapping[str, PlanDrawing] = field(default_factory=dict)
    sizes: Mapping[str, Drawing] = field(default_factory=dict)

    @property
    def staff(self) -> bool:
        """Whether this is for the people who make the flowers."""
        return self.audience == "staff"

    @property
    def week(self) -> int:
        """The week of the year (1 to 52) in which the site is built."""
        return week_on(self.today)

    @cached_property
    def looks(self) -> dict[str, dict[str, Look]]:
        """The looks of every recipe this audience may see, by recipe and variant."""
        return {
            recipe_id: {
                variant_id: look
                for variant_id, look in looks_of(recipe, self.studio.recipes).items()
                if self.staff or not variant_id or not recipe.variants[variant_id].draft
            }
            for recipe_id, recipe in self.studio.recipes.items()
            if self.staff or not recipe.draft
        }

    @cached_property
    def makeable(self) -> Makeable:
        """In which weeks each look can be made, and how."""
        return Makeable.of(self.studio)

    @cached_property
    def dues(self) -> Dues:
        """What is due on which day; for staff alone."""
        return Dues(self.studio, self.makeable)

    @cached_property
    def dues_looked_at(self) -> tuple[Due, ...]:
        """What is due that anyone still looks at; for staff alone."""
        return dues_looked_at(self.dues, self.today)

    def timed(self, due: Due) -> Timed:
        """An order's hours, by its cut where that is planned; what is past isn't too late."""
        if id(due) not in self._timed:
            today = self.today if due.day >= self.today else None
            cut = cut_for_it(self.cut_days, due.id)
            self._timed[id(due)] = due, timed(due, self.studio, self.makeable, today, cut)
        return self._timed[id(due)][1]

    @cached_property
    def _timed(self) -> dict[int, tuple[Due, Timed]]:
        """By the order itself, which is kept so that no other takes its number."""
        return {}

    @cached_property
    def cut_days(self) -> tuple[CutDay, ...]:
        """The cutting days that are looked at, each decided once a build; for staff alone."""
        if not self.staff:
            return ()
        return CuttingAhead(self.dues, self.studio, self.makeable).on(self.today)

    @property
    def beds(self) -> Beds:
        """What stands in the beds, and when."""
        return self.makeable.beds

    @cached_property
    def adviser(self) -> Adviser:
        """Advises on the colours of looks; for staff alone."""
        return Adviser.of(self.studio, self.beds)

    @cached_property
    def best(self) -> dict[str, tuple[Best, ...]]:
        """The best look of each recipe for each of the 52 weeks, by recipe."""
        return {known_as: best_of(looks, self.makeable) for known_as, looks in self.looks.items()}

    def bests(self, look: Look) -> tuple[Best, ...]:
        """Week by week: for a recipe's own look the best of all its looks, for a variant itself."""
        return best_of({"": look}, self.makeable) if look.variant else self.best[look.recipe]

    @cached_property
    def kin(self) -> dict[str, tuple[Kin, ...]]:
        """What goes with each recipe, of those this audience may see, best first."""
        return goes_with(
            {known_as: looks[""] for known_as, looks in self.looks.items()},
            self.studio.stems,
            {
                known_as: frozenset(best.week for best in bests if best.state != "none")
                for known_as, bests in self.best.items()
            },
            {known_as: self.studio.recipes[known_as].style for known_as in self.looks},
        )

    @cached_property
    def looks_with_stem(self) -> dict[str, list[Look]]:
        """The looks that each stem goes into, at most one of a recipe, its own first."""
        found: dict[str, dict[str, Look]] = {}
        for recipe_id, looks in self.looks.items():
            for look in looks.values():
                for line in look.lines:
                    found.setdefault(line.stem, {}).setdefault(recipe_id, look)
        return {stem: list(by_recipe.values()) for stem, by_recipe in found.items()}

    def recipes(self) -> Iterator[Recipe]:
        """The recipes this audience may see, by style and then by name."""
        recipes = [self.studio.recipes[recipe_id] for recipe_id in self.looks]
        places = {style_id: place for place, style_id in enumerate(self.studio.styles)}
        yield from sorted(recipes, key=lambda r: (places.get(r.style, 0), r.name.casefold()))

    def style_of(self, recipe: Recipe) -> Style:
        """The style a recipe belongs to."""
        return self.studio.house.styles[recipe.style]

    def stem(self, stem_id: str) -> Stem:
        """A stem by its id."""
        return self.studio.stems[stem_id]

    def may_read(self, heading: Page | Technique) -> bool:
        """Whether a page or a lesson is for this audience."""
        return self.staff or heading.for_ == "everyone"

    def shown(self, photos: list[Photo]) -> list[Photo]:
        """The photos this audience may see: consent decides, and nobody means nobody."""
        allowed = AUDIENCES if self.staff else ("clients",)
        return [photo for photo in photos if photo.may_be_shown_to in allowed]

    def made(self) -> list[MadeWork]:
        """Made work with a photo this audience may see and a recipe it knows, newest first."""
        pieces = [
            made
            for made in self.studio.made.values()
            if self.shown(made.photos)
            and made.recipe in self.looks
            and (made.variant or "") in self.looks[made.recipe]
        ]
        return sorted(pieces, key=lambda made: (-made.date.toordinal(), made.id))
