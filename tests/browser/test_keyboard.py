"""Can everything be reached and used with the keyboard alone, and is it seen where one is?"""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect

from tests.browser.conftest import DESK, PHONE, Visit
from tests.browser.kinds import Kind, kinds

# Numbers everything that can be reached, in the order of the page. Of a group of radio buttons only
# the chosen one is a stop; the others are reached from it with the arrows.
NUMBER = """() => {
  const all = "a[href], button, input, select, textarea, summary, [tabindex='0']";
  const stops = [...document.querySelectorAll(all)].filter((part) =>
    part.checkVisibility({visibilityProperty: true}) && part.tabIndex >= 0 && !part.disabled
      && !(part.type === "radio" && !part.checked));
  stops.forEach((part, place) => { part.dataset.stop = place; });
  return stops.map((part) => `${part.tagName} ${part.textContent.trim().slice(0, 40)}`);
}"""

# The stop that has the focus, whether it is marked, and whether it is on the screen. A radio button
# is itself unseen; its label is marked in its place.
HERE = """() => {
  const here = document.activeElement;
  if (here.dataset.stop === undefined) return null;
  const seen = here.type === "radio" ? here.labels[0] : here;
  const style = getComputedStyle(seen);
  const box = seen.getBoundingClientRect();
  return {
    stop: Number(here.dataset.stop),
    marked: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2,
    onScreen: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth,
  };
}"""

PLACES = [
    *kinds("home", "recipe", "made-piece", "arrangements", "flower", "prose", audience="clients"),
    *kinds("recipe", "search", "lost", "lesson", audience="staff"),
]


@pytest.mark.parametrize("kind", PLACES, ids=str)
def test_tabbing_visits_everything_in_order_and_shows_where_it_is(kind: Kind, visit: Visit) -> None:
    size = PHONE if kind.audience == "clients" else DESK
    page = visit(kind, viewport=size, reduced_motion="reduce")
    page.wait_for_load_state("networkidle")  # what is found by a search is there then
    names = page.evaluate(NUMBER)
    assert len(names) > 8
    for place, name in enumerate(names):
        page.keyboard.press("Tab")
        here = page.evaluate(HERE)
        assert here == {"stop": place, "marked": True, "onScreen": True}, f"at {place}: {name}"
    page.keyboard.press("Tab")
    assert page.evaluate(HERE) in (None, {"stop": 0, "marked": True, "onScreen": True}), "a trap"


def test_the_skip_link_goes_past_the_menu(visit: Visit) -> None:
    page = visit(kinds("recipe", audience="clients")[0], viewport=DESK)
    page.keyboard.press("Tab")
    skip = page.get_by_role("link", name="Skip to the content")
    expect(skip).to_be_focused()
    expect(skip).to_be_in_viewport()
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.closest('main') !== null")


def test_the_phones_menu_opens_and_closes_with_keys(visit: Visit) -> None:
    page = visit(kinds("recipe", audience="clients")[0])
    menu = page.locator("details.top-fold")
    first = menu.get_by_role("link", name="Arrangements")
    menu.locator("summary").focus()
    page.keyboard.press("Enter")
    expect(first).to_be_visible()
    page.keyboard.press("Tab")
    expect(first).to_be_focused()
    page.keyboard.press("Escape")
    expect(first).to_be_hidden()
    expect(menu.locator("summary")).to_be_focused()

    page.keyboard.press("Space")
    expect(first).to_be_visible()
    for _ in menu.get_by_role("link").all():
        page.keyboard.press("Tab")
    expect(first).to_be_visible()
    page.keyboard.press("Tab")
    expect(first).to_be_hidden()  # it makes way when one has gone past it


def test_a_variant_is_chosen_with_keys_and_keeps_the_focus(visit: Visit) -> None:
    page = visit(kinds("recipe", audience="clients")[0], viewport=DESK)
    links = page.locator(".variant-switch a")
    name = links.nth(2).inner_text()
    links.nth(1).focus()
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", level=1)).to_contain_text(name)
    expect(page.locator(".variant-switch").get_by_role("link", name=name)).to_be_focused()


def test_photo_and_drawing_change_places_with_arrows(visit: Visit) -> None:
    page = visit(kinds("recipe", audience="clients")[0])
    page.get_by_role("radio", name="Photo").focus()
    page.keyboard.press("ArrowRight")
    expect(page.get_by_role("radio", name="Drawn")).to_be_checked()
    expect(page.locator(".show-drawn img")).to_be_visible()


def test_a_list_is_narrowed_down_with_keys(visit: Visit) -> None:
    page: Page = visit(kinds("arrangements", audience="clients")[0])
    page.get_by_label("Month").focus()
    page.keyboard.type("Sep")
    expect(page.get_by_label("Month")).to_have_value("September")
    expect(page.locator("[data-filter-count]")).to_contain_text("fit.")
    every = page.locator(".card").count()
    assert page.locator(".card:visible").count() < every
    clear = page.get_by_role("button", name="Show all arrangements")
    clear.focus()
    page.keyboard.press("Enter")
    expect(page.locator(".card:visible")).to_have_count(every)


def test_the_number_of_pieces_is_set_with_keys(visit: Visit) -> None:
    page = visit(kinds("recipe", audience="clients")[0])
    cell = page.locator(".sizes [data-one]").first
    one = int(cell.inner_text())
    page.get_by_label("How many pieces?").focus()
    page.keyboard.press("ArrowUp")
    expect(cell).to_have_text(str(2 * one))
