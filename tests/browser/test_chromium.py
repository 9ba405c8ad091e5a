"""Without a browser nobody has looked at the pages, and that has to be noticed."""

from tests.browser.chromium import MISSING, find_chromium


def test_a_chromium_is_there_to_look_at_the_pages() -> None:
    assert find_chromium(), MISSING
