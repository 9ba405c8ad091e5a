"""The pictures tell the truth: each stem takes its share, and no two recipes look the same."""

from __future__ import annotations

from itertools import combinations
from typing import Any

import numpy as np
import pytest
from playwright.sync_api import Browser, Page

from corymb.trade.colour.areas import line_shares
from tests.picture.demo import demo, demo_looks, picture
from tests.picture.flat import shares_seen, small_render

RECIPES = sorted(look for look in demo_looks() if "--" not in look)

AWAY = 0.15
"""So much of the heads' area may be another stem's than is worked out from sizes and counts."""

LARGE = "heads as wide as half the piece: the one in front hides what a sprig should show"
FERNS = "nine ferns of half a metre have no room before the wall that the hydrangeas don't take"

FURTHER: dict[str, tuple[float, str]] = {
    "hearth-stook": (0.18, FERNS),
    "plum-button": (0.20, LARGE),
    "rosebud-and-rosemary": (0.22, LARGE),
}
"""Those that are further away: how far, and why."""

CONFUSABLE = 0.035
"""Mean difference in OKLab of two small renders, dot by dot, below which two could be mistaken."""


@pytest.fixture(scope="module")
def page(browser: Browser) -> Any:
    page = browser.new_page()
    yield page
    page.close()


@pytest.fixture(scope="module")
def away(page: Page) -> dict[str, float]:
    """For each recipe, the part of the heads' area that is another stem's than worked out."""
    lines = {recipe: demo_looks()[recipe].lines for recipe in RECIPES}
    seen = shares_seen(page, {r: (picture(r), len(lines[r])) for r in RECIPES})
    found = {}
    for recipe in RECIPES:
        wanted = line_shares(lines[recipe], demo().stems)
        pairs = zip(seen[recipe], wanted, strict=True)
        found[recipe] = sum(abs(one - other) for one, other in pairs) / 2
    return found


@pytest.mark.parametrize("recipe", RECIPES)
def test_each_stem_takes_its_share_of_the_picture(recipe: str, away: dict[str, float]) -> None:
    allowed, _ = FURTHER.get(recipe, (AWAY, ""))
    assert away[recipe] <= allowed


def test_only_what_is_further_away_is_listed_so(away: dict[str, float]) -> None:
    """A figure that has become too generous is brought down."""
    for recipe, (figure, why) in FURTHER.items():
        assert why and max(AWAY, figure - 0.03) <= away[recipe], recipe


def oklab(rgb: Any) -> Any:
    """B. Ottosson 2020, from sRGB of 0 to 255."""
    part = np.asarray(rgb, float) / 255
    linear = np.where(part > 0.04045, ((part + 0.055) / 1.055) ** 2.4, part / 12.92)
    cones = linear @ np.array(
        [[0.4122214708, 0.2119034982, 0.0883024619],
         [0.5363325363, 0.6806995451, 0.2817188376],
         [0.0514459929, 0.1073969566, 0.6299787005]]
    )  # fmt: skip
    return np.cbrt(cones) @ np.array(
        [[0.2104542553, 1.9779984951, 0.0259040371],
         [0.7936177850, -2.4285922050, 0.7827717662],
         [-0.0040720468, 0.4505937099, -0.8086757660]]
    )  # fmt: skip


def test_no_two_recipes_can_be_mistaken_for_one_another(page: Page) -> None:
    small = {recipe: oklab(small_render(page, picture(recipe))) for recipe in RECIPES}
    for one, other in combinations(RECIPES, 2):
        apart = np.linalg.norm(small[one] - small[other], axis=1).mean()
        assert apart >= CONFUSABLE, (one, other, apart)
