"""What the papers of an order show: bench sheets, bucket labels, load sheet, the client's sheet."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Fact, ImagePair, Link, PictureView
from corymb.views.recipe import PlanKeyLine, StepView

MOST_LINES, MOST_CAUTIONS = 28, 8
"""On a bench sheet in its usual type: tried on A4 with the house's fonts."""

FEW_PARTS, MANY_PARTS = 3, 6
"""Kinds of stems on a bucket's label."""


@dataclass(frozen=True)
class PaperHead:
    """What every paper says of its order: of the client no more than the order's name does."""

    name: str
    when: str  # 'Saturday 19 September 2026'
    place: str


@dataclass(frozen=True)
class SheetStem:
    """One stem of a bench sheet, as it will be."""

    name: str
    hex: str
    role: str
    use: str
    each: str  # '5', or '4 or 5' where it doesn't come out even
    all: int
    note: str  # 'in place of 2 Crocosmia, ember'; the recipe's own word to the maker
    key: str  # by which a tick finds it again in a later build
    stands: str  # 'tall bucket 5, 6', by the numbers on the labels


@dataclass(frozen=True)
class RoleStems:
    """The stems of one colour part."""

    role: str
    stems: tuple[SheetStem, ...]
    each: str
    all: int


@dataclass(frozen=True)
class SheetDrawn:
    """One piece of a bench sheet, drawn."""

    picture: PictureView
    plan: PictureView | None  # from above; none where the stems leave loose
    key: tuple[PlanKeyLine, ...]  # of the plan's numbers, in the order of placing
    told: str  # whether it is drawn as written or as it will be made, where that differs


@dataclass(frozen=True)
class BenchSheet:
    """One line of an order, for whoever makes it: one side of paper."""

    key: str  # by which ticks find it again, wherever in the order it stands then
    number: int
    of: int
    quantity: int
    look: Link
    leaves: str  # 'small, in buckets' or ''
    drawn: SheetDrawn
    facts: tuple[Fact, ...]
    roles: tuple[RoleStems, ...]
    stems_each: str
    stems_all: int
    fetch: tuple[str, ...]  # what goes in beside stems, for all of them
    swaps: tuple[str, ...]  # what was swapped and why, a sentence each
    short: tuple[str, ...]  # what is missing
    steps: tuple[StepView, ...]  # none where the stems leave loose
    looks_right: tuple[StepView, ...]
    careful: tuple[str, ...]
    conditioning: tuple[str, ...]

    @property
    def long(self) -> bool:
        """Whether there is so much to say that it is set smaller, to stay on one side of A4."""
        stems = [stem for part in self.roles for stem in part.stems]
        notes = [*(step.note for step in self.steps), *(stem.note for stem in stems)]
        lines = len(stems) + len(self.roles) + len(list(filter(None, notes))) + len(self.short)
        return lines + 2 * (len(self.steps) + len(self.swaps)) > MOST_LINES or (
            len(self.careful) > MOST_CAUTIONS
        )

    @property
    def full(self) -> bool:
        """Whether there is so much to be careful of that the paper has no room for the picture."""
        return self.drawn.plan is not None and len(self.careful) > MOST_CAUTIONS


@dataclass(frozen=True)
class BenchSheetsView:
    """All bench sheets of an order."""

    key: str  # of the order on its day, for ticks
    head: PaperHead
    order: Link
    brief: tuple[Fact, ...]  # hours, whom to ring, notes
    sheets: tuple[BenchSheet, ...]


@dataclass(frozen=True)
class CodeView:
    """A QR code, as the outlines of its dark modules, within a quiet zone of four modules."""

    modules: int  # of a side, quiet zone and all
    path: str
    leads_to: str  # what a camera reads from it


@dataclass(frozen=True)
class PartView:
    """So many of one stem in a bucket."""

    count: int
    name: str


