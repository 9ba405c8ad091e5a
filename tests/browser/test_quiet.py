"""Do the pages keep to themselves? No error, no failed request, no word to another host."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page

from corymb.views.pieces import Audience
from tests.browser.conftest import Visit, scroll_through
from tests.browser.kinds import KINDS, Kind
from tests.browser.shelf import new_page
from tests.browser.watching import Watch


@pytest.fixture(scope="module")
def heard(browser: Browser) -> Iterator[tuple[Page, Watch]]:
    """A page that goes from kind to kind, and what is heard of it."""
    page = new_page(browser, {})
    yield page, Watch(page)
    page.context.close()


@pytest.mark.parametrize("kind", KINDS, ids=str)
def test_a_page_makes_no_errors_and_asks_no_other_host(
    kind: Kind, heard: tuple[Page, Watch], demo_addresses: dict[Audience, str]
) -> None:
    page, watch = heard
    page.goto("about:blank")  # what the page before was still asking for is broken off here
    watch.begin(demo_addresses[kind.audience])
    page.goto(demo_addresses[kind.audience] + kind.path, wait_until="load")
    scroll_through(page)
    assert not watch.faults, "\n".join([f"{kind.path}:", *watch.faults])


def test_a_script_slipped_into_a_page_is_forbidden(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit()
    watch = Watch(page, demo_addresses["clients"])
    page.goto(demo_addresses["clients"] + "index.html")
    page.evaluate(
        """document.body.insertAdjacentHTML("beforeend",
        '<img src="https://elsewhere.example/a.png" onerror="document.title = `slipped in`">')"""
    )
    page.wait_for_timeout(100)
    assert page.title() != "slipped in"
    assert any("forbidden by policy: img-src" in fault for fault in watch.faults)
