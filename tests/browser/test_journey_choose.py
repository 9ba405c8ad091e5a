"""A client on a phone narrows the list down, keeps two arrangements and sends both in one message.

With the keyboard alone, as someone would who can't use a pointer.
"""

from __future__ import annotations

from urllib.parse import parse_qs, unquote, urlsplit

import pytest
from playwright.sync_api import Page, expect

from corymb.views.pieces import Audience
from tests.browser.conftest import DESK, PHONE, Visit, scroll_through
from tests.browser.kinds import kinds
from tests.browser.test_axe import AXE, RUN
from tests.browser.test_seen import SEEN
from tests.browser.watching import Watch

LIST = kinds("arrangements", audience="clients")[0]
SHEET = "navigator.share = async (what) => { window.sent = what; };"


def tab_to(page: Page, selector: str) -> None:
    """On to the next part of this kind, by the keyboard."""
    for _ in range(120):
        page.keyboard.press("Tab")
        if page.evaluate("(which) => document.activeElement.matches(which)", selector):
            return
    raise AssertionError(f"the keyboard doesn't reach {selector}")


def mail_of(page: Page) -> tuple[str, list[str]]:
    href = page.get_by_role("link", name="Send by mail").get_attribute("href") or ""
    asked = parse_qs(urlsplit(href).query)
    assert unquote(urlsplit(href).path) == "flowers@teaselandrook.example"
    return asked["subject"][0], asked["body"][0].split("\r\n")


@pytest.mark.parametrize("size", [PHONE, DESK], ids=["phone", "desk"])
def test_two_are_kept_out_of_a_narrowed_list_and_sent_as_one_message(
    size: dict[str, int], visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit(None, reduced_motion="reduce", bypass_csp=True, viewport=size)
    page.add_init_script(SHEET)
    watch = Watch(page, demo_addresses["clients"])
    page.goto(demo_addresses["clients"] + LIST.path)

    tab_to(page, "select[name=style]")
    page.keyboard.type("Pos")
    tab_to(page, "select[name=price]")
    page.keyboard.type("up to €3")
    assert page.url.endswith("arrangements.html?style=posy&price=30")
    left = page.locator("li.card:visible")
    assert left.count() >= 2
    expect(page.locator("[data-filter-count]")).to_contain_text(f"{left.count()} of ")

    names = []
    for _ in range(2):
        tab_to(page, ".card .keep")
        page.keyboard.press("Space")
        kept = page.locator(":focus")
        expect(kept).to_have_attribute("aria-pressed", "true")
        names.append(kept.inner_text().removeprefix("Kept").strip())
    page.reload()
    expect(page.locator(".keep[aria-pressed=true]")).to_have_count(2)
    tab_to(page, ".keep-tab")
    expect(page.locator(":focus")).to_have_text("Kept 2")
    page.keyboard.press("Enter")

    page.wait_for_url("**/kept.html#*")
    expect(page.locator(".kept-list .card")).to_have_count(2)
    tab_to(page, "[data-kept-day]")
    page.locator(":focus").fill("2026-10-03")
    tab_to(page, "[data-kept-words]")
    page.keyboard.type("Forty guests & a dog.")
    subject, lines = mail_of(page)
    assert subject == "What we like, for Saturday 3 October 2026"
    assert [line for line in lines if line.startswith("- ")] == [f"- {name}" for name in names]
    assert "Forty guests & a dog." in lines
    pages = [line.strip() for line in lines if line.startswith("  http")]
    assert len(pages) == 2
    assert any(line.endswith(page.url) for line in lines), "the list's own address goes along"
    tab_to(page, "[data-kept-share]")
    page.keyboard.press("Enter")
    assert all(name in page.evaluate("window.sent.text") for name in names)

    scroll_through(page)
    SEEN.mkdir(exist_ok=True)
    file = SEEN / f"journey-choose-{size['width']}.jpg"
    page.screenshot(path=file, full_page=True, type="jpeg", quality=80)
    page.evaluate(AXE)
    for scheme in ("light", "dark"):
        page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
        assert page.evaluate(RUN) == []
    assert page.evaluate("document.documentElement.scrollWidth") == size["width"]
    assert watch.faults == []


def test_a_list_opens_on_another_phone_and_leaves_what_that_one_kept(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit(None, reduced_motion="reduce")
    page.goto(demo_addresses["clients"] + "arrangements/plum-button.html")
    page.get_by_role("button", name="Keep Plum button").click()
    page.goto(demo_addresses["clients"] + "kept.html#hedgerow-jar--later,gone-by,may-cup")
    names = page.locator(".kept-list .card-name")
    expect(names).to_have_text(["Hedgerow jar, Later in the year", "May cup"])
    expect(page.get_by_text("This list came with the address.")).to_be_visible()
    expect(page.get_by_text("No longer made here: ‘gone by’.")).to_be_visible()
    page.get_by_role("button", name="Leave it at that").click()
    page.get_by_role("button", name="Leave out May cup").click()
    assert page.url.endswith("kept.html#hedgerow-jar--later")
    page.get_by_role("button", name="Keep all of these").click()
    expect(names).to_have_text(["Plum button", "Hedgerow jar, Later in the year"])

    page.get_by_role("button", name="Leave out Hedgerow jar").click()
    page.get_by_role("button", name="Leave out Plum button").click()
    expect(page.get_by_text("Nothing yet.")).to_be_visible()
    assert page.url.endswith("kept.html")


def test_without_script_there_is_no_mark_and_the_page_says_why(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit(None, java_script_enabled=False)
    page.goto(demo_addresses["clients"] + LIST.path)
    expect(page.locator(".keep").first).to_be_hidden()
    expect(page.locator(".keep-tab")).to_be_hidden()
    page.goto(demo_addresses["clients"] + "kept.html")
    expect(page.get_by_text("where scripts may run")).to_be_visible()
    expect(page.get_by_role("button")).to_have_count(0)
