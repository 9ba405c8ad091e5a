"""Pictures of the main kinds of pages, to be looked at: they are put into tests/seen/."""

from __future__ import annotations

from pathlib import Path

import pytest
from PIL import Image

from tests.browser.conftest import DESK, PHONE, Visit, scroll_through
from tests.browser.kinds import KINDS, Kind, kinds

# Every kind once, and again where the staff's page holds more.
SHOWN = (
    *(kind for kind in KINDS if kind.audience == "clients"),
    *kinds("home", "recipe", "flower", "made-piece", audience="staff"),
    *kinds("lessons", "lesson", "house-rules"),
)
SEEN = Path(__file__).parent.parent / "seen"

UNSEEN_IMAGES = """[...document.images]
  .filter((image) => image.checkVisibility() && !(image.complete && image.naturalWidth))
  .map((image) => image.src)"""


def is_empty_below_the_head(picture: Image.Image) -> bool:
    """Whether there are no more than a hundred colours below the first screen's upper part."""
    below = picture.crop((0, 200, picture.width, picture.height)).convert("RGB")
    return below.getcolors(100) is not None  # Pillow stops to count where there are more


@pytest.mark.parametrize("kind", SHOWN, ids=str)
def test_a_page_can_be_looked_at_on_phone_and_desk(kind: Kind, visit: Visit) -> None:
    SEEN.mkdir(exist_ok=True)
    page = visit(kind, reduced_motion="reduce", color_scheme="light")
    for size in (PHONE, DESK):
        page.set_viewport_size(size)
        scroll_through(page)
        file = SEEN / f"{kind}-{size['width']}.jpg"
        page.screenshot(path=file, full_page=True, type="jpeg", quality=80)
        assert page.evaluate(UNSEEN_IMAGES) == []
        with Image.open(file) as picture:
            assert picture.width == size["width"], "the page is wider than the window"
            assert not is_empty_below_the_head(picture), "below its head the page is empty"
