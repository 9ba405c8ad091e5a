"""Does the year at a glance line up with its months, open to its stems, and lead to each month?"""

from __future__ import annotations

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import DESK, Visit
from tests.browser.kinds import Kind, kinds

YEAR = kinds("in-season", audience="clients")[0]

# How far the strips stand from the letters above them, at the left and at the right.
ASIDE = """[...document.querySelectorAll(".glance-style")].flatMap((style) => {
  const letters = style.querySelector(".season-months").getBoundingClientRect();
  return [...style.querySelectorAll(".season-glance")].filter((strip) => strip.checkVisibility())
    .map((strip) => strip.getBoundingClientRect())
    .map((strip) => [strip.left - letters.left, strip.right - letters.right])
    .map((sides) => Math.max(...sides.map(Math.abs)));
})"""


@pytest.mark.parametrize("width", [360, 390, 1440])
def test_every_strip_stands_under_the_letters_of_its_months(width: int, visit: Visit) -> None:
    page = visit(YEAR, viewport={"width": width, "height": 800})
    page.locator(".glance summary").first.click()
    aside = page.evaluate(ASIDE)
    assert len(aside) > 30
    assert max(aside) < 1
    sizes = page.locator(".glance-style .season-months").first.evaluate(
        "(row) => [...row.children].map((month) => month.scrollWidth <= month.clientWidth)"
    )
    assert sizes == [True] * 12


@pytest.mark.parametrize("script", [True, False], ids=["with-script", "without-script"])
def test_a_recipes_row_opens_to_its_stems(script: bool, visit: Visit) -> None:
    page = visit(YEAR, java_script_enabled=script)
    row = page.locator(".glance", has_text="Hedgerow jar")
    stem = row.get_by_role("link", name="Cosmos, white")
    expect(stem).to_be_hidden()
    row.locator("summary").focus()
    page.keyboard.press("Enter")
    expect(stem).to_be_visible()
    row.get_by_role("link", name="See the Hedgerow jar").click()
    expect(page.get_by_role("heading", level=1, name="Hedgerow jar")).to_be_visible()


@pytest.mark.parametrize("kind", kinds("in-season"), ids=str)
def test_the_page_opens_with_the_month_it_was_made_in(kind: Kind, visit: Visit) -> None:
    page = visit(kind, viewport=DESK)
    expect(page.get_by_role("heading", level=2, name="September")).to_be_in_viewport()
    page.get_by_role("link", name="All that September has").click()
    expect(page.locator(".month > summary", has_text="September")).to_be_in_viewport()


def test_the_months_are_folded_but_the_present_one_and_a_link_opens_another(
    visit: Visit,
) -> None:
    page = visit(YEAR)
    opened = "[...document.querySelectorAll('.month[open] h3')].map((month) => month.textContent)"
    assert page.evaluate(opened) == ["September"]
    page.get_by_role("link", name="March", exact=True).click()
    expect(page.locator(".month > summary", has_text="March")).to_be_in_viewport()
    assert page.evaluate(opened) == ["March", "September"]


def test_the_front_page_leads_to_the_year_and_to_a_day(visit: Visit) -> None:
    page = visit(kinds("home", audience="clients")[0])
    main = page.locator("main")
    expect(main.get_by_role("link", name="The year at a glance")).to_be_visible()
    main.get_by_role("link", name="Choose your date").click()
    expect(page.get_by_role("heading", level=1, name="Your date")).to_be_visible()
