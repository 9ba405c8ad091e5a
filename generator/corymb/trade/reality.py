"""What did orders really take, and which recipes should say something else?

After an order the studio may write what went in (`used`, by stem) and how long it took
(`minutes`). Beside what the recipes asked for the same pieces, that is evidence:

    ratio     = used / asked, over the whole order
    proposed  = written x the ratios of all orders, each weighing as much as it asked

What is written once may serve several looks: a recipe's line goes for every variant that leaves
it alone. So the orders of all those looks tell of it.

A correction is proposed only where at least two orders are off the same way, and more of them
than the other way, or where one is off by more than a quarter; and only where a whole stem or a
whole minute comes of it (house rules). The studio decides; nothing is changed here.

An order counts a stem for all its pieces together, so where other looks take the same stem each
gets the order's ratio, and is told with which others it was shared. The same goes for time.
A stem of which none went in had another standing in for it: no evidence about its count. Spare
isn't asked for: it is there to be left over.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from corymb.trade.counts import half_up

FAR_OFF = Fraction(1, 4)
"""One order is enough from here on. House value, no source."""
AGREEING = 2
"""So many orders off the same way are enough. House value, no source."""


@dataclass(frozen=True)
class MadeLine:
    """Pieces of one look in an order: the stems and minutes that its recipe asks for all."""

    look: str
    pieces: int
    stems: Mapping[str, int]
    minutes: int = 0


@dataclass(frozen=True)
class MadeOrder:
    """An order that has been made: what it asked, what went in, and how long it took."""

    id: str
    lines: Sequence[MadeLine]
    used: Mapping[str, int] = field(default_factory=dict)
    minutes: int | None = None


@dataclass(frozen=True)
class Written:
    """A count of a stem, or the minutes for one piece, as written, and the looks that go by it."""

    looks: tuple[str, ...]
    stem: str | None
    """None where it is the time."""
    number: int


@dataclass(frozen=True)
class Evidence:
    """What one order tells of a count or a time."""

    order: str
    pieces: int
    own: int
    """Asked for these looks alone."""
    asked: int
    """Asked for the whole order, where `used` was counted."""
    used: int
    shared_with: tuple[str, ...] = ()
    """Other looks of the order that take of it too."""

    @property
    def ratio(self) -> Fraction:
        """How many times as much went in as was asked."""
        return Fraction(self.used, self.asked)


@dataclass(frozen=True)
class Correction:
    """A count or a time that a recipe should look at again, and why."""

    written: Written
    proposed: int
    evidence: tuple[Evidence, ...]

    @property
    def ratio(self) -> Fraction:
        """How many times as much as was asked, over all the evidence."""
        return together(self.evidence)


def together(evidence: Sequence[Evidence]) -> Fraction:
    """The ratios of several orders in one, each weighing what it asked for these looks."""
    own = sum(one.own for one in evidence)
    return sum((one.own * one.ratio for one in evidence), Fraction(0)) / own


def is_enough(evidence: Sequence[Evidence]) -> bool:
    """Whether the evidence speaks for a correction, by the house rules above."""
    if any(abs(one.ratio - 1) > FAR_OFF for one in evidence):
        return True
    more = sum(one.ratio > 1 for one in evidence)
    fewer = sum(one.ratio < 1 for one in evidence)
    most = max(more, fewer)
    goes_up = together(evidence) > 1 if evidence else False
    return most >= AGREEING and more != fewer and goes_up == (more > fewer)


def corrections(orders: Sequence[MadeOrder], written: Iterable[Written]) -> tuple[Correction, ...]:
    """Each count and time that the orders speak against, in the order they are written."""
    found = (_correction(now, tuple(_evidence(orders, now))) for now in written)
    return tuple(one for one in found if one is not None)


def _correction(written: Written, evidence: tuple[Evidence, ...]) -> Correction | None:
    if not is_enough(evidence):
        return None
    proposed = max(half_up(written.number * together(evidence)), 1)
    return Correction(written, proposed, evidence) if proposed != written.number else None


def _evidence(orders: Sequence[MadeOrder], written: Written) -> Iterator[Evidence]:
    """What each order tells of it; nothing from those that don't take of it, or don't say."""
    for order in orders:
        used = order.minutes if written.stem is None else order.used.get(written.stem)
        asked = [(line, _asked(line, written.stem)) for line in order.lines]
        own = [(line, ask) for line, ask in asked if ask and line.look in written.looks]
        if used and own:
            others = (line.look for line, ask in asked if ask and line.look not in written.looks)
            yield Evidence(
                order.id,
                sum(line.pieces for line, _ in own),
                sum(ask for _, ask in own),
                sum(ask for _, ask in asked),
                used,
                tuple(dict.fromkeys(others)),
            )


def _asked(line: MadeLine, stem: str | None) -> int:
    return line.minutes if stem is None else line.stems.get(stem, 0)
