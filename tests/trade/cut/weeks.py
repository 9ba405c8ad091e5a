"""Weeks of an invented garden: busy ones to time, small ones to try every plan of."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from random import Random

from corymb.trade.cut import CutProblem, Standing, StandInOption, Wanted

RATIOS = [(1, 1), (1, 1), (1, 1), (1, 2), (2, 1), (3, 5), (2, 3)]


def price(random: Random, least: int, most: int) -> Decimal:
    """An amount in whole cents."""
    return Decimal(random.randint(least, most)) / 100


def busy_week(
    seed: int, lines: int = 60, stems: int = 150, covered: str = "0.67", buyable: float = 0.6
) -> CutProblem:
    """Lines of about six stems each; the walk covers a share of what they want."""
    random = Random(seed)
    names = [f"stem-{number:03}" for number in range(stems)]
    popular = random.sample(names, stems * 2 // 3)
    wanted = [
        each for line in range(lines) for each in _line(random, f"order-{line:02}", line, popular)
    ]
    standing = [_standing(random, name, wanted, Decimal(covered), buyable) for name in names]
    return CutProblem(standing, wanted, _options(random, names, wanted))


def _line(random: Random, order: str, line: int, names: Sequence[str]) -> list[Wanted]:
    quantity = random.choice([1, 1, 2, 6, 8, 12, 20])
    wanted = []
    for stem in random.sample(names, random.randint(4, 9)):
        count = quantity * random.randint(1, 7)
        key, essential = f"{order}/{line}/{stem}", random.random() < 0.2
        wanted.append(Wanted(key, order, stem, count, -(-count // 10), essential))
    return wanted


def _standing(
    random: Random, stem: str, wanted: Sequence[Wanted], covered: Decimal, buyable: float
) -> Standing:
    asked = sum(each.count + each.spare for each in wanted if each.stem == stem)
    return Standing(
        stem=stem,
        standing=round((asked or 40) * covered * Decimal(random.uniform(0.5, 1.9))),
        step=random.choice([50, 50, 25, 25, 10, 5, 1]),
        keep=Decimal("0.25"),
        grown=price(random, 5, 60),
        bought=price(random, 30, 220) if random.random() < buyable else None,
        may_break_step=random.random() < 0.2,
    )


def _options(
    random: Random, names: Sequence[str], wanted: Sequence[Wanted]
) -> list[StandInOption]:
    likely = {stem: _likely(random, stem, names) for stem in names}
    return [
        StandInOption(each.key, stem, out, in_, drift, ("nearly the same colour",))
        for each in wanted
        for stem, (out, in_), drift in likely[each.stem]
        if random.random() < 0.85  # one style or another leaves it out
    ]


def _likely(
    random: Random, stem: str, names: Sequence[str]
) -> list[tuple[str, tuple[int, int], float]]:
    others = [name for name in random.sample(names, 6) if name != stem]
    return [(name, random.choice(RATIOS), random.uniform(1, 30)) for name in others]
