"""Busy weeks of an invented garden, as like a real one as can be without naming a flower.

Stems of four uses have a colour and a size. Recipes take some of each use, orders take recipes,
and stems of the same use and of nearly the same colour stand in for each other, fewer of them
where their heads are larger.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from math import dist
from random import Random

from corymb.trade.cut import CutProblem, Standing, StandInOption, Wanted

ROLES = {"focal": (1, 5), "line": (2, 5), "filler": (3, 9), "foliage": (3, 12)}
FARTHEST = 20.0


@dataclass(frozen=True)
class Stem:
    """A stem that grows in the invented garden."""

    name: str
    use: str
    colour: tuple[float, float, float]
    area: float

    @property
    def essential(self) -> bool:
        """Half of the focal stems are what a recipe is about, and nothing stands in for them."""
        return self.use == "focal" and self.area > 1


@dataclass(frozen=True)
class Line:
    """So many pieces of a recipe, which is so many of each stem."""

    order: str
    quantity: int
    recipe: tuple[tuple[Stem, int], ...]


def busy_week(
    seed: int, lines: int = 60, stems: int = 150, covered: str = "0.67", buyable: float = 0.6
) -> CutProblem:
    """Order lines from some twenty recipes; the walk covers a share of what they want."""
    random = Random(seed)
    garden = [_stem(random, number) for number in range(stems)]
    recipes = [_recipe(random, garden) for _ in range(lines // 3)]
    taken = [
        Line(f"order-{number // 3:02}/{number}", _quantity(random), random.choice(recipes))
        for number in range(lines)
    ]
    wanted = [each for line in taken for each in _wanted(line)]
    options = [each for line in taken for each in _options(line, garden)]
    asked = Counter[str]()
    for each in wanted:
        asked[each.stem] += each.count + each.spare
    walk = [_walked(random, stem.name, asked[stem.name], covered, buyable) for stem in garden]
    return CutProblem(walk, wanted, options)


def _stem(random: Random, number: int) -> Stem:
    use = list(ROLES)[number % len(ROLES)]
    green = use == "foliage"
    spread = 12 if green else 35
    colour = (random.gauss(55, 18), random.gauss(0, spread), random.gauss(20, spread))
    return Stem(f"{use}-{number:03}", use, colour, random.lognormvariate(0, 0.35))


def _quantity(random: Random) -> int:
    return random.choice([1, 1, 1, 2, 4, 6, 8, 12, 12, 20])


def _recipe(random: Random, garden: Sequence[Stem]) -> tuple[tuple[Stem, int], ...]:
    chosen: list[tuple[Stem, int]] = []
    for use, (least, most) in ROLES.items():
        of_use = [stem for stem in garden if stem.use == use]
        some = random.sample(of_use, random.randint(1, 2))
        chosen += [(stem, random.randint(least, most)) for stem in some]
    return tuple(chosen)


def _wanted(line: Line) -> Iterator[Wanted]:
    for stem, each in line.recipe:
        count = each * line.quantity
        key = f"{line.order}/{stem.name}"
        yield Wanted(key, line.order, stem.name, count, -(-count // 10), stem.essential)


def _options(line: Line, garden: Sequence[Stem]) -> Iterator[StandInOption]:
    replaceable = [(stem, each) for stem, each in line.recipe if not stem.essential]
    for out, each in replaceable:
        for stem in garden:
            drift = 0.7 * dist(out.colour, stem.colour)
            if stem.use == out.use and stem != out and drift <= FARTHEST:
                in_ = max(1, round(each * out.area / stem.area))
                yield StandInOption(f"{line.order}/{out.name}", stem.name, each, in_, drift)


def _walked(random: Random, stem: str, asked: int, covered: str, buyable: float) -> Standing:
    may_cut = (asked or 30) * float(covered) * random.uniform(0.3, 1.7)
    return Standing(
        stem=stem,
        standing=round(may_cut / 0.75),
        step=random.choice([50, 25, 25, 10, 10, 5, 1]),
        keep=Decimal("0.25"),
        grown=Decimal(random.randint(5, 60)) / 100,
        bought=Decimal(random.randint(30, 220)) / 100 if random.random() < buyable else None,
        may_break_step=random.random() < 0.3,
    )
