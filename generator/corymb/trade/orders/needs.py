"""What does each line of an order ask of the cut, and what may stand in for it?

Spare is a share of each stem of the whole order, in whole stems, shared out to the lines that
have it in them (largest remainder): ten lines of one rose each take one rose more, not ten.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from math import ceil, gcd
from typing import NamedTuple

from corymb.trade.apportion import apportion
from corymb.trade.changes import LookLine
from corymb.trade.cut import StandInOption, Wanted
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.walked import Walked
from corymb.trade.season.makeable import Makeable
from corymb.trade.swaps.reasons import reasons
from corymb.trade.swaps.standing_in import StandIn


class Key(NamedTuple):
    """What names one wanted stem among all of a day."""

    order: str
    line: int
    """The line of the order, from 1."""
    place: int
    """The line of its look, from 1."""
    stem: str

    def __str__(self) -> str:
        """`barn-supper/1/2/dahlia-shell`."""
        return "/".join(map(str, self))

    @classmethod
    def of(cls, text: str) -> Key:
        """Reads what `str` writes."""
        order, line, place, stem = text.rsplit("/", 3)
        return cls(order, int(line), int(place), stem)


@dataclass(frozen=True)
class Need:
    """One line of a look, as often as an order wants it."""

    due: Due
    line: DueLine
    place: int
    """Of the line in its look, from 0."""
    count: int
    """Whole stems of all pieces."""
    spare: int = 0

    @property
    def look_line(self) -> LookLine:
        """The line as the look has it."""
        return self.line.piece.look.lines[self.place]

    @property
    def key(self) -> str:
        """How the cut names it."""
        return str(Key(self.due.id, self.line.number, self.place + 1, self.look_line.stem))

    def wanted(self) -> Wanted:
        """With its spare, in whole stems."""
        of = self.look_line
        return Wanted(self.key, self.due.id, of.stem, self.count, self.spare, of.essential)


def spare_by_stem(wanted: Mapping[str, int], share: Fraction) -> dict[str, int]:
    """The spare of an order that wants so many of each stem; a part of a stem counts whole."""
    return {stem: ceil(count * share) for stem, count in wanted.items()}


def needs_in(due: Due, line: DueLine) -> list[Need]:
    """What a line asks for, without spare."""
    counts = enumerate(line.counts)
    return [Need(due, line, place, count * line.quantity) for place, count in counts]


def needs_of(due: Due) -> Iterator[Need]:
    """All that is cut for an order, with its spare: nothing for what is from the mix."""
    by_stem: dict[str, list[Need]] = {}
    for line in due.lines:
        if not line.piece.from_the_mix:
            for need in needs_in(due, line):
                by_stem.setdefault(need.look_line.stem, []).append(need)
    wanted = {stem: sum(need.count for need in needs) for stem, needs in by_stem.items()}
    for stem, spare in spare_by_stem(wanted, due.spare).items():
        needs = by_stem[stem]
        for need, own in zip(needs, apportion(spare, [n.count for n in needs]), strict=True):
            yield Need(due, need.line, need.place, need.count, own)


def options_for(need: Need, walked: Walked, makeable: Makeable) -> Iterator[StandInOption]:
    """What may stand in for it, the likest first; nothing for what is essential to its look."""
    piece, line = need.line.piece, need.look_line
    if not line.essential:
        style = walked.studio.house.styles[piece.recipe.style]
        for each in makeable.stand_ins.beside(line, piece.look.lines, style):
            yield _option(need, each, walked)


def standing_options(
    need: Need, day: date, walked: Walked, makeable: Makeable
) -> Iterable[StandInOption]:
    """Those of them that stand on a day."""
    every = options_for(need, walked, makeable)
    return (option for option in every if walked.may_cut(option.stem, day))


def _option(need: Need, each: StandIn, walked: Walked) -> StandInOption:
    common = gcd(each.out_count, each.in_count)
    return StandInOption(
        need.key,
        each.in_,
        each.out_count // common,
        each.in_count // common,
        each.colour_distance,
        reasons(each, walked.studio.stems),
    )
