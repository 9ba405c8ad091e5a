"""What has to be decided before the first stem is cut: what stands, what is wanted, what may do.

Plain values only. Stems are told by their id, counts are whole stems, and money is the
studio's own. The order in which things are listed changes nothing.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from math import floor, isfinite


@dataclass(frozen=True)
class Standing:
    """A stem on the walk: how many stand, and how they may be cut."""

    stem: str
    standing: int
    step: int
    """Stems are cut so many at a time: 50 by habit, 25 of delicate heads, 1 of the precious."""
    keep: Decimal | Fraction
    """The share that is left standing, for seed and for bees."""
    grown: Decimal
    """What a stem costs to grow."""
    bought: Decimal | None = None
    """What a stem costs to buy in; None where it can't be bought."""
    may_break_step: bool = False
    """Any number may be cut, as if the step were 1. Else what doesn't fill a step is left."""

    def __post_init__(self) -> None:
        if self.standing < 0:
            raise ValueError(f"{self.stem}: {self.standing} can't stand; write 0 or more")
        if self.step < 1:
            raise ValueError(f"{self.stem}: a cutting step is 1 or more, not {self.step}")
        if not 0 <= self.keep <= 1:
            raise ValueError(f"{self.stem}: a share to keep lies from 0 to 1, not {self.keep}")
        if self.grown < 0 or (self.bought is not None and self.bought < 0):
            raise ValueError(f"{self.stem}: a stem can't cost less than nothing")

    @property
    def may_cut(self) -> int:
        """The most that may be cut if steps didn't matter."""
        return floor(self.standing * (1 - Fraction(self.keep)))

    @property
    def by(self) -> int:
        """The number of stems the cut is a multiple of."""
        return 1 if self.may_break_step else self.step

    @property
    def most_steps(self) -> int:
        """How many times `by` may be cut."""
        return self.may_cut // self.by


@dataclass(frozen=True)
class Wanted:
    """One stem of one line of an order."""

    key: str
    """Names it among all wanted: `barn-supper/1/dahlia-shell`."""
    order: str
    stem: str
    count: int
    spare: int = 0
    """How many more are wished, for breakage. Missing ones are no shortage, and nothing is bought
    or swapped for them: they are cut beyond all that is wanted of the stem, or there are none.
    """
    essential: bool = False

    def __post_init__(self) -> None:
        if self.count < 0 or self.spare < 0:
            raise ValueError(f"{self.key}: nobody wants fewer stems than none")


@dataclass(frozen=True)
class StandInOption:
    """A stem that may stand in for one that is wanted: `in_` of it do for `out` of the wanted.

    It goes in by such blocks. Where a part of a block is wanted, each stem of the wanted takes
    the whole number next above its share: at 5 for 3, 2 do for 1.
    """

    wanted: str
    """The key of what is wanted."""
    stem: str
    out: int
    in_: int
    drift: float
    """How far its colour is from the wanted one's (CIEDE2000)."""
    why: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if self.out < 1 or self.in_ < 1:
            raise ValueError(f"{self.wanted}: {self.in_} {self.stem} can't do for {self.out}")
        if not isfinite(self.drift) or self.drift < 0:
            raise ValueError(f"{self.wanted}: no colour is {self.drift} away from {self.stem}")

    def stems_for(self, count: int) -> int:
        """Whole stems of it that do for `count` of the wanted: blocks, and the rest singly."""
        blocks, rest = divmod(count, self.out)
        return blocks * self.in_ + rest * -(-self.in_ // self.out)


@dataclass(frozen=True)
class Weights:
    """What is worth how much to the studio, where stems are not short. House values.

    Money counts as it is; the others are in money. As they stand, buying in is avoided before
    colour drifts, and a drift in colour before a stem is wasted.
    """

    money: Decimal = Decimal(1)
    drift: Decimal = Decimal("0.02")
    """For each wanted stem met by a stand-in, and each unit of CIEDE2000."""
    waste: Decimal = Decimal("0.002")
    """For each stem cut that no order takes, not even as spare."""
    essential: int = 10
    """How many other stems are missed as badly as one that is essential."""

    def __post_init__(self) -> None:
        if min(self.money, self.drift, self.waste) < 0 or self.essential < 1:
            raise ValueError("a weight is not below 0, and an essential stem counts for 1 or more")


@dataclass(frozen=True)
class Settings:
    """How the studio decides, and how long it may take."""

    weights: Weights = field(default_factory=Weights)
    buy_in: bool = True
    """Whether stems may be bought; if not, the gaps still tell their price."""
    close: Decimal = Decimal("0.0005")
    """Plans that differ by this share of the weighed sum are taken as equally good. It never
    lets a stem be short, nor a spare one be missed, that needn't be. 0 asks for the very best.
    """
    seconds: float = 20.0
    """When the time is up the best plan found so far is given, with its gap."""
    seed: int = 0


@dataclass(frozen=True)
class CutProblem:
    """All that stands, all that is wanted and all that may stand in, sorted by name."""

    standing: Sequence[Standing]
    wanted: Sequence[Wanted]
    options: Sequence[StandInOption] = ()

    def __post_init__(self) -> None:
        wanted = {each.key: each for each in self.wanted}
        _once("stands", (each.stem for each in self.standing))
        _once("is wanted", (each.key for each in self.wanted))
        _once("may stand in", (f"{each.stem} for {each.wanted}" for each in self.options))
        for option in self.options:
            if option.wanted not in wanted:
                raise ValueError(
                    f"{option.stem} may stand in for {option.wanted}, which nobody wants"
                )
            if option.stem == wanted[option.wanted].stem:
                raise ValueError(f"{option.wanted}: {option.stem} can't stand in for itself")
        self._sort()

    def _sort(self) -> None:
        by_drift = sorted(self.options, key=lambda o: (o.wanted, o.drift, o.stem))
        object.__setattr__(self, "standing", tuple(sorted(self.standing, key=lambda s: s.stem)))
        object.__setattr__(self, "wanted", tuple(sorted(self.wanted, key=lambda w: w.key)))
        object.__setattr__(self, "options", tuple(by_drift))

    def stands(self) -> dict[str, Standing]:
        """Every stem that is spoken of; one that isn't on the walk has none standing."""
        walked = {each.stem: each for each in self.standing}
        named = {each.stem for each in self.wanted} | {each.stem for each in self.options}
        absent = [Standing(stem, 0, 1, Decimal(0), Decimal(0)) for stem in named - set(walked)]
        everything = [*self.standing, *absent]
        return {each.stem: each for each in sorted(everything, key=lambda each: each.stem)}


def _once(what: str, names: Iterable[str]) -> None:
    seen: set[str] = set()
    for name in names:
        if name in seen:
            raise ValueError(f"{name} {what} twice; add the counts up")
        seen.add(name)
