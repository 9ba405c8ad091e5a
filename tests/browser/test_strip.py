"""Can a week as pictured be told from one with a variant, with swaps or none, without colour?"""

from __future__ import annotations

from io import BytesIO
from itertools import combinations
from math import dist

import pytest
from PIL import Image
from playwright.sync_api import Browser, Page

from corymb.views.pieces import Audience

ALL_FOUR = "arrangements/beekeepers-jug.html"  # a year that has all four
STATES = ("pictured", "variant", "swaps", "none")
PHONE = {"width": 360, "height": 800}
APART = 40  # of 255 greys, halves of a cell taken together

# Where the first run of each state stands in the strip, and the gaps at its ends left out.
RUNS = """(states) => states.map((state) => {
  const cell = document.querySelector(`.season-weeks .is-${state}`);
  const strip = document.querySelector(".season-weeks").getBoundingClientRect();
  const box = (cell.matches("path") ? cell : cell.querySelector("path")).getBoundingClientRect();
  return [box.left - strip.left, box.right - strip.left];
})"""


def greys(page: Page) -> dict[str, tuple[float, float]]:
    """How light the upper and the lower half of a cell of each state are."""
    shot = page.locator(".season-weeks").screenshot()
    strip = Image.open(BytesIO(shot)).convert("L")
    scale = strip.width / page.evaluate("document.querySelector('.season-weeks').clientWidth")
    halves = (0, strip.height // 2), (strip.height // 2, strip.height)
    found = {}
    for state, (left, right) in zip(STATES, page.evaluate(RUNS, list(STATES)), strict=True):
        columns = round(left * scale) + 1, round(right * scale) - 1
        parts = [strip.crop((columns[0], top, columns[1], low)) for top, low in halves]
        upper, lower = (sum(part.tobytes()) / (part.width * part.height) for part in parts)
        found[state] = (upper, lower)
    return found


@pytest.mark.parametrize(
    "options",
    [{}, {"color_scheme": "dark"}, {"forced_colors": "active"}],
    ids=["light", "dark", "forced"],
)
def test_the_four_states_of_a_week_differ_in_grey_on_a_phone(
    options: dict[str, str], browser: Browser, demo_addresses: dict[Audience, str]
) -> None:
    context = browser.new_context(viewport=PHONE, device_scale_factor=2, **options)
    page = context.new_page()
    page.goto(demo_addresses["clients"] + ALL_FOUR)
    found = greys(page)
    context.close()
    alike = [
        (one, other)
        for one, other in combinations(STATES, 2)
        if dist(found[one], found[other]) < APART
    ]
    assert not alike, found
