"""Does 'Send the link' send, and what does it do where nothing can be sent?"""

from __future__ import annotations

from typing import Any

import pytest
from playwright.sync_api import Page, expect

from corymb.views.pieces import Audience
from tests.browser.conftest import Visit
from tests.browser.kinds import kinds

RECIPE = kinds("recipe", audience="clients")[0]
PUBLIC = f"https://teaselandrook.example/{RECIPE.path}"

SHEET = "navigator.share = async (what) => { window.sent = what; };"
NO_SHEET = "delete Navigator.prototype.share;"
REFUSING = "navigator.clipboard.writeText = async () => { throw new Error('not allowed'); };"


@pytest.fixture
def sender(visit: Visit, demo_addresses: dict[Audience, str]) -> Any:
    """Opens a recipe's page in a browser of these abilities, and sends its link."""

    def send(*abilities: str) -> Page:
        page = visit(permissions=["clipboard-read", "clipboard-write"])
        page.add_init_script("\n".join(abilities))
        page.goto(demo_addresses["clients"] + RECIPE.path)
        page.get_by_role("link", name="Send the link").click()
        return page

    return send


def test_the_phones_own_sheet_gets_title_and_public_address(sender: Any) -> None:
    page = sender(SHEET)
    assert page.evaluate("window.sent") == {"title": page.title(), "url": PUBLIC}


def test_without_a_sheet_the_address_is_copied(sender: Any) -> None:
    page = sender(NO_SHEET)
    expect(page.get_by_text("Link copied.")).to_be_visible()
    assert page.evaluate("navigator.clipboard.readText()") == PUBLIC


def test_where_copying_is_refused_the_address_is_shown(sender: Any) -> None:
    page = sender(NO_SHEET, REFUSING)
    expect(page.get_by_text(PUBLIC)).to_be_visible()


def test_without_script_the_link_writes_a_mail(visit: Visit) -> None:
    page = visit(RECIPE, java_script_enabled=False)
    href = page.get_by_role("link", name="Send the link").get_attribute("href")
    assert href and href.startswith("mailto:?subject=Hedgerow")
    assert "teaselandrook.example" in href
