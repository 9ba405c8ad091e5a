"""How long do so many pieces take, when each goes a little faster than the one before?

T. P. Wright, Factors affecting the cost of airplanes, J. Aeronautical Sciences 3 (1936)
122-128. A rate of 80 % means that at every doubling of the number made the time falls to 80 %.
There are two readings of it, and they differ: in the unit form (J. R. Crawford's, 1944, from
memory) it is the time of the piece that falls so, in Wright's own cumulative average form it is
the average of all pieces made so far. Corymb plans with the unit form, the longer of the two.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, log2

LEARNT_BY = 1000
"""Whoever has made so many of one day's pieces gets no faster. House value, no source."""

PRACTISED_RATE = 0.95
"""Whoever has made it often learns little more. House value, no source."""


@dataclass(frozen=True)
class Hand:
    """One who makes: the first piece takes `first` times the recipe's time, then it goes faster."""

    name: str
    first: float
    rate: float

    def piece_minutes(self, recipe_minutes: float, number: int) -> float:
        """How long this hand's piece of that number takes; never less than the practised hand's."""
        number = min(number, LEARNT_BY)
        own = unit(recipe_minutes * self.first, number, self.rate)
        return max(own, unit(recipe_minutes, number, PRACTISED_RATE))

    def minutes_for(self, recipe_minutes: float, pieces: int, made: int = 0) -> float:
        """How long this hand takes for so many pieces more, after those `made` already."""
        learning = range(made + 1, min(made + pieces, LEARNT_BY) + 1)
        learnt = pieces - len(learning)
        return sum(self.piece_minutes(recipe_minutes, number) for number in learning) + (
            learnt * self.piece_minutes(recipe_minutes, LEARNT_BY) if learnt else 0.0
        )


EXPERIENCED = Hand("experienced", 1.0, PRACTISED_RATE)
"""The recipe's time is the first piece of the day by a practised hand. House value, no source."""

HELPER = Hand("helper", 1.5, 0.85)
"""Slower at first, and catching up. House value, no source."""


def exponent(rate: float) -> float:
    """The power of the number made by which time falls. Raises ValueError outside 0 < rate <= 1."""
    if not 0 < rate <= 1:
        raise ValueError("a learning rate is more than 0 and no more than 1, like 0.85")
    return log2(rate)


def unit(first: float, number: int, rate: float) -> float:
    """Unit form: the time of one piece, when the first takes `first`. Raises ValueError below 1."""
    if number < 1:
        raise ValueError("pieces are numbered from 1")
    return first * float(number ** exponent(rate))


def making_minutes(recipe_minutes: float, pieces: int, hand: Hand = EXPERIENCED) -> int:
    """Whole minutes that one hand needs for all pieces, rounded up. Raises ValueError below 0."""
    if pieces < 0:
        raise ValueError("no fewer than 0 pieces can be made")
    return whole_minutes(hand.minutes_for(recipe_minutes, pieces))


def whole_minutes(minutes: float) -> int:
    """The next whole minute; a float's dust starts no new one."""
    return ceil(round(minutes, 6))
