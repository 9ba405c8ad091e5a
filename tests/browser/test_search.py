"""Does the search find what someone types, accents or not, half a word or several?"""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from corymb.views.pieces import Audience
from tests.browser.conftest import Visit
from tests.browser.kinds import Kind, kinds

SEARCH = kinds("search", audience="clients")[0]


def ask(page: Page, words: str) -> None:
    page.get_by_role("searchbox").fill(words)


@pytest.mark.parametrize("kind", kinds("search"), ids=str)
@pytest.mark.parametrize(
    ("words", "href", "sort"),
    [
        pytest.param("Dahlia, shell", "flowers/dahlia-shell.html", "Flower", id="a flower"),
        pytest.param("hedgerow jar", "arrangements/hedgerow-jar.html", "Posy", id="a recipe"),
        pytest.param("HEDGEROW", "arrangements/hedgerow-jar.html", "Posy", id="capitals"),
        pytest.param("hedg ja", "arrangements/hedgerow-jar.html", "Posy", id="half words"),
        pytest.param("dáhlïa shéll", "flowers/dahlia-shell.html", "Flower", id="accents typed"),
        pytest.param("daliah shell", "flowers/dahlia-shell.html", "Flower", id="a slip"),
        pytest.param(
            "pink", "arrangements/longest-night-hand-tie.html", "Bridal hand-tie", id="a colour"
        ),
        pytest.param("pink camellia", "flowers/camellia-blush.html", "Flower", id="its colour"),
        pytest.param(
            "rook bouquet",
            "arrangements/rooks-wing-hand-tie.html",
            "Bridal hand-tie",
            id="a word said of its style",
        ),
    ],
)
def test_search_finds(kind: Kind, words: str, href: str, sort: str, visit: Visit) -> None:
    page = visit(kind)
    ask(page, words)
    entry = page.locator(f".found li:has(a[href$='{href}'])")
    expect(entry).to_be_visible()
    expect(entry.locator(".label")).to_have_text(sort)
    entry.get_by_role("link").click()
    assert page.url.endswith(href)


@pytest.mark.parametrize(
    ("typed", "right", "slip"),
    [
        pytest.param("daliah", "dahlia", True, id="a letter in the wrong place"),
        pytest.param("dahila", "dahlia", True, id="two letters changed round"),
        pytest.param("dalia", "dahlia", True, id="one missing"),
        pytest.param("dahllia", "dahlia", True, id="one too many"),
        pytest.param("dehlia", "dahlia", True, id="one wrong"),
        pytest.param("dehlla", "dahlia", False, id="two wrong"),
        pytest.param("dlia", "dahlia", False, id="two missing"),
        pytest.param("poppy", "peony", False, id="another flower"),
    ],
)
def test_one_slip_is_forgiven_and_no_more(typed: str, right: str, slip: bool, visit: Visit) -> None:
    page = visit(SEARCH)
    asked = """async ([typed, right]) => {
        const script = [...document.scripts].find((one) => one.src.includes("search"));
        return (await import(script.src)).isSlip(typed, right);
    }"""
    assert page.evaluate(asked, [typed, right]) is slip


def test_a_slip_is_forgiven_only_where_nothing_is_spelled_so(visit: Visit) -> None:
    page = visit(SEARCH)
    ask(page, "dahlia")
    exact = page.locator(".found a").count()
    ask(page, "daliah")
    expect(page.locator(".found a")).to_have_count(exact)
    ask(page, "rsoe")
    expect(page.get_by_text("Nothing found.")).to_be_visible()


def test_a_name_with_accents_is_found_without_them(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit()
    entry = dict.fromkeys(("kind", "about", "text"), "")
    entry |= {"title": "Crème brûlée stock", "href": "index.html"}
    page.route("**/search.json", lambda route: route.fulfill(json=[entry]))
    page.goto(demo_addresses["clients"] + "search.html?q=creme brulee")
    expect(page.get_by_role("link", name="Crème brûlée stock")).to_be_visible()


def test_where_else_to_look_is_said_only_where_search_can_t_work(
    visit: Visit, demo_sites: dict[Audience, Path]
) -> None:
    page = visit(SEARCH)
    instead = page.locator("[data-search-instead]")
    expect(instead).to_be_hidden()
    page.goto((demo_sites["clients"] / "search.html").as_uri())
    expect(instead).to_contain_text("not from a disk")
    expect(instead).to_be_visible()


def test_a_name_comes_before_a_mention(visit: Visit) -> None:
    page = visit(SEARCH)
    ask(page, "dahlia")
    first = page.locator(".found a").first
    expect(first).to_contain_text("Dahlia")


def test_the_question_is_kept_in_the_address(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit(SEARCH)
    expect(page.get_by_role("searchbox")).to_have_value("dahlia")
    ask(page, "smoke & mirrors")
    expect(page.get_by_text("Nothing found.")).to_be_visible()
    assert page.url == demo_addresses["clients"] + "search.html?q=smoke%20%26%20mirrors"


def test_without_the_list_of_pages_search_says_what_it_needs(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit()
    page.route("**/search.json", lambda route: route.abort())
    page.goto(demo_addresses["clients"] + SEARCH.path)
    expect(page.get_by_text("searching takes a connection")).to_be_visible()
