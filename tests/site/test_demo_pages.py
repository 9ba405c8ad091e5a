"""The demo's two sites, read as a visitor's program would: pages, links, counts, share tags."""

from __future__ import annotations

import json
from functools import cache
from os.path import normpath
from pathlib import Path
from urllib.parse import unquote, urlsplit

import pytest
import yaml
from bs4 import BeautifulSoup
from lxml.html import HtmlElement

from corymb.site.settings import AUDIENCES
from corymb.views.pieces import Audience
from tests.site.trees import (
    addresses_in,
    anchors_in,
    of_class,
    said_in_the_head,
    tree_of,
    words_of,
)

CONTENT = Path(__file__).parents[2] / "content"
SITE = "https://teaselandrook.example/"
RECIPES = sorted((CONTENT / "recipes").rglob("*.yml"), key=lambda file: file.stem)
DRAFTS = [file for file in RECIPES if "\ndraft: yes" in file.read_text("utf-8")]
SHOWN = [file for file in RECIPES if file not in DRAFTS]

Sites = dict[Audience, Path]


@cache
def soup_of(file: Path) -> BeautifulSoup:
    return BeautifulSoup(file.read_text("utf-8"), "lxml")


@pytest.mark.parametrize("audience", AUDIENCES)
def test_every_link_and_image_leads_somewhere(demo_sites: Sites, audience: Audience) -> None:
    root = demo_sites[audience]
    there = {file for file in root.rglob("*") if file.is_file()}
    pages = [file for file in there if file.suffix == ".html"]
    dead = [
        f"{file.relative_to(root)}: {address}"
        for file in pages
        for address in addresses_in(file)
        if not _leads_on(root, file, address, there)
    ]
    assert dead == []
    assert len(pages) > 250


def _leads_on(root: Path, file: Path, address: str, there: set[Path]) -> bool:
    if address.startswith(SITE):
        address = "/" + address.removeprefix(SITE)
    parts = urlsplit(address)
    if parts.scheme in ("mailto", "tel", "data"):
        return True
    if parts.scheme or parts.netloc:
        return False  # the demo links to no other host
    path = unquote(parts.path)
    target = root / (path.lstrip("/") or "index.html") if path[:1] == "/" else file.parent / path
    target = Path(normpath(target if path else file))
    if target not in there:
        return False
    return not parts.fragment or unquote(parts.fragment) in anchors_in(target)


@pytest.mark.parametrize("file", SHOWN, ids=lambda file: str(file.stem))
@pytest.mark.parametrize("audience", AUDIENCES)
def test_a_recipe_page_lists_counts_roles_windows_and_variants(
    demo_sites: Sites, audience: Audience, file: Path
) -> None:
    written = yaml.load(file.read_text("utf-8"), yaml.BaseLoader)
    page = tree_of(demo_sites[audience] / "arrangements" / f"{file.stem}.html")
    lines = of_class(page, "lines")[0].findall("tbody/tr")
    rows = [words_of(row) for row in lines]
    if "based on" not in written:
        assert [row.split()[0] for row in rows] == [_count(line) for line in written["stems"]]
    assert all(any(role in row for role in ("depth", "light", "accent")) for row in rows)
    windows = [row.xpath(".//small[contains(@class, 'label')]")[0] for row in lines]
    assert windows and all(words_of(window) for window in windows)
    assert words_of(of_class(page, "season-says")[0])
    names = {variant["name"] for variant in written["variants"].values()}
    shown = {words_of(h3, "") for part in of_class(page, "variant") for h3 in part.iter("h3")}
    assert len(names) >= 2
    assert names == shown


def _count(line: str | dict[str, str]) -> str:
    return line["count"] if isinstance(line, dict) else line.split()[0]


@pytest.mark.parametrize("file", SHOWN, ids=lambda file: str(file.stem))
def test_a_variants_page_shows_what_changed_from_its_parent(demo_sites: Sites, file: Path) -> None:
    pages = list((demo_sites["clients"] / "arrangements").glob(f"{file.stem}--*.html"))
    assert len(pages) >= 2
    for page in pages:
        changes = of_class(tree_of(page), "changes")[0]
        assert changes.findall(".//li"), page.name
        assert changes.findall(".//h2//a")[0].get("href") == f"{file.stem}.html"


