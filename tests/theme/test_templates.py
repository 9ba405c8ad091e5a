"""What does every page hold to, whatever the studio wrote into its files?"""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest
from bs4 import BeautifulSoup, Tag

from corymb.views.pieces import Audience
from corymb.views.recipe import StaffRecipe
from tests.theme.filling import filled
from tests.theme.pages import IDS, VIEWS, rendered, rendered_view
from tests.theme.sources import TEMPLATES

HOSTILE = """<script>alert(1)</script>"' onload=alert(2) x="&"""
ANCHORED = (
    "arrangements.html",
    "in_season.html",
    "weeks_ahead.html",
    "week.html",
    "bench_sheets.html",
    "book.html",
    "care_cards.html",
    "style_link.html",
    "style_link_file.html",
)
EACH_PAGE = pytest.mark.parametrize(("template", "audience", "view"), VIEWS, ids=IDS)


def soup(template: str, audience: Audience, view: Any, text: str, *, empty: bool = False) -> Tag:
    return BeautifulSoup(rendered(template, audience, view, text, empty=empty), "html5lib")


def test_every_page_template_is_tried_here() -> None:
    pages = {file.name for file in TEMPLATES.glob("*.html")} - {"base.html"}
    assert {template for template, _, _ in VIEWS} == pages


@EACH_PAGE
def test_a_hostile_name_stays_text(template: str, audience: Audience, view: Any) -> None:
    page = soup(template, audience, view, HOSTILE)
    for script in page.find_all("script"):
        assert script.get("type") == "application/ld+json" or script.get("src"), script
        assert "alert" not in (script.string or "")
    handlers = [
        (tag.name, name) for tag in page.find_all(True) for name in tag.attrs if name[:2] == "on"
    ]
    assert not handlers


@EACH_PAGE
def test_a_hostile_name_is_shown_as_it_was_written(
    template: str, audience: Audience, view: Any
) -> None:
    assert HOSTILE in soup(template, audience, view, HOSTILE).get_text()


@EACH_PAGE
def test_a_page_is_whole_when_all_that_may_be_missing_is(
    template: str, audience: Audience, view: Any
) -> None:
    page = soup(template, audience, view, "", empty=True)
    assert page.find("main") and page.find("h1")
    assert "None" not in page.get_text()


@EACH_PAGE
def test_a_page_has_one_name_and_its_headings_skip_no_level(
    template: str, audience: Audience, view: Any
) -> None:
    page = soup(template, audience, view, "Hedgerow jar")
    levels = [int(tag.name[1]) for tag in page.find_all(["h1", "h2", "h3", "h4"])]
    assert levels.count(1) == 1
    steps = [after - before for before, after in pairwise(levels)]
    assert all(step <= 1 for step in steps), levels


@EACH_PAGE
def test_an_image_has_a_description_and_its_size(
    template: str, audience: Audience, view: Any
) -> None:
    for image in soup(template, audience, view, "Hedgerow jar").find_all("img"):
        assert image.has_attr("alt")
        if "photo-under" not in image.get("class", []):
            assert image.has_attr("width") and image.has_attr("height"), image


@EACH_PAGE
def test_no_two_parts_of_a_page_share_an_id(template: str, audience: Audience, view: Any) -> None:
    bare = template in ANCHORED  # all their anchors would be alike
    page = soup(template, audience, view, "Hedgerow jar", empty=bare)
    ids = [tag["id"] for tag in page.find_all(id=True)]
    assert len(ids) == len(set(ids))


BENCH_WORDS = ("At the bench", "What it costs us", "Cutting and conditioning", "Bench copy")


@pytest.mark.parametrize(
    ("template", "view"),
    [(template, view) for template, audience, view in VIEWS if audience == "staff"],
    ids=[template for template, audience, _ in VIEWS if audience == "staff"],
)
def test_a_clients_page_leaves_the_bench_out_even_of_a_staff_view(template: str, view: Any) -> None:
    words = rendered(template, "clients", view, "Hedgerow jar")
    assert not [bench for bench in BENCH_WORDS if bench in words]
    assert "Bench copy" in rendered(template, "staff", view, "Hedgerow jar")


def test_a_lines_note_is_for_whoever_makes_it() -> None:
    view = filled(StaffRecipe, "Hedgerow jar")
    noted = replace(view, lines=tuple(replace(line, note="leaning apart") for line in view.lines))
    assert "leaning apart" in rendered_view("recipe.html", "staff", noted, "Hedgerow jar")
    assert "leaning apart" not in rendered_view("recipe.html", "clients", noted, "Hedgerow jar")


def test_the_lost_page_leads_on_from_any_depth() -> None:
    page = soup("404.html", "clients", VIEWS[-1][2], "/flowers/")
    ours = [link["href"] for link in page.find_all("a") if not link["href"].startswith("#")]
    assert ours and all(href.startswith(("/", "mailto:", "tel:")) for href in ours), ours
