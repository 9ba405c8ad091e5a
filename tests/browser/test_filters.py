"""Does the sentence of choices narrow a list down, and can a narrowed list be sent?"""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect

from tests.browser.conftest import Visit
from tests.browser.kinds import Kind, kinds


def entries(page: Page) -> list[dict[str, str]]:
    """The data of the entries that can be seen, as the page's own lists hold them."""
    return page.evaluate(
        """[...document.querySelectorAll("li[data-month]")]
             .filter((entry) => entry.checkVisibility()).map((entry) => ({...entry.dataset}))"""
    )


@pytest.mark.parametrize("kind", kinds("arrangements", "flowers"), ids=str)
@pytest.mark.parametrize("choice", ["month", "colour"])
def test_a_choice_leaves_exactly_the_entries_that_fit(
    kind: Kind, choice: str, visit: Visit
) -> None:
    page = visit(kind)
    every = entries(page)
    select = page.locator(f"select[name={choice}]")
    value = select.locator("option").nth(5).get_attribute("value")
    select.select_option(value)
    fitting = [entry for entry in every if value in entry[choice].split("|")]
    assert 0 < len(fitting) < len(every)
    assert entries(page) == fitting
    expect(page.locator("[data-filter-count]")).to_have_text(f"{len(fitting)} of {len(every)} fit.")


def test_two_choices_must_both_fit(visit: Visit) -> None:
    page = visit(kinds("arrangements", audience="clients")[0])
    page.get_by_label("Style", exact=True).select_option("posy")
    page.get_by_label("Month").select_option("May")
    left = entries(page)
    assert left
    assert all(one["style"] == "posy" and "May" in one["month"].split("|") for one in left)
    assert page.locator("[data-filter-part]:visible").count() == 1  # no heading stays alone


def test_the_address_carries_the_choices_and_reloading_keeps_them(visit: Visit) -> None:
    page = visit(kinds("arrangements", audience="clients")[0])
    page.get_by_label("Month").select_option("May")
    page.get_by_label("Width").select_option("narrow")
    assert page.url.endswith("arrangements.html?month=May&width=narrow")
    left = entries(page)
    page.reload()
    expect(page.get_by_label("Month")).to_have_value("May")
    expect(page.get_by_label("Width")).to_have_value("narrow")
    assert entries(page) == left


def test_showing_all_again_clears_the_choices_and_the_address(visit: Visit) -> None:
    page = visit(kinds("arrangements", audience="clients")[0])
    every = entries(page)
    clear = page.get_by_role("button", name="Show all arrangements")
    expect(clear).to_be_hidden()
    page.get_by_label("Style", exact=True).select_option("crown")
    clear.click()
    expect(clear).to_be_hidden()
    expect(page.get_by_label("Style", exact=True)).to_be_focused()
    assert entries(page) == every
    assert page.url.endswith("arrangements.html")


def test_choices_that_nothing_fits_are_answered_with_a_sentence(visit: Visit) -> None:
    page = visit(kinds("arrangements", audience="clients")[0])
    page.get_by_label("Style", exact=True).select_option("buttonhole")
    page.get_by_label("Width").select_option("wide")
    expect(page.get_by_text("Nothing fits. Try another choice.")).to_be_visible()
    assert not entries(page)


def test_an_unknown_choice_in_the_address_is_left_aside(
    visit: Visit, demo_addresses: dict[str, str]
) -> None:
    page = visit()
    page.goto(demo_addresses["clients"] + "arrangements.html?month=Smarch&nonsense=1")
    expect(page.get_by_label("Month")).to_have_value("")
    assert entries(page)


def test_a_price_leaves_what_begins_at_no_more(visit: Visit) -> None:
    page = visit(kinds("arrangements", audience="clients")[0])
    every = entries(page)
    page.get_by_label("Price").select_option(label="up to €60")
    fitting = [entry for entry in every if entry["price"] and float(entry["price"]) <= 60]
    assert 0 < len(fitting) < len(every)
    assert entries(page) == fitting
    assert page.url.endswith("arrangements.html?price=60")
