"""What does one audience's site draw on? The studio, what was worked out of it, and its images.

Drafts are left out here for clients, once, so that no view has to remember to.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property

from corymb.language import spoken
from corymb.ledger import AsAsked, Ledger, kept
from corymb.photos import PreparedPhoto
from corymb.studio.models import MadeWork, Page, Photo, Recipe, Stem, Style, Technique
from corymb.studio.studio import Studio
from corymb.trade.colour.advice import Adviser
from corymb.trade.kinship import Kin, Kinship, Seen, seen_of
from corymb.trade.looks import Look, look_id, looks_of
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.cutting_ahead import CuttingAhead
from corymb.trade.orders.due import Due, Dues
from corymb.trade.orders.gets import cut_for_it
from corymb.trade.orders.looked_at import dues_looked_at
from corymb.trade.orders.named import named_by_orders
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
    ledger: Ledger = field(default_factory=Ledger, compare=False)
    """Where everything that is worked out here is kept."""

    @property
    def known_as(self) -> str:
        """Whose facts these are in the ledger, and in which language they are said."""
        return f"{self.audience} {spoken()}"

    @property
    def staff(self) -> bool:
        """Whether this is for the people who make the flowers."""
        return self.audience == "staff"

    @property
    def week(self) -> int:
        """The week of the year (1 to 52) in which the site is built."""
        return week_on(self.today)

    @cached_property
    def looks(self) -> Mapping[str, Mapping[str, Look]]:
        """The looks of every recipe this audience may see, by recipe and variant."""
        return AsAsked(self._recipes_seen, self._sees, self._looks_of)

    def _sees(self, recipe_id: str) -> bool:
        recipe = self.studio.recipes.get(recipe_id)
        return recipe is not None and (self.staff or not recipe.draft)

    @kept
    def _recipes_seen(self) -> tuple[str, ...]:
        return tuple(known_as for known_as in self.studio.recipes if self._sees(known_as))

    def look_ids(self) -> Iterator[str]:
        """The ids of all these looks, which need not be worked out for it."""
        for recipe_id in self.looks:
            yield from (look_id(recipe_id, each) for each in self._variants_seen(recipe_id))

    @kept
    def _variants_seen(self, recipe_id: str) -> tuple[str, ...]:
        """The variants of a recipe that this audience may see; '' is the recipe itself."""
        variants = self.studio.recipes[recipe_id].variants.items()
        return ("", *(known_as for known_as, each in variants if self.staff or not each.draft))

    @kept
    def styles_seen(self) -> frozenset[str]:
        """The styles of which this audience may see a recipe."""
        return frozenset(self.studio.recipes[recipe_id].style for recipe_id in self.looks)

    @kept
    def _looks_of(self, recipe_id: str) -> dict[str, Look]:
        looks = looks_of(self.studio.recipes[recipe_id], self.studio.recipes)
        return {variant_id: looks[variant_id] for variant_id in self._variants_seen(recipe_id)}

    @property
    def makeable(self) -> Makeable:
        """In which weeks each look can be made, and how."""
        return self._makeable()

    @kept
    def _makeable(self) -> Makeable:
        """It remembers what it works out of stems and logs, so all of them are looked at here."""
        self.studio.stems.values()
        self.studio.logs.values()
        return Makeable.of(self.studio)

    @property
    def dues(self) -> Dues:
        """What is due on which day; for staff alone."""
        return self._dues()

    @kept
    def _dues(self) -> Dues:
        """Dues remember what they work out, so all that they may draw on is looked at here."""
        named_by_orders(self.studio)
        return Dues(self.studio, self.makeable)

    @property
    def dues_looked_at(self) -> tuple[Due, ...]:
        """What is due that anyone still looks at; for staff alone."""
        return self._dues_looked_at()

    @kept
    def _dues_looked_at(self) -> tuple[Due, ...]:
        return dues_looked_at(self.dues, self.today)

    def timed(self, due: Due) -> Timed:
        """An order's hours, by its cut where that is planned; what is past isn't too late."""
        found = self._timed().get(id(due))
        if found is not None:
            return found[1]
        today = self.today if due.day >= self.today else None
        cut = cut_for_it(self.cut_days, due.id)
        hours = timed(due, self.studio, self.makeable, today, cut)
        if not self.ledger.follows:  # an order's hours hang on more than its day and its id
            self._timed()[id(due)] = due, hours
        return hours

    @kept
    def _timed(self) -> dict[int, tuple[Due, Timed]]:
        """By the order itself, which is kept so that no other takes its number."""
        return {}

    @property
    def cut_days(self) -> tuple[CutDay, ...]:
        """The cutting days that are looked at, each decided once a build; for staff alone."""
        return self._cut_days() if self.staff else ()

    @kept
    def _cut_days(self) -> tuple[CutDay, ...]:
        return CuttingAhead(self.dues, self.studio, self.makeable).on(self.today)

    @property
    def beds(self) -> Beds:
        """What stands in the beds, and when."""
        return self.makeable.beds

    @property
    def adviser(self) -> Adviser:
        """Advises on the colours of looks; for staff alone."""
        return self._adviser()

    @kept
    def _adviser(self) -> Adviser:
        return Adviser.of(self.studio, self.beds)

    @cached_property
    def best(self) -> Mapping[str, tuple[Best, ...]]:
        """The best look of each recipe for each of the 52 weeks, by recipe."""
        return AsAsked(self._recipes_seen, self._sees, self._best_of)

    @kept
    def _best_of(self, recipe_id: str) -> tuple[Best, ...]:
        return best_of(self.looks[recipe_id], self.makeable)

    def bests(self, look: Look) -> tuple[Best, ...]:
        """Week by week: for a recipe's own look the best of all its looks, for a variant itself."""
        return self._best_alone(look) if look.variant else self.best[look.recipe]

    @kept
    def _best_alone(self, look: Look) -> tuple[Best, ...]:
        return best_of({"": look}, self.makeable)

    @cached_property
    def kin(self) -> Mapping[str, tuple[Kin, ...]]:
        """What goes with each recipe, of those this audience may see, best first."""
        return AsAsked(self._recipes_seen, self._sees, self._kin_of)

    @kept
    def _kin_of(self, recipe_id: str) -> tuple[Kin, ...]:
        return self._kinship().of(recipe_id)

    @kept
    def _kinship(self) -> Kinship:
        return Kinship({known_as: self._seen_of(known_as) for known_as in self.looks})

    @kept
    def _seen_of(self, recipe_id: str) -> Seen:
        weeks = frozenset(best.week for best in self.best[recipe_id] if best.state != "none")
        style = self.studio.recipes[recipe_id].style
        return seen_of(self.looks[recipe_id][""], self.studio.stems, weeks, style)

    @kept
    def _looks_with_stem(self) -> dict[str, list[Look]]:
        found: dict[str, dict[str, Look]] = {}
        for recipe_id, looks in self.looks.items():
            for look in looks.values():
                for line in look.lines:
                    found.setdefault(line.stem, {}).setdefault(recipe_id, look)
        return {stem: list(by_recipe.values()) for stem, by_recipe in found.items()}

    @kept
    def with_stem(self, stem_id: str) -> Sequence[Look]:
        """The looks that a stem goes into, at most one of a recipe, its own first."""
        return self._looks_with_stem().get(stem_id, [])

    def recipes(self) -> Iterator[Recipe]:
        """The recipes this audience may see, by style and then by name."""
        for known_as in self._recipes_in_order():
            yield self.studio.recipes[known_as]

    @kept
    def _recipes_in_order(self) -> tuple[str, ...]:
        recipes = [self.studio.recipes[recipe_id] for recipe_id in self.looks]
        places = {style_id: place for place, style_id in enumerate(self.studio.styles)}
        recipes.sort(key=lambda r: (places.get(r.style, 0), r.name.casefold()))
        return tuple(recipe.id for recipe in recipes)

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
        return [self.studio.made[known_as] for known_as in self._made_shown()]

    @kept
    def _made_shown(self) -> tuple[str, ...]:
        pieces = [
            made
            for made in self.studio.made.values()
            if self.shown(made.photos)
            and made.recipe in self.looks
            and (made.variant or "") in self.looks[made.recipe]
        ]
        pieces.sort(key=lambda made: (-made.date.toordinal(), made.id))
        return tuple(piece.id for piece in pieces)
