"""Does another variant come in place, with an address of its own, and does the way back hold?"""

from __future__ import annotations

import re

from playwright.sync_api import Page, expect

from tests.browser.conftest import DESK, Visit
from tests.browser.kinds import kinds

RECIPE = kinds("recipe", audience="clients")[0]
VARIANT = kinds("variant", audience="clients")[0]


def mark(page: Page) -> None:
    """Leave a mark that is gone as soon as the page is loaded anew."""
    page.evaluate("window.sameVisit = true")


def same_visit(page: Page) -> bool:
    return bool(page.evaluate("window.sameVisit === true"))


def opened(visit: Visit) -> tuple[Page, str, str]:
    """A recipe's page, the name of its variant and that of its second link."""
    page = visit(RECIPE, viewport=DESK)
    link = page.locator(f".variant-switch a[href='{VARIANT.path.rpartition('/')[2]}']")
    mark(page)
    return page, link.inner_text(), page.locator(".lines").inner_text()


def test_a_variant_comes_in_place_and_the_back_button_returns(visit: Visit) -> None:
    page, variant, lines = opened(visit)
    page.locator(".variant-switch").get_by_role("link", name=variant).click()
    expect(page).to_have_url(re.compile(re.escape(VARIANT.path) + "$"))
    expect(page.get_by_role("heading", level=1)).to_contain_text(variant)
    assert page.locator(".lines").inner_text() != lines
    assert variant in page.title()
    assert same_visit(page)

    page.go_back()
    expect(page.get_by_role("heading", level=1)).not_to_contain_text(variant)
    assert page.url.endswith(RECIPE.path)
    assert page.locator(".lines").inner_text() == lines
    assert same_visit(page)

    page.go_forward()
    expect(page.get_by_role("heading", level=1)).to_contain_text(variant)


def test_what_is_sent_after_a_change_is_the_variant(visit: Visit) -> None:
    page, variant, _ = opened(visit)
    page.locator(".variant-switch").get_by_role("link", name=variant).click()
    expect(page.get_by_role("heading", level=1)).to_contain_text(variant)
    canonical = page.locator("link[rel=canonical]").get_attribute("href")
    assert canonical == f"https://teaselandrook.example/{VARIANT.path}"


def test_a_variant_that_came_in_place_is_the_page_that_reloading_gives(visit: Visit) -> None:
    page, variant, _ = opened(visit)
    page.locator(".variant-switch").get_by_role("link", name=variant).click()
    expect(page.get_by_role("heading", level=1)).to_contain_text(variant)
    in_place = page.locator("main").inner_text()
    page.reload()
    assert not same_visit(page)
    assert page.locator("main").inner_text() == in_place


def test_the_parts_of_a_page_work_after_a_change_of_variant(visit: Visit) -> None:
    page, variant, _ = opened(visit)
    page.locator(".variant-switch").get_by_role("link", name=variant).click()
    expect(page.get_by_role("heading", level=1)).to_contain_text(variant)
    cell = page.locator(".sizes-table tfoot td").first
    one = int(cell.inner_text())
    page.get_by_label("How many pieces?").fill("7")
    expect(cell).to_have_text(str(one * 7))


def test_a_variant_chosen_with_a_key_held_opens_beside(visit: Visit) -> None:
    page, variant, _ = opened(visit)
    with page.context.expect_page() as beside:
        page.locator(".variant-switch").get_by_role("link", name=variant).click(
            modifiers=["Control"]
        )
    expect(beside.value).to_have_url(re.compile(re.escape(VARIANT.path) + "$"))
    assert page.url.endswith(RECIPE.path)


def test_without_a_signal_the_change_is_left_to_the_browser(visit: Visit) -> None:
    page, variant, _ = opened(visit)
    page.route("**/" + VARIANT.path, lambda route: route.abort(), times=1)
    page.locator(".variant-switch").get_by_role("link", name=variant).click()
    expect(page.get_by_role("heading", level=1)).to_contain_text(variant)
    assert not same_visit(page)
