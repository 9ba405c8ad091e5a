"""Pictures of the main kinds of pages, to be looked at: they are put into tests/seen/."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.browser.conftest import DESK, PHONE, Visit, scroll_through
from tests.browser.kinds import KINDS, Kind, kinds

# Every kind once, and again where the staff's page holds more.
SHOWN = (
    *(kind for kind in KINDS if kind.audience == "clients"),
    *kinds("home", "recipe", "flower", "made-piece", audience="staff"),
    *kinds("lessons", "lesson", "house-rules"),
)
SEEN = Path(__file__).parent.parent / "seen"


@pytest.mark.parametrize("kind", SHOWN, ids=str)
def test_a_page_can_be_looked_at_on_phone_and_desk(kind: Kind, visit: Visit) -> None:
    SEEN.mkdir(exist_ok=True)
    page = visit(kind, reduced_motion="reduce", color_scheme="light")
    for size in (PHONE, DESK):
        page.set_viewport_size(size)
        scroll_through(page)
        picture = page.screenshot(
            path=SEEN / f"{kind}-{size['width']}.jpg", full_page=True, type="jpeg", quality=80
        )
        assert len(picture) > 10_000, "the picture is all but empty"