@dataclass(frozen=True)
class LabelView:
    """The label of one bucket."""

    number: int
    of: int
    kind: str  # 'tall bucket'
    parts: tuple[PartView, ...]
    stems: int
    cut: str  # 'Cut Thursday 17 September'
    goes: str  # 'To the bench', 'Goes as it stands'
    stands: str  # 'without water', 'hold the stems up' or ''
    hours: int  # that it has to drink before it is made up: of what drinks longest in it
    water: str  # '5 L' or ''

    @property
    def sparse(self) -> bool:
        """Whether there is room to set its stems large."""
        return len(self.parts) <= FEW_PARTS

    @property
    def crowded(self) -> bool:
        """Whether so many kinds share the bucket that they are set smaller."""
        return len(self.parts) > MANY_PARTS


@dataclass(frozen=True)
class LabelsView:
    """All labels of an order, sheet by sheet."""

    head: PaperHead
    order: Link
    bench: Link
    code: CodeView | None  # none where nobody says how the site is opened
    told: str  # where the code leads, and what it takes
    sheets: tuple[tuple[LabelView, ...], ...]


@dataclass(frozen=True)
class PlacedView:
    """One thing on the drawing of the load floor, in cm from the corner by the seats."""

    number: int
    x: float
    y: float
    radius: float


@dataclass(frozen=True)
class GroupView:
    """Things alike on one trip."""

    numbers: str  # '1-4, 7'
    count: int
    what: str
    stands: str  # '30 cm high'
    kg: str  # 'about 3.4 kg each'


@dataclass(frozen=True)
class TripView:
    """One trip: the floor drawn to scale, and what stands on it in the order it goes in."""

    number: int
    of: int
    placed: tuple[PlacedView, ...]
    groups: tuple[GroupView, ...]
    kg: str


@dataclass(frozen=True)
class FloorView:
    """The load floor, in cm, and how it is drawn."""

    long: float
    wide: float
    bar_cm: int  # of the scale bar
    scale: int  # one to so many


@dataclass(frozen=True)
class LoadView:
    """What travels, in short, for an order's page too."""

    words: tuple[str, ...]  # '2 buckets and 23 pieces: three trips with a small van.'
    overnight: str  # '20 buckets stand overnight: 11 tall buckets, 9 short buckets.'
    sheet: Link | None


@dataclass(frozen=True)
class LoadSheetView:
    """The load sheet of an order."""

    head: PaperHead
    order: Link
    brief: tuple[Fact, ...]  # hours, whom to ring, notes
    take: tuple[str, ...]  # tools, sundries and water that go along
    load: LoadView
    vehicle: str
    note: str
    floor: FloorView | None
    trips: tuple[TripView, ...]
    listed: tuple[GroupView, ...]  # what travels, where there is no vehicle to draw
    before: tuple[str, ...]  # heights, trimming, what doesn't go in
    order_of_loading: tuple[str, ...]
    lifting: str
    reckoned: tuple[str, ...]  # by which rules of the house


@dataclass(frozen=True)
class KeepingView:
    """How one arrangement is kept until it is used, and after."""

    what: str
    care: str


@dataclass(frozen=True)
class ArrangeView:
    """How a client makes one of what comes as loose stems."""

    what: str  # 'Hedgerow jar'
    quantity: int
    vessel: str
    image: ImagePair
    stems: tuple[str, ...]  # of one: '5 Dahlia, shell'
    steps: tuple[StepView, ...]
    looks_right: tuple[StepView, ...]


@dataclass(frozen=True)
class CollectionView:
    """The client's own sheet: no cost, no note, no other order."""

    head: PaperHead
    order: Link
    collects: bool
    what: tuple[str, ...]  # '12 Hedgerow jar: Later in the year'
    words: str  # for who collects: buckets, vehicle, seats
    more: tuple[str, ...]  # boxes, what is made up there
    when: tuple[Fact, ...]
    until_use: tuple[str, ...]
    arrange: tuple[ArrangeView, ...]
    loose: tuple[str, ...]  # 'Bucket 19: 24 Dahlia, shell', where stems come loose
    keeping: tuple[KeepingView, ...]
    cautions: tuple[str, ...]
