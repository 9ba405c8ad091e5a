"""Does everything fit a small phone? Every page of both sites, 360 pixels wide."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser

from corymb.site.settings import AUDIENCES
from corymb.views.pieces import Audience
from tests.browser.conftest import Visit
from tests.browser.frames import pages_in, read_pages
from tests.browser.kinds import kinds

HOME = kinds("home", audience="clients")[0]

# Which parts stand out at the right, the innermost ones, so that the culprit is named.
WIDE_PARTS = """(page) => {
  const root = page.documentElement;
  if (root.scrollWidth <= root.clientWidth) return [];
  const out = [...page.body.querySelectorAll("*")].filter(
    (part) => part.getBoundingClientRect().right > root.clientWidth + 0.5
      && !part.closest(".scroll, .unseen"));
  return out.filter((part) => !out.some((other) => other !== part && part.contains(other)))
    .slice(0, 3)
    .map((part) => `${part.tagName} ${part.className} ${part.textContent.slice(0, 30)}`);
}"""


@pytest.mark.parametrize("audience", AUDIENCES)
def test_no_page_scrolls_sideways_on_a_small_phone(
    audience: Audience,
    plain_browser: Browser,
    demo_sites: dict[Audience, Path],
    demo_addresses: dict[Audience, str],
) -> None:
    paths = pages_in(demo_sites[audience])
    assert len(paths) > 100
    wide = read_pages(plain_browser, demo_addresses[audience], paths, WIDE_PARTS, script=True)
    offenders = [f"{path}: {'; '.join(parts)}" for path, parts in wide.items() if parts]
    assert not offenders, "\n".join([f"{len(offenders)} pages scroll sideways:", *offenders])


@pytest.mark.parametrize("selector", [".lead-said h2 a", ".card-name a", ".style h3 a"])
@pytest.mark.parametrize("width", [360, 1440])
def test_a_name_of_one_long_word_keeps_the_front_page_as_wide_as_the_screen(
    selector: str, width: int, visit: Visit
) -> None:
    page = visit(HOME, viewport={"width": width, "height": 900})
    page.locator(selector).first.evaluate(
        "(name) => { name.textContent = 'Rosengarten'.repeat(9); }"
    )
    assert page.evaluate("document.documentElement.scrollWidth") == width


@pytest.mark.parametrize("width", [360, 390, 430, 600, 960, 1440])
def test_the_longest_word_of_common_names_has_room_on_the_front_page(
    width: int, visit: Visit
) -> None:
    page = visit(HOME, viewport={"width": width, "height": 900})
    name = page.locator(".head-name").first
    name.evaluate("(name) => { name.textContent = 'Chrysanthemum,'; name.style.hyphens = 'none'; }")
    assert name.evaluate(
        "(name) => name.clientHeight < 2 * parseFloat(getComputedStyle(name).lineHeight)"
    )
