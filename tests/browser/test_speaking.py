"""Do the scripts say what the site's own module of words tells them, in the right form?"""

from __future__ import annotations

from playwright.sync_api import expect

from corymb.views.pieces import Audience
from tests.browser.conftest import Visit
from tests.browser.kinds import kinds

POLISH = """
export const LANGUAGE = "pl-PL";
export const MESSAGES = {
  "Nothing found.": "Nic nie znaleziono.",
  "{number} found.": {one: "{number} wynik.", few: "{number} wyniki.", many: "{number} wyników."},
};
"""
FORMS = """async (script) => {
  const { _, plural } = await import(script);
  const one = "{number} found.";
  return [
    ...[1, 3, 5, 22].map((number) => plural(one, one, number, { number })),
    _("Week {week}, {days}.", { week: 38, days: "{week} $&" }),
  ];
}"""


def test_scripts_speak_the_sites_language_and_english_where_it_lacks_a_sentence(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    root = demo_addresses["clients"]
    page = visit()
    page.route(
        "**/js/messages.js",
        lambda route: route.fulfill(body=POLISH, content_type="text/javascript"),
    )
    page.goto(root + kinds("search", audience="clients")[0].path.replace("dahlia", "qqqqqq"))
    expect(page.locator("[data-search-count]")).to_have_text("Nic nie znaleziono.")
    said = page.evaluate(FORMS, root + "assets/theme/js/words.js")
    assert said == ["1 wynik.", "3 wyniki.", "5 wyników.", "22 wyniki.", "Week 38, {week} $&."]
