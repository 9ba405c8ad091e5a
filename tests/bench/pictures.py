"""How long do the pictures of a studio's looks take? Run as `python -m tests.bench.pictures`.

24 recipes with their variants, each at every size and in three lights (noon, and the colours of it
in the two others), must take less than 10 s of one core.
"""

from __future__ import annotations

import sys
from dataclasses import replace
from time import process_time

from corymb.picture import Arrangement, draw
from corymb.site.drawn.lit import colours_in_light
from corymb.views.compose.light_switch import OTHERS
from tests.picture.demo import arrangement, demo, demo_looks

RECIPES, MOST_SECONDS = 24, 10.0


def sized(whole: Arrangement, times: float) -> Arrangement:
    """The look at a size: so many times its stems, and as much larger as they then are."""
    wider = times ** (1 / 3)
    stems = tuple(replace(one, count=max(1, round(one.count * times))) for one in whole.stems)
    return replace(
        whole,
        stems=stems,
        across_cm=whole.across_cm * wider,
        high_cm=whole.high_cm * wider,
    )


def pictures() -> list[Arrangement]:
    """Every look of the first recipes, in its own size and each other."""
    recipes = list(demo().recipes.values())[:RECIPES]
    found = []
    for look_id, look in demo_looks().items():
        for recipe in recipes:
            if recipe.id == look.recipe:
                sizes = {1.0, *(float(size.factor) for size in recipe.sizes.values())}
                found += [sized(arrangement(look_id), times) for times in sorted(sizes)]
    return found


def main() -> int:
    """Prints one line; fails where it takes too long."""
    asked = pictures()
    start = process_time()
    drawn = [draw(one) for one in asked]
    lit = [colours_in_light(svg, OTHERS) for svg in drawn]
    took = process_time() - start
    written = sum(len(svg) for svg in (*drawn, *lit)) / 1e6
    lights = len(asked) * (1 + len(OTHERS))
    sys.stdout.write(
        f"{RECIPES} recipes, {len(asked)} pictures, {lights} with their lights, "
        f"{written:.1f} MB: {took:.2f} s of a core\n"
    )
    return int(took > MOST_SECONDS)


if __name__ == "__main__":
    sys.exit(main())
