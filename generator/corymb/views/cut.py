"""What the cut list of a day shows, and an order's share of it. For staff alone."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Fact, Link


@dataclass(frozen=True)
class HomeView:
    """Where so many stems go: the order, and the buckets they stand in."""

    order: str  # 'Barn supper'
    stems: int
    buckets: str  # 'tall bucket 6, 7, 12'


@dataclass(frozen=True)
class CutRow:
    """One stem to cut."""

    stem: Link
    botanical: str
    count: int
    steps: str  # '3 × 25', 'one by one' or ''
    stage: str  # 'nearly full open, the back petals still firm'
    careful: tuple[str, ...]  # 'gloves: irritant sap'
    homes: tuple[HomeView, ...]
    over: int  # cut with the rest, and for no order
    stays: int | None  # left standing; None where nothing was counted


@dataclass(frozen=True)
class BedView:
    """What is cut in one bed."""

    name: str
    rows: tuple[CutRow, ...]


@dataclass(frozen=True)
class BucketView:
    """One bucket of an order and what stands in it."""

    number: int
    kind: str  # 'tall bucket'
    holds: tuple[str, ...]  # '25 Dahlia, shell'
    notes: tuple[str, ...]  # 'goes as it stands', 'no water', 'hold the stems up'


@dataclass(frozen=True)
class ShareRow:
    """A stem that goes into an order."""

    stem: Link
    pieces: int  # for its pieces
    spare: int
    bought: int  # of both together


@dataclass(frozen=True)
class CutSwapView:
    """A stem that goes in for another, and why."""

    words: str  # '9 Cosmos, white for 9 Dahlia, shell'
    where: str  # '12 Hedgerow jar'
    reasons: tuple[str, ...]
    careful: tuple[str, ...]


@dataclass(frozen=True)
class GapView:
    """What is missing, and what would mend it."""

    words: str  # '2 Camellia, blush, for 4 Frost button: Camellia'
    mends: tuple[str, ...]  # sentences


@dataclass(frozen=True)
class MixView:
    """What a line from the mix gets, and what it lacks."""

    piece: str  # '1 Rook's wing hand-tie, from the mix'
    gets: str
    gaps: tuple[GapView, ...]


@dataclass(frozen=True)
class BuyRow:
    """A stem to buy in."""

    stem: Link
    count: int
    whose: str  # '9 for Barn supper'
    each: str
    together: str


@dataclass(frozen=True)
class ShareView:
    """An order's own share of a cut."""

    order: Link | None  # its page, where it has one
    name: str
    when: str  # 'wanted on Saturday 19 September'
    brief: tuple[Fact, ...]  # hours, whom to ring, notes
    stems: int
    rows: tuple[ShareRow, ...]
    buckets: tuple[BucketView, ...]
    bucket_total: str  # '14 × tall bucket, 3 × short bucket'
    swaps: tuple[CutSwapView, ...]
    mixes: tuple[MixView, ...]
    gaps: tuple[GapView, ...]
    spare_missed: str  # a sentence, or ''


@dataclass(frozen=True)
class CutListView:
    """The cut list of a day."""

    id: str  # '2026-09-17'
    when: str  # 'Thursday 17 September 2026'
    days: str  # 'in 3 days'
    week: Link
    tables: tuple[Link, ...]  # for a spreadsheet: by stem, by order
    facts: tuple[Fact, ...]
    mornings: str  # 'For 2 mornings, Friday 12 June and Saturday 13 June.', or ''
    walk: str  # the walk it goes by and how old it is, in sentences
    noted: str  # what was written down on that walk
    order_in: str  # what to order in, and by when
    proof: str
    beds: tuple[BedView, ...]
    shares: tuple[ShareView, ...]
    bucket_total: str
    buys: tuple[BuyRow, ...]
    cost: str  # of all that is bought in
    short: int  # stems missing from pieces, those from the mix too
    cautions: tuple[str, ...]


@dataclass(frozen=True)
class CutShareView:
    """An order's share of the cut, on the order's own page."""

    list: Link  # 'Cut list, Thursday 17 September'
    share: ShareView
    buys: tuple[BuyRow, ...]
    cost: str
    walk: str