def test_sizes_add_up(demo_sites: Sites) -> None:
    for page in (demo_sites["clients"] / "arrangements").glob("*.html"):
        (table,) = of_class(tree_of(page), "sizes-table")
        rows = [_numbers(row) for row in table.findall("tbody/tr")]
        (totals,) = table.findall("tfoot/tr")
        assert rows and rows[0], page.name
        assert [sum(column) for column in zip(*rows, strict=True)] == _numbers(totals), page.name


def _numbers(row: HtmlElement) -> list[int]:
    return [int(words_of(cell)) for cell in row.findall("td")]


def test_drafts_are_for_staff_alone(demo_sites: Sites) -> None:
    assert DRAFTS
    for file in DRAFTS:
        page = f"arrangements/{file.stem}.html"
        assert not (demo_sites["clients"] / page).exists()
        assert (demo_sites["staff"] / page).exists()


def test_every_client_page_has_one_address_and_tells_it(demo_sites: Sites) -> None:
    root = demo_sites["clients"]
    seen = set()
    for file in root.rglob("*.html"):
        path = str(file.relative_to(root))
        canonical = said_in_the_head(file, "link", "rel", "canonical", "href")
        if path in ("404.html", "search.html", "kept.html") or path.startswith("links/"):
            assert canonical is None
            continue
        assert canonical is not None, path
        expected = SITE if path == "index.html" else SITE + path
        assert canonical == expected
        seen.add(expected)
    sitemap = BeautifulSoup((root / "sitemap.xml").read_text("utf-8"), "lxml-xml")
    assert {loc.get_text() for loc in sitemap.find_all("loc")} == seen


def test_a_message_shows_a_title_a_line_and_an_image(demo_sites: Sites) -> None:
    made = next((demo_sites["clients"] / "made").glob("*.html"))
    soup = soup_of(made)
    tags = {tag["property"]: tag["content"] for tag in soup.select("meta[property]")}
    assert tags["og:title"] and tags["og:description"]
    assert str(tags["og:image"]).startswith(f"{SITE}assets/photos/")
    assert tags["og:url"] == f"{SITE}made/{made.name}"


def test_the_staffs_site_asks_not_to_be_indexed(demo_sites: Sites) -> None:
    root = demo_sites["staff"]
    assert "Disallow: /" in (root / "robots.txt").read_text()
    assert not (root / "sitemap.xml").exists()
    for file in root.rglob("*.html"):
        robots = said_in_the_head(file, "meta", "name", "robots", "content")
        assert robots is not None and "noindex" in robots, file.name


def test_structured_data_names_the_studio_and_its_arrangements(demo_sites: Sites) -> None:
    root = demo_sites["clients"]
    home = _structured(root / "index.html")
    assert home[0]["@type"] == "Florist"
    recipe = _structured(root / "arrangements" / f"{SHOWN[0].stem}.html")
    assert [thing["@type"] for thing in recipe] == ["Product", "BreadcrumbList"]
    steps = recipe[1]["itemListElement"]
    assert [step["position"] for step in steps] == list(range(1, len(steps) + 1))


def _structured(file: Path) -> list[dict[str, object]]:
    tag = soup_of(file).select_one('script[type="application/ld+json"]')
    assert tag is not None
    data = json.loads(tag.get_text())
    assert data["@context"] == "https://schema.org"
    return list(data["@graph"])


def test_the_search_index_knows_every_page_that_can_be_found(demo_sites: Sites) -> None:
    root = demo_sites["clients"]
    entries = json.loads((root / "search.json").read_text("utf-8"))
    pages = {str(file.relative_to(root)) for file in root.rglob("*.html")}
    for_one_client = {page for page in pages if page.startswith("links/")}
    assert for_one_client
    unfound = {"404.html", "search.html", "kept.html", *for_one_client}
    assert {entry["href"] for entry in entries} == pages - unfound
    assert all(entry["title"] for entry in entries)
