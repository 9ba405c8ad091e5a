"""Does everything fit a small phone? Every page of both sites, at 360 pixels."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser

from corymb.site.settings import AUDIENCES
from corymb.views.pieces import Audience

WIDTH = 360

# Which parts stand out at the right, the innermost ones, so that the culprit is named.
WIDE_PARTS = """() => {
  const root = document.documentElement;
  if (root.scrollWidth <= root.clientWidth) return [];
  const out = [...document.body.querySelectorAll("*")].filter(
    (part) => part.getBoundingClientRect().right > root.clientWidth + 0.5
      && !part.closest(".scroll, .unseen"));
  return out.filter((part) => !out.some((other) => other !== part && part.contains(other)))
    .slice(0, 3)
    .map((part) => `${part.tagName} ${part.className} ${part.textContent.slice(0, 30)}`);
}"""


@pytest.mark.parametrize("audience", AUDIENCES)
def test_no_page_scrolls_sideways_on_a_small_phone(
    audience: Audience,
    browser: Browser,
    demo_sites: dict[Audience, Path],
    demo_addresses: dict[Audience, str],
) -> None:
    folder = demo_sites[audience]
    paths = sorted(str(file.relative_to(folder)) for file in folder.rglob("*.html"))
    assert len(paths) > 100
    page = browser.new_page(viewport={"width": WIDTH, "height": 740})
    offenders = []
    for path in paths:
        page.goto(demo_addresses[audience] + path, wait_until="domcontentloaded")
        if wide := page.evaluate(WIDE_PARTS):
            offenders.append(f"{path}: {'; '.join(wide)}")
    page.close()
    assert not offenders, "\n".join([f"{len(offenders)} pages scroll sideways:", *offenders])
