"""What did orders really take, and which recipes should say something else?

After an order the studio may write what went in (`used`, by stem) and how long it took
(`minutes`). Beside what the recipes asked for the same pieces, that is evidence:

    ratio     = used / asked, over the whole order
    proposed  = written x the ratios of all orders, each weighing as much as it asked for the look

A correction is proposed only where at least two orders are off the same way, and more of them
than the other way, or where one is off by more than a quarter; and only where a whole stem or a
whole minute comes of it (house rules). The studio decides; nothing is changed here.

An order counts a stem for all its pieces together, so where several looks take the same stem
each gets the order's ratio, and is told with which others it was shared. The same goes for time.
A stem of which none went in had another standing in for it: no evidence about its count. Spare
isn't asked for: it is there to be left over.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
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
    """What a look says now: its stems in the regular size, and the minutes for one."""

    stems: Mapping[str, int]
    minutes: int


@dataclass(frozen=True)
class Evidence:
    """What one order tells of a look's stem, or of its time."""

    order: str
    pieces: int
    own: int
    """Asked for this look alone."""
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

    look: str
    stem: str | None
    """None where it is the time."""
    written: int
    proposed: int
    evidence: tuple[Evidence, ...]

    @property
    def ratio(self) -> Fraction:
        """How many times as much as was asked, over all the evidence."""
        return together(self.evidence)


def together(evidence: Sequence[Evidence]) -> Fraction:
    """The ratios of several orders in one, each weighing what it asked for the look."""
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


def corrections(
    orders: Sequence[MadeOrder], written: Mapping[str, Written]
) -> tuple[Correction, ...]:
    """Each count and time that the orders speak against, look by look, times after counts."""
    found = []
    for look, now in written.items():
        for stem, count in now.stems.items():
            found.append(_correction(look, stem, count, _of_stem(orders, look, stem)))
        found.append(_correction(look, None, now.minutes, _of_time(orders, look)))
    return tuple(one for one in found if one is not None)


def _correction(
    look: str, stem: str | None, written: int, evidence: tuple[Evidence, ...]
) -> Correction | None:
    if not is_enough(evidence):
        return None
    proposed = max(half_up(written * together(evidence)), 1)
    return Correction(look, stem, written, proposed, evidence) if proposed != written else None


def _of_stem(orders: Sequence[MadeOrder], look: str, stem: str) -> tuple[Evidence, ...]:
    told = (
        _evidence(order, look, [line.stems.get(stem, 0) for line in order.lines], order.used[stem])
        for order in orders
        if order.used.get(stem)
    )
    return tuple(one for one in told if one is not None)


def _of_time(orders: Sequence[MadeOrder], look: str) -> tuple[Evidence, ...]:
    told = (
        _evidence(order, look, [line.minutes for line in order.lines], order.minutes)
        for order in orders
        if order.minutes
    )
    return tuple(one for one in told if one is not None)


def _evidence(order: MadeOrder, look: str, asked: list[int], used: int) -> Evidence | None:
    """What the order tells of `look`, given what each of its lines asked; None where nothing."""
    lines = [(line, ask) for line, ask in zip(order.lines, asked, strict=True) if ask]
    own = [(line, ask) for line, ask in lines if line.look == look]
    if not own:
        return None
    others = dict.fromkeys(line.look for line, _ in lines if line.look != look)
    return Evidence(
        order.id,
        sum(line.pieces for line, _ in own),
        sum(ask for _, ask in own),
        sum(ask for _, ask in lines),
        used,
        tuple(others),
    )
