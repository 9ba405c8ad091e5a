"""Does the page stand still while its photos and type arrive?"""

from __future__ import annotations

import pytest

from corymb.views.pieces import Audience
from tests.browser.conftest import Visit, scroll_through
from tests.browser.kinds import Kind, kinds

MOST_SHIFT = 0.02  # a fifth of what web.dev's Core Web Vitals call good (0.1)

SHIFT = """new Promise((done) => {
  const told = [];
  const observer = new PerformanceObserver((list) => told.push(...list.getEntries()));
  observer.observe({type: "layout-shift", buffered: true});
  setTimeout(() => {
    told.push(...observer.takeRecords());
    done(told.map((shift) => [shift.value, shift.sources.map(
      ({node}) => node ? `${node.nodeName} ${node.className ?? ""}` : "?").join(", ")]));
  }, 200);
})"""


# On a slow network the clients' other kinds are looked at in `test_weight`.
PLACES = (*kinds("in-season", "your-date"), *kinds("home", "recipe", audience="staff"))


@pytest.mark.parametrize("kind", PLACES, ids=str)
def test_nothing_jumps_while_a_page_arrives(
    kind: Kind, visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit()  # a new one, where photos and type have yet to come
    page.goto(demo_addresses[kind.audience] + kind.path)
    scroll_through(page)
    shifts = page.evaluate(SHIFT)
    assert sum(value for value, _ in shifts) < MOST_SHIFT, shifts
