"""What an arrangement's page shows: to a client, and to the people who make it."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.colour import ColourView
from corymb.views.light import LightSwitch
from corymb.views.money import PriceView
from corymb.views.pieces import (
    Fact,
    ImagePair,
    Link,
    PhotoView,
    PictureView,
    RoleShare,
    SizesPicture,
)
from corymb.views.season import SeasonView, SpellView


@dataclass(frozen=True)
class RecipeCard:
    """An arrangement in a list: enough to choose it by, and to filter it by."""

    id: str  # of its look
    name: str
    href: str
    style: str
    style_name: str
    summary: str
    image: ImagePair
    band: tuple[RoleShare, ...]
    stems_total: int
    across: str
    width: str  # narrow | middling | wide; a recipe's sizes have words of their own
    price: str  # 'from €28' or ''
    price_amount: str  # '28', to narrow a list down by; or ''
    season: SeasonView
    colour_words: tuple[str, ...]  # plain families of colour: 'pink', 'plum', 'white' ...
    draft: bool = False


@dataclass(frozen=True)
class LineView:
    """One line of a recipe: how many of which stem, and what it is there for."""

    count: int
    name: str
    botanical: str
    href: str
    hex: str
    role: str
    use: str
    essential: bool
    season: str
    percent: float  # share of the visible area


@dataclass(frozen=True)
class StaffLine(LineView):
    """A line with the word about it that is for whoever makes it."""

    note: str


@dataclass(frozen=True)
class SizeView:
    """The same recipe in one size: whole stems line by line, in the order of the lines."""

    name: str
    total: int
    counts: tuple[int, ...]
    across: str  # '16 cm'
    high: str


@dataclass(frozen=True)
class ChangeView:
    """One difference from the recipe it is made from, in words and in numbers."""

    kind: str  # added | dropped | more | fewer
    name: str
    role: str
    words: str  # a few, for a list: `With 3 Crocosmia, ember`
    before: int
    after: int


@dataclass(frozen=True)
class VariantView:
    """A variant in its recipe's list."""

    name: str
    href: str
    about: str
    image: ImagePair
    changes: tuple[ChangeView, ...]
    season: SeasonView
    stems_total: int
    price: str
    current: bool


@dataclass(frozen=True)
class KinView:
    """Another arrangement that goes well with this one, and why."""

    name: str
    href: str
    style_name: str
    image: ImagePair
    why: str  # 'shares 4 stems; close in colour'


@dataclass(frozen=True)
class ClientRecipe:
    """An arrangement, or one variant of it, as a client may see it."""

    id: str  # of the look
    name: str
    variant_name: str  # '' on the recipe's own page
    style: Link
    parent: Link | None  # the recipe, on a variant's page
    summary: str
    image: ImagePair
    photos: tuple[PhotoView, ...]
    facts: tuple[Fact, ...]
    vessel: str
    band: tuple[RoleShare, ...]
    light: LightSwitch
    lines: tuple[LineView, ...]
    stems_total: int
    sizes: tuple[SizeView, ...]
    side_by_side: SizesPicture | None  # the sizes in their order, at one scale
    changed_from: Link | None  # what `changes` start from
    changes: tuple[ChangeView, ...]
    variants: tuple[VariantView, ...]
    season: SeasonView
    spells: tuple[SpellView, ...]  # the year in turn, from the week of the build
    goes_with: tuple[KinView, ...]
    price: str
    care: str
    cautions: tuple[str, ...]  # for whoever takes it home: pets, sap, berries
    known_object: str
    ask_href: str  # a mailto: address with subject and questions filled in
    made: tuple[Link, ...]  # made work that used it


@dataclass(frozen=True)
class CostLine:
    """What one line of a recipe costs the studio, grown and bought, in words of its money."""

    name: str
    count: int
    grown: str
    bought: str


@dataclass(frozen=True)
class StepView:
    """A step, or a sign that it is right; `note` says which plant it names isn't in this one."""

    text: str
    note: str


@dataclass(frozen=True)
class PlanKeyLine:
    """One number of the plan from above: which stem bears it, and how many there are."""

    number: int
    name: str
    count: int


@dataclass(frozen=True)
class BenchView:
    """How it is made: the part of an arrangement's page that only staff see."""

    difficulty: str
    time: str
    techniques: tuple[Link, ...]
    method: tuple[StepView, ...]
    looks_right: tuple[StepView, ...]
    careful: tuple[str, ...]  # cautions for the maker: the recipe's own and its stems'
    conditioning: tuple[str, ...]  # a sentence a stem
    costs: tuple[CostLine, ...]
    sundries: tuple[CostLine, ...]
    stems_grown: str  # all stems of one piece, grown
    stems_bought: str  # and bought; '' where one of them can't be had
    sundries_cost: str
    price: PriceView
    notes: str
    draft: bool
    plan: PictureView | None = None  # from above, numbered in the order of placing
    plan_key: tuple[PlanKeyLine, ...] = ()
    practice_href: str = ""  # where it is made step by step; '' for a draft
    recipe_id: str = ""  # by which questions are asked about it


@dataclass(frozen=True)
class StaffRecipe(ClientRecipe):
    """An arrangement as the people who make it see it."""

    lines: tuple[StaffLine, ...]
    bench: BenchView
    colour: ColourView
    care_card: Link  # to go with it
