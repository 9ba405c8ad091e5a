"""Can an arrangement be looked at in another light, by touch and by key, and sent so?"""

from __future__ import annotations

import re
from urllib.parse import unquote

import pytest
from playwright.sync_api import Page, expect

from corymb.trade.light.seen import INDICATIVE
from corymb.views.pieces import Audience
from tests.browser.conftest import DESK, Visit
from tests.browser.kinds import Kind, kinds
from tests.browser.test_axe import AXE, RUN
from tests.browser.watching import Watch

RECIPE = kinds("recipe", audience="clients")[0]
VARIANT = kinds("variant", audience="clients")[0]
BOTH = kinds("recipe", "variant")
PAINT = re.compile(r'(?:fill|stroke|color)="(#[0-9a-f]{6})"')
DATA = "data:image/svg+xml,"


def drawn(page: Page) -> str:
    """Where the picture that is shown comes from."""
    return str(page.locator(".showing .drawn").evaluate("(image) => image.src"))


def band(page: Page) -> list[str]:
    return [str(patch.get_attribute("fill")) for patch in page.locator(".band-colours rect").all()]


def in_candle(page: Page) -> None:
    """Wait until all of the page is."""
    expect(page.locator("[data-lights-said]")).to_have_text(
        f"As it looks by candlelight. {INDICATIVE}"
    )


@pytest.mark.parametrize("kind", BOTH, ids=str)
def test_a_touch_on_candle_repaints_the_picture_and_the_band(kind: Kind, visit: Visit) -> None:
    page = visit(kind, has_touch=True)
    by_day = band(page)
    page.get_by_text("Candle", exact=True).tap()
    in_candle(page)
    expect(page.locator(".showing .drawn")).to_be_visible()
    assert drawn(page).startswith(DATA)
    assert not set(band(page)) & set(by_day)
    assert page.locator(".showing .drawn").evaluate("(image) => image.naturalWidth") > 0


def test_every_colour_of_the_picture_is_that_of_the_light(visit: Visit) -> None:
    page = visit(RECIPE)
    table = page.request.get(page.url.rpartition("/")[0] + "/../assets/pictures/hedgerow-jar.json")
    seen = table.json()
    by_day = page.request.get(drawn(page)).text()
    for label, light in {"Low sun": "low-sun", "Candle": "candle"}.items():
        page.get_by_text(label, exact=True).click()
        expect(page).to_have_url(re.compile(rf"\?light={light}$"))
        painted = PAINT.findall(unquote(drawn(page).removeprefix(DATA)))
        assert painted == [seen[light][colour] for colour in PAINT.findall(by_day)]


def test_the_arrow_keys_go_through_the_lights_and_back_to_noon(visit: Visit) -> None:
    page = visit(RECIPE, viewport=DESK)
    first, colours = drawn(page), band(page)
    page.get_by_role("radio", name="Noon").focus()
    for light in ("low-sun", "candle"):
        page.keyboard.press("ArrowRight")
        expect(page).to_have_url(re.compile(rf"\?light={light}$"))
    in_candle(page)
    page.keyboard.press("ArrowRight")
    expect(page).to_have_url(re.compile(rf"{re.escape(RECIPE.path)}$"))
    assert (drawn(page), band(page)) == (first, colours)
    expect(page.locator("[data-lights-said]")).to_be_empty()
    expect(page.get_by_role("radio", name="Noon")).to_be_focused()


def test_nothing_is_asked_for_before_a_light_is_chosen(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit()
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(demo_addresses["clients"] + RECIPE.path, wait_until="networkidle")
    assert not [url for url in asked if url.endswith(".json")]
    page.get_by_text("Candle", exact=True).click()
    in_candle(page)
    assert len([url for url in asked if url.endswith(".json")]) == 1


def test_a_page_that_was_sent_in_candlelight_opens_in_it_without_a_fault(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit()
    watch = Watch(page, demo_addresses["clients"])
    page.goto(f"{demo_addresses['clients']}{RECIPE.path}?light=candle")
    in_candle(page)
    expect(page.get_by_role("radio", name="Candle")).to_be_checked()
    expect(page.locator("#show-drawn")).to_be_checked()
    assert not watch.faults, "\n".join(watch.faults)


@pytest.mark.parametrize("light", ["noon", "moon", ""])
def test_a_light_that_is_not_known_leaves_the_page_at_noon(light: str, visit: Visit) -> None:
    page = visit(RECIPE._replace(path=f"{RECIPE.path}?light={light}"))
    page.wait_for_load_state("networkidle")
    expect(page.get_by_role("radio", name="Noon")).to_be_checked()
    assert not drawn(page).startswith(DATA)


def test_the_light_is_kept_when_the_variant_changes_and_on_the_way_back(visit: Visit) -> None:
    page = visit(RECIPE, viewport=DESK)
    page.get_by_text("Candle", exact=True).click()
    in_candle(page)
    there = page.locator(f".variant-switch a[href='{VARIANT.path.rpartition('/')[2]}']")
    there.click()
    expect(page).to_have_url(re.compile(re.escape(f"{VARIANT.path}?light=candle") + "$"))
    in_candle(page)
    assert drawn(page).startswith(DATA)
    page.go_back()
    expect(page).to_have_url(re.compile(re.escape(f"{RECIPE.path}?light=candle") + "$"))
    in_candle(page)


def test_the_photo_brings_noon_back(visit: Visit) -> None:
    page = visit(RECIPE)
    page.get_by_text("Candle", exact=True).click()
    in_candle(page)
    page.get_by_text("Photo", exact=True).click()
    expect(page.get_by_role("radio", name="Noon")).to_be_checked()
    expect(page).to_have_url(re.compile(rf"{re.escape(RECIPE.path)}$"))
    expect(page.locator(".show-photo img").last).to_be_visible()


def test_without_a_signal_the_light_stays_and_the_page_says_why(visit: Visit) -> None:
    page = visit(RECIPE)
    page.route("**/*.json", lambda route: route.abort())
    page.get_by_text("Candle", exact=True).click()
    expect(page.locator("[data-lights-said]")).to_contain_text("Try again with a signal.")
    expect(page.get_by_role("radio", name="Noon")).to_be_checked()
    assert "light=" not in page.url


@pytest.mark.parametrize("kind", BOTH, ids=str)
def test_without_script_there_is_no_switch_of_lights(kind: Kind, visit: Visit) -> None:
    page = visit(kind, java_script_enabled=False)
    expect(page.locator(".lights")).to_be_hidden()


@pytest.mark.parametrize("kind", BOTH, ids=str)
def test_what_the_picture_is_said_to_show_names_the_light(kind: Kind, visit: Visit) -> None:
    page = visit(kind)
    page.get_by_text("Low sun", exact=True).click()
    expect(page.locator(".showing .drawn")).to_have_attribute(
        "alt", re.compile(r"^Drawing of .*\. As it looks in low sun\.$")
    )


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_to_mend_by_candlelight(scheme: str, visit: Visit) -> None:
    page = visit(RECIPE, reduced_motion="reduce", bypass_csp=True, color_scheme=scheme)
    page.get_by_text("Candle", exact=True).click()
    in_candle(page)
    page.evaluate(AXE)
    assert page.evaluate(RUN) == []


def test_the_page_stays_still_while_the_switch_comes(visit: Visit) -> None:
    page = visit(RECIPE)
    with_switch = page.locator(".variant-switch").bounding_box()
    page.locator("[data-lights]").evaluate("(part) => { part.dataset.waiting = ''; }")
    expect(page.locator(".lights")).to_be_hidden()
    assert page.locator(".variant-switch").bounding_box() == with_switch
