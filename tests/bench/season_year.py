"""How long does a big studio's year take to work out? 500 recipes, 400 stems, 53 weeks.

Run `python -m tests.bench.season_year`. It prints times; it asserts none.
"""

from __future__ import annotations

import random
import time
from collections import Counter

from corymb.studio.models import Stem, Style
from corymb.studio.words import FORMS, LONG_FORMS, ROLES, USES
from corymb.trade.changes import LookLine
from corymb.trade.looks import Look
from corymb.trade.season.beds import Beds
from corymb.trade.season.makeable import Makeable
from corymb.trade.swaps.limits import SwapLimits
from tests.trade.making import stem

RECIPES, STEMS, LINES, TURNS = 500, 400, 8, 5
FAMILIES = ((236, 222, 200), (220, 150, 150), (110, 40, 70), (110, 130, 90), (215, 160, 60))
MONTHS = ("March", "April", "May", "June", "July", "August", "September", "October", "November")


def a_colour(dice: random.Random) -> str:
    """Pale, pink, plum, green or gold, as most flowers and leaves are."""
    red, green, blue = dice.choice(FAMILIES)
    parts = (max(0, min(255, part + dice.randrange(-24, 25))) for part in (red, green, blue))
    return "".join(f"{part:02x}" for part in parts)


def made_stem(number: int, dice: random.Random) -> Stem:
    """A stem of any colour, size and season."""
    form = dice.choice(FORMS)
    first = dice.randrange(len(MONTHS) - 1)
    last = min(first + dice.randrange(1, 5), len(MONTHS) - 1)
    long = {"head_length": f"{dice.randrange(8, 40)} cm"} if form in LONG_FORMS else {}
    keys = {
        "use": dice.choice(USES),
        "form": form,
        "colours": [f"some {a_colour(dice)} 80 %", f"other {a_colour(dice)} 20 %"],
        "head": f"{dice.randrange(2, 12)} cm",
        "in_season": f"early {MONTHS[first]} - mid {MONTHS[last]}",
        "length": f"{dice.randrange(25, 50)}-{dice.randrange(50, 120)} cm",
        **long,
    }
    return stem(f"stem-{number}", **keys)


def made_style() -> Style:
    """A style that lets nearly everything in."""
    keys = {
        "name": "Piece",
        "plural": "Pieces",
        "about": "Any piece.",
        "place": "standing",
        "stem length": "20-90 cm",
        "heaviest stem": "60 g",
    }
    return Style.model_validate(keys).with_id("piece")


def made_look(number: int, stems: dict[str, Stem], dice: random.Random) -> Look:
    """A recipe of eight stems that stand on one day together."""
    day = dice.randrange(100, 300)
    standing = [each for each, stem in stems.items() if stem.in_season.has(day)]
    lines = tuple(
        LookLine(each, dice.randrange(1, 12), dice.choice(ROLES), None, place == 0, "")
        for place, each in enumerate(dice.sample(standing, LINES))
    )
    return Look(f"recipe-{number}", "", lines, lines)


def main() -> None:
    """Print the time of each turn."""
    dice = random.Random(7)
    stems = {each.id: each for each in (made_stem(n, dice) for n in range(STEMS))}
    looks = [made_look(n, stems, dice) for n in range(RECIPES)]
    style = made_style()
    times = []
    for _ in range(TURNS):
        start = time.perf_counter()
        year = Makeable(Beds(stems), stems, {look.recipe: style for look in looks}, SwapLimits())
        answers = [answer for look in looks for answer in year.answers(look)]
        times.append(time.perf_counter() - start)
    states = Counter(answer.state for answer in answers)
    print(
        f"{RECIPES} recipes of {LINES} stems out of {STEMS}: {len(answers)} weeks, {dict(states)}"
    )
    print("seconds a turn:", " ".join(f"{each:.2f}" for each in times))


if __name__ == "__main__":
    main()
