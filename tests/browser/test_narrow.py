"""Does everything fit a small phone? Every page of both sites, 360 pixels wide."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser

from corymb.site.settings import AUDIENCES
from corymb.views.pieces import Audience
from tests.browser.frames import pages_in, read_pages

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
