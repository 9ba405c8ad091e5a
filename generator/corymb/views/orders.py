"""What pages show of orders, for staff alone: the list, an order on its day, a standing order."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.cut import CutShareView
from corymb.views.light import OrderLightView
from corymb.views.money import MoneyView
from corymb.views.papers import LoadView
from corymb.views.pieces import Fact, ImagePair, Link
from corymb.views.reality import RealityView
from corymb.views.season import AnswerView
from corymb.views.weeks_ahead import LackView


@dataclass(frozen=True)
class OrderRow:
    """An order on its day, in a list."""

    order: Link
    when: str  # 'Saturday 19 September 2026'
    week: Link  # 'week 38'
    what: tuple[str, ...]  # '12 Hedgerow jar: Later in the year'
    place: str
    handover: str
    warns: tuple[str, ...]  # 'not then', 'with swaps', 'too late', each a few words


@dataclass(frozen=True)
class StandingRow:
    """A standing order in a list."""

    order: Link
    repeats: str  # 'weekly on Tuesday'
    runs: str  # '6 January to 29 December 2026'
    next_visit: Link | None
    thin: int  # visits in the year ahead whose weeks are thin


@dataclass(frozen=True)
class OrdersView:
    """All orders: those of this week and the next, those to come, those past."""

    this_week: tuple[OrderRow, ...]
    next_week: tuple[OrderRow, ...]
    coming: tuple[OrderRow, ...]
    past: tuple[OrderRow, ...]
    standing: tuple[StandingRow, ...]


@dataclass(frozen=True)
class PlannedView:
    """A line of an order once its cut is planned, as its bench sheet has it."""

    state: str  # of its answer, for the mark beside it
    words: str  # 'With swaps, by the walk', '7 stems are missing'
    each: str  # stems: '44', '12 or 13'
    stems: int
    swaps: tuple[str, ...]
    short: tuple[str, ...]


@dataclass(frozen=True)
class OrderLineView:
    """A line of an order, and how it can be made in the order's week."""

    number: int
    quantity: int
    look: Link
    leaves: str  # 'small, in buckets' or ''
    image: ImagePair
    stems_each: str  # '44', '12 or 13'
    stems: int  # of all of them
    planned: PlannedView | None  # told in place of the answer; none where no cut is planned yet
    answer: AnswerView
    sure: str
    instead: AnswerView | None  # a look of the recipe that can be made, where this one can't
    bench: Link | None  # its bench sheet


@dataclass(frozen=True)
class StepView:
    """One step of the work, in words and as a bar of the drawing."""

    name: str  # 'Cut'
    day: str  # 'Thursday 17 September'
    hours: str  # '06:30 to 08:22'
    note: str
    start: int  # of the bar, in thousandths of the drawing's width
    length: int


@dataclass(frozen=True)
class TimelineView:
    """All steps up to the use, the first of them first; and what won't do, in sentences."""

    days: tuple[str, ...]  # 'Thu 17', one for each day from the first step to the last
    steps: tuple[StepView, ...]
    flags: tuple[str, ...]
    note: str  # on the hours it is reckoned back from


@dataclass(frozen=True)
class WorkerView:
    """What one person makes, and how long it takes them."""

    who: str
    makes: tuple[str, ...]  # '7 Hedgerow jar: Later in the year'
    time: str


@dataclass(frozen=True)
class WorkView:
    """How long it takes, and how many people."""

    words: tuple[str, ...]
    people: tuple[WorkerView, ...]


@dataclass(frozen=True)
class OrderView:
    """An order on its day."""

    name: str
    when: str
    days: str  # 'in 3 days', 'today', '8 weeks ago'
    week: Link
    facts: tuple[Fact, ...]
    order_in: str  # what to order in, and by when
    told: tuple[Fact, ...]  # where, light, hours, handover, client and what else was written
    standing: Link | None
    lines: tuple[OrderLineView, ...]
    timeline: TimelineView
    work: WorkView
    light: OrderLightView
    cautions: tuple[str, ...]
    hot: tuple[str, ...]  # what to do where the day turns hot; nothing outside the warm half-year
    papers: tuple[Link, ...]
    load: LoadView | None  # what travels; none where no cut is planned yet
    cut: CutShareView | None  # none where no cut is planned yet
    money: MoneyView | None
    reality: RealityView | None


@dataclass(frozen=True)
class VisitView:
    """A visit of a standing order: its look, how it can be made, and why that one."""

    when: str
    order: Link | None  # its page, where it has one
    look: Link
    how: AnswerView
    sure: str
    choice: str  # 'Sent 5 visits ago. 3 looks can be made that week.'
    thin: str  # why the week is thin, or ''


@dataclass(frozen=True)
class VisitMonth:
    """The visits of a month."""

    name: str
    visits: tuple[VisitView, ...]


@dataclass(frozen=True)
class ThinView:
    """Visits one after the other whose weeks are thin, and what would help."""

    when: str  # '3 to 24 November 2026'
    why: str
    surer: tuple[Link, ...]  # others of the rotation
    helps: tuple[Link, ...]  # looks of other recipes that stand in all of these weeks
    nearest: Link | None  # otherwise, what comes nearest
    lacks: tuple[LackView, ...]  # and what it lacks


@dataclass(frozen=True)
class SentView:
    """A visit that is past, and what it got."""

    when: str
    look: Link
    order: Link | None
    made: tuple[Link, ...]
    learnt: str


@dataclass(frozen=True)
class StandingView:
    """A standing order with its year laid out and its history."""

    name: str
    repeats: str
    facts: tuple[Fact, ...]
    told: tuple[Fact, ...]
    rotation: tuple[Link, ...]
    visits: int  # in the year laid out
    thin: tuple[ThinView, ...]
    months: tuple[VisitMonth, ...]
    sent: tuple[SentView, ...]  # the latest first
