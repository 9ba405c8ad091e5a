"""Does axe-core find a barrier on any kind of page, on phone and desk, in light and in dark?"""

from __future__ import annotations

from importlib.resources import files

import pytest

from tests.browser.conftest import DESK, PHONE, Visit
from tests.browser.kinds import KINDS, Kind

AXE = (files("axe_playwright_python") / "axe.min.js").read_text()

# What axe counts as a fault, each with the first places where it stands. The size of targets
# (WCAG 2.2, 2.5.8) has to be asked for; selectors of what was found, and style sheets read ahead
# for a rule that isn't among those that run, are not made, for they take a fifth of the time.
RUN = """async () => {
  const rules = {"target-size": {enabled: true}};
  const asked = {resultTypes: ["violations"], rules, selectors: false, preload: false};
  const found = await axe.run(document, asked);
  return found.violations.map((rule) => `${rule.id}: ${rule.help} (${rule.nodes.length}) ` +
    rule.nodes.slice(0, 3).map((node) => node.html.slice(0, 160)).join(" | "));
}"""

# Two of the four looks for each site: the kinds are the same, so that all four are looked at.
LOOKS = {
    "clients": ((PHONE, "light"), (DESK, "dark")),
    "staff": ((PHONE, "dark"), (DESK, "light")),
}


@pytest.mark.parametrize("kind", KINDS, ids=str)
def test_axe_finds_nothing_to_mend(kind: Kind, visit: Visit) -> None:
    page = visit(kind, reduced_motion="reduce", bypass_csp=True)
    page.evaluate(AXE)
    found = []
    for size, scheme in LOOKS[kind.audience]:
        page.set_viewport_size(size)
        page.emulate_media(color_scheme=scheme)
        found += [f"{size['width']} px, {scheme}: {fault}" for fault in page.evaluate(RUN)]
    assert not found, "\n".join([f"{kind.path}:", *found])
