"""Does the site keep still for those who have asked for it?"""

from __future__ import annotations

import pytest

from tests.browser.conftest import Visit
from tests.browser.kinds import Kind, kinds

NO_TIME = 0.01  # seconds

# Everything that would take time: transitions, animations, smooth scrolling.
MOVING = """(least) => {
  const seconds = (list) => Math.max(...list.split(",").map(parseFloat));
  return [document.documentElement, ...document.body.querySelectorAll("*")].filter((part) => {
    const style = getComputedStyle(part);
    return seconds(style.transitionDuration) > least || seconds(style.animationDuration) > least
      || style.scrollBehavior === "smooth";
  }).map((part) => `${part.tagName} ${part.className}`);
}"""

PLACES = kinds("home", "arrangements", "recipe", "flower", "search", audience="clients")


@pytest.mark.parametrize("kind", PLACES, ids=str)
def test_nothing_moves_where_less_motion_is_wanted(kind: Kind, visit: Visit) -> None:
    assert not visit(kind, reduced_motion="reduce").evaluate(MOVING, NO_TIME)


def test_where_motion_is_welcome_the_page_scrolls_smoothly(visit: Visit) -> None:
    page = visit(PLACES[0], reduced_motion="no-preference")
    assert page.evaluate(MOVING, NO_TIME) == ["HTML "]


def test_a_variant_comes_without_a_transition_where_less_motion_is_wanted(visit: Visit) -> None:
    page = visit(kinds("recipe", audience="clients")[0], reduced_motion="reduce")
    page.evaluate("document.startViewTransition = () => { document.title = 'moved'; }")
    page.locator(".variant-switch a").nth(1).click()
    page.wait_for_url("**/*--*.html")
    assert page.title() != "moved"


# Of what moves from the page before to this one: the browser's own moving pictures of parts.
GOING = """addEventListener("pagereveal", ({ viewTransition }) => viewTransition?.ready.then(() => {
  window.going = document.getAnimations().map((each) => each.effect.pseudoElement);
}));"""


def test_a_picture_goes_along_from_its_card_to_its_page(visit: Visit) -> None:
    page = visit(kinds("style", audience="clients")[0])
    page.add_init_script(GOING)
    page.locator(".card-name a").first.click()
    page.wait_for_function("window.going?.length")
    assert "::view-transition-group(picture)" in page.evaluate("window.going")
