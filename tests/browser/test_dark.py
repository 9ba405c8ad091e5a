"""Is dark mode dark, and can everything in it be read?"""

from __future__ import annotations

import pytest
from coloraide import Color
from playwright.sync_api import Page

from tests.browser.conftest import Visit
from tests.browser.kinds import KINDS, Kind, kinds

READABLE = 4.5  # WCAG 2.2, success criterion 1.4.3 (AA)

COLOURS = """() => {
  const style = getComputedStyle(document.body);
  const of = (name) => style.getPropertyValue(name).trim();
  return {body: style.backgroundColor, ink: style.color, tint: of("--tint"), soft: of("--soft")};
}"""

# Every tint that an arrangement has given, put on the page one after the other.
TINTS = """() => {
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
  const names = new Set(rules.map((rule) => /data-tint="?([0-9a-f]+)/.exec(rule.cssText)?.[1]));
  return [...names].filter(Boolean).map((name) => {
    document.body.dataset.tint = name;
    return getComputedStyle(document.body).getPropertyValue("--tint").trim();
  });
}"""


def contrast(one: str, other: str) -> float:
    return Color(one).contrast(other, method="wcag21")


@pytest.mark.parametrize("kind", KINDS, ids=str)
def test_a_dark_page_is_dark_and_its_words_are_readable(kind: Kind, visit: Visit) -> None:
    said = visit(kind, color_scheme="dark").evaluate(COLOURS)
    assert Color(said["body"]).luminance() < 0.03
    for name in ("ink", "tint", "soft"):
        assert contrast(said[name], said["body"]) >= READABLE, name


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_tint_of_every_arrangement_is_readable(scheme: str, visit: Visit) -> None:
    page: Page = visit(kinds("recipe", audience="clients")[0], color_scheme=scheme)
    paper = page.evaluate(COLOURS)["body"]
    tints = page.evaluate(TINTS)
    assert len(set(tints)) > 20
    assert not [tint for tint in tints if contrast(tint, paper) < READABLE]
