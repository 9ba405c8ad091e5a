"""Who makes what, and how many people does it take to be done in time?

Piece by piece, the recipe with the longest time first: each piece goes to whoever is done with
it soonest, and each learns by what they have made themselves. A rule of thumb that spreads work
well (list scheduling: R. L. Graham, Bounds on multiprocessing timing anomalies, SIAM J. Appl.
Math. 17 (1969) 416-429, from memory), not a proof that it can't be done faster.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import partial

from corymb.studio.values.work import MOST_PEOPLE
from corymb.trade.hours.learning import EXPERIENCED, HELPER, LEARNT_BY, Hand, whole_minutes

MOST_TURNS = 500
"""However many pieces there are, they are handed out in no more turns than this."""


@dataclass(frozen=True)
class Job:
    """So many pieces of one look, and the recipe's time for one."""

    name: str
    recipe_minutes: float
    pieces: int


@dataclass(frozen=True)
class Share:
    """What one person makes, and how long it takes them."""

    hand: Hand
    pieces: tuple[tuple[str, int], ...]
    minutes: int


@dataclass
class _Bench:
    hand: Hand
    minutes: float = 0.0
    made: dict[str, int] = field(default_factory=dict)

    def after(self, job: Job, pieces: int) -> float:
        """When this person would be done with so many more of it."""
        made = self.made.get(job.name, 0)
        return self.minutes + self.hand.minutes_for(job.recipe_minutes, pieces, made)

    def make(self, job: Job, pieces: int) -> None:
        self.minutes = self.after(job, pieces)
        self.made[job.name] = self.made.get(job.name, 0) + pieces


def shared_out(jobs: Sequence[Job], crew: Sequence[Hand]) -> tuple[Share, ...]:
    """What each of the crew makes, in the crew's order. Raises ValueError: nobody, or below 0."""
    if not crew:
        raise ValueError("nobody is there to make it")
    if any(job.pieces < 0 or job.recipe_minutes < 0 for job in jobs):
        raise ValueError("pieces and minutes are 0 or more")
    benches = [_Bench(hand) for hand in crew]
    for job in sorted(jobs, key=lambda job: (-job.recipe_minutes, job.name)):
        for pieces in _handfuls(job.pieces):
            min(benches, key=partial(_Bench.after, job=job, pieces=pieces)).make(job, pieces)
    return tuple(
        Share(bench.hand, tuple(bench.made.items()), whole_minutes(bench.minutes))
        for bench in benches
    )


def _handfuls(pieces: int) -> Iterator[int]:
    """One by one; of more than MOST_TURNS, so many at a time that it takes no more turns."""
    at_once = -(-pieces // MOST_TURNS) or 1
    for taken in range(0, pieces, at_once):
        yield min(at_once, pieces - taken)


def minutes_at_the_bench(jobs: Sequence[Job], crew: Sequence[Hand]) -> int:
    """How long it takes until the last of the crew is done. Raises as `shared_out` does."""
    return max(share.minutes for share in shared_out(jobs, crew))


def people_needed(
    jobs: Sequence[Job],
    minutes_each: float,
    first: Hand = EXPERIENCED,
    others: Hand = HELPER,
) -> int | None:
    """The fewest people that are done in time: one like `first`, the rest like `others`.

    Nothing when more people don't help: a single piece takes longer, or it is over MOST_PEOPLE.
    """
    least = _least_minutes(jobs, (first, others))
    for people in range(1, MOST_PEOPLE + 1):
        crew = [first, *[others] * (people - 1)]
        if least <= people * minutes_each and minutes_at_the_bench(jobs, crew) <= minutes_each:
            return people
    return None


def _least_minutes(jobs: Sequence[Job], hands: Sequence[Hand]) -> float:
    """The work of all together, if every piece took as little as it ever does."""
    return sum(
        job.pieces * min(hand.piece_minutes(job.recipe_minutes, LEARNT_BY) for hand in hands)
        for job in jobs
    )
