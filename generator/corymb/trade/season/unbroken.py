"""Where one flush goes on in the next without a day between, does the one end there?

It doesn't: the two are one, from the first day of the one to the last of the other, and nothing
strays at their join. That holds round the year, in whatever order a season is written. A flush
that comes in some years alone is never one with another that comes in more: in the other years it
is missing.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import groupby

from corymb.studio.values.season import DAYS_IN_YEAR
from corymb.trade.season.circle import ahead
from corymb.trade.season.flush import Flush

JOINED = 1.5
"""At most so many days from the last of a flush to the first of the next, where none lies between:
one, and half a day more since both are rounded to whole days."""


def unbroken(flushes: Iterable[Flush]) -> tuple[Flush, ...]:
    """The flushes, those that go on in each other as one."""
    in_order = sorted(flushes, key=lambda flush: (flush.comes, flush.first))
    runs = groupby(in_order, key=lambda flush: flush.comes)
    return tuple(flush for _, run in runs for flush in _joined(tuple(run)))


def _joined(flushes: Sequence[Flush]) -> list[Flush]:
    """By their first day; the last of the year may go on in the first."""
    joined: list[Flush] = []
    for flush in flushes:
        if joined and _goes_on(joined[-1], flush):
            flush = _one(joined.pop(), flush)
        joined.append(flush)
    if len(joined) > 1 and _goes_on(joined[-1], joined[0]):
        joined[0] = _one(joined.pop(), joined[0])
    return joined


def _goes_on(flush: Flush, in_: Flush) -> bool:
    """Whether the other begins before this one is over, or on the day after; never all year."""
    begins_within = ahead(flush.first, in_.first) <= flush.span.length + JOINED
    return begins_within and _reach(flush, in_) < DAYS_IN_YEAR - JOINED


def _reach(flush: Flush, in_: Flush) -> float:
    """Days from the first day of the one to the last of the other."""
    return ahead(flush.first, in_.first) + in_.span.length


def _one(flush: Flush, in_: Flush) -> Flush:
    if _reach(flush, in_) < flush.span.length:
        return flush
    return replace(flush, last=in_.last, last_spread=in_.last_spread)
