"""Does the table of sizes multiply by the number of pieces asked for?"""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect

from tests.browser.conftest import Visit
from tests.browser.kinds import Kind, kinds


def numbers(page: Page) -> list[int]:
    """Every number of the table, row by row."""
    return [int(text) for text in page.locator(".sizes [data-one]").all_inner_texts()]


@pytest.mark.parametrize("kind", kinds("recipe", "variant"), ids=str)
def test_every_count_is_multiplied_and_comes_back(kind: Kind, visit: Visit) -> None:
    page = visit(kind)
    one = numbers(page)
    assert len(one) > 10
    ask = page.get_by_label("How many pieces?")
    ask.fill("12")
    assert numbers(page) == [12 * number for number in one]
    expect(page.locator("[data-quantity-words]")).to_have_text("Stems for 12")
    ask.fill("1")
    assert numbers(page) == one
    expect(page.locator("[data-quantity-words]")).to_have_text("Stems for one")


@pytest.mark.parametrize("typed", ["", "0", "-3", "2.5", "1000", "1e9"])
def test_what_is_no_number_of_pieces_changes_nothing(typed: str, visit: Visit) -> None:
    page = visit(kinds("recipe", audience="clients")[0])
    one = numbers(page)
    ask = page.get_by_label("How many pieces?")
    ask.fill(typed)
    assert numbers(page) == one
    ask.blur()
    expect(ask).to_have_value("1")
    assert numbers(page) == one
