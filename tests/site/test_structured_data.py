"""What search engines are told is what the page says, and nothing where there is nothing."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from corymb.site import structured_data
from corymb.views.frame import SiteFrame
from corymb.views.pages import HomeView
from corymb.views.pieces import Audience, Link
from corymb.views.recipe import ClientRecipe
from tests.site.trees import tree_of
from tests.theme.filling import filled

SITE = "https://teaselandrook.example/"


def told(*things: dict[str, Any]) -> list[dict[str, Any]]:
    text = structured_data.written(*things)
    return list(json.loads(text)["@graph"]) if text else []


def test_a_studio_is_told_by_its_pages_frame() -> None:
    site = filled(SiteFrame, "Hazel Row")
    (studio,) = told(structured_data.studio(site, filled(HomeView, "Flowers."), SITE))
    assert studio == {
        "@type": "Florist",
        "name": "Hazel Row",
        "description": "Flowers.",
        "url": SITE,
        "email": "Hazel Row",
        "areaServed": "Hazel Row",
    }


def test_what_is_not_known_is_not_told() -> None:
    view = filled(ClientRecipe, "Kitchen jug")
    (thing,) = told(structured_data.arrangement(view, image="", url=""))
    assert set(thing) == {"@type", "name", "description", "category"}
    nothing = (filled(SiteFrame, "", empty=True), filled(HomeView, "", empty=True))
    (studio,) = told(structured_data.studio(*nothing, SITE))
    assert set(studio) == {"@type", "url"}


def test_a_step_of_the_way_back_is_known_by_its_one_address() -> None:
    crumbs = [Link("Home", "index.html"), Link("Flowers", "flowers.html")]
    known = {"index.html": SITE, "flowers.html": ""}
    way = structured_data.path_back(crumbs, "Cosmos", known.__getitem__)
    assert [step.get("item") for step in way["itemListElement"]] == [SITE, None, None]
    assert [step["name"] for step in way["itemListElement"]] == ["Home", "Flowers", "Cosmos"]


def test_the_demo_tells_no_empty_word_and_no_second_address(
    demo_sites: dict[Audience, Path],
) -> None:
    root = demo_sites["clients"]
    pages = {path.relative_to(root).as_posix() for path in root.rglob("*.html")} - {"index.html"}
    known = {SITE, *(SITE + page for page in pages)}
    for file in root.rglob("*.html"):
        for name, value in _said(file):
            assert value, (file.name, name)
            assert name not in ("item", "url") or value in known, (file.name, value)


def _said(file: Path) -> Iterator[tuple[str, Any]]:
    told = tree_of(file).xpath("//script[contains(@type, 'ld')]/text()")
    for thing in json.loads(told[0])["@graph"] if told else ():
        yield from thing.items()
        for step in thing.get("itemListElement", ()):
            yield from step.items()
