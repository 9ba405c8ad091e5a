"""The book of recipes before it is printed: what is in it, in which order, and for whom."""

from __future__ import annotations

import os
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest
from bs4 import BeautifulSoup, Tag

from corymb.site.book import Asked, Book, NothingInBookError
from corymb.site.book.chromium import printed
from corymb.site.book.styles import quoted
from corymb.site.locked.keys import VARIABLE
from corymb.trade.looks import looks_of
from corymb.views.pieces import Audience
from tests.site.books import made
from tests.views.making import demo


@cache
def demo_book(audience: Audience) -> Book:
    return made(demo(), Asked(audience))


def soup(book: Book) -> Tag:
    return BeautifulSoup(book.page, "lxml")


def test_each_chapter_is_a_style_in_its_order_and_has_all_its_recipes_by_name() -> None:
    studio = demo()
    shown = [recipe for recipe in studio.recipes.values() if not recipe.draft]
    view = demo_book("clients").view
    wanted = [
        (style.plural, sorted(names, key=str.casefold))
        for style in studio.styles.values()
        if (names := [r.name for r in shown if r.style == style.id])
    ]
    assert [(c.name, [r.view.name for r in c.recipes]) for c in view.chapters] == wanted


@pytest.mark.parametrize("audience", ["clients", "staff"])
def test_every_way_within_the_book_leads_somewhere_in_it(audience: Audience) -> None:
    page = soup(demo_book(audience))
    ids = [tag["id"] for tag in page.find_all(id=True)]
    assert len(ids) == len(set(ids))
    ways = [str(link["href"]) for link in page.find_all("a", href=True)]
    assert len(ways) > 100
    assert not [way for way in ways if way.startswith("#") and way[1:] not in ids]
    assert not [way for way in ways if not way.startswith(("#", "https:", "mailto:"))]


def test_the_index_names_every_stem_with_the_recipes_it_is_in() -> None:
    studio = demo()
    found = {
        stem.name: {each.name for each in stem.recipes} for stem in demo_book("staff").view.index
    }
    wanted: dict[str, set[str]] = {}
    for recipe in studio.recipes.values():
        for line in looks_of(recipe, studio.recipes)[""].lines:
            wanted.setdefault(studio.stems[line.stem].name, set()).add(recipe.name)
    assert found == wanted
    assert list(found) == sorted(found, key=str.casefold)


def test_lessons_method_and_costs_are_in_the_staffs_book_alone() -> None:
    staff, clients = demo_book("staff"), demo_book("clients")
    assert len(staff.view.lessons) == len(demo().techniques)
    assert not clients.view.lessons
    for word in ("Method", "What it costs us", "Conditioning", "Bench copy"):
        assert word in staff.page and word not in clients.page


def test_a_lessons_ways_lead_to_other_lessons_of_the_book() -> None:
    lesson = soup(demo_book("staff")).select_one("#lesson-conditioning .prose")
    assert lesson and lesson.select_one('a[href="#lesson-clean-buckets"]')


def test_of_one_style_there_is_one_chapter_and_the_lessons_it_asks_for() -> None:
    view = made(demo(), Asked("staff", styles=("crown",))).view
    assert [chapter.name for chapter in view.chapters] == [demo().styles["crown"].plural]
    asked = {t for r in demo().recipes.values() if r.style == "crown" for t in r.techniques}
    assert {f"lesson-{each}" for each in asked} == {each.anchor for each in view.lessons}


def test_page_numbers_stand_in_contents_and_index_once_they_are_known() -> None:
    book = demo_book("clients").with_numbers({"recipe-hedgerow-jar": 987})
    page = soup(book)
    for part in (".book-contents", ".book-index", ".book-opener"):
        ways = page.select(f'{part} a[href="#recipe-hedgerow-jar"]')
        assert ways and all("987" in way.get_text() for way in ways), part


def test_the_book_is_the_same_every_time() -> None:
    first, second = (made(demo(), Asked("staff", "a5", ("crown",))) for _ in range(2))
    assert first.bare_files == second.bare_files


def test_a_drawing_that_is_left_empty_keeps_its_size() -> None:
    files = demo_book("staff").bare_files
    drawings = [data for path, data in files.items() if path.endswith(".svg")]
    assert len(drawings) == 2 * len(demo().recipes)  # picture and plan
    assert {len(d) for d in drawings} == {len(drawings[0])}
    assert b'viewBox="0 0 40 30"' in drawings[0] and b"path" not in drawings[0]


def test_a_name_cannot_get_out_of_the_head_of_a_page() -> None:
    assert quoted("Posies") == '"Posies"'
    assert quoted('"; } * {') == '"\\22 \\3b  \\7d  \\2a  \\7b "'
    assert quoted("a\\b\n</style>") == '"a\\5c b\\a \\3c \\2f style\\3e "'


def test_a_studio_without_a_recipe_for_it_gets_no_book() -> None:
    studio = demo()
    drafts = {k: r.model_copy(update={"draft": True}) for k, r in studio.recipes.items()}
    with pytest.raises(NothingInBookError, match="no recipe for this book"):
        made(replace(studio, recipes=drafts), Asked("clients"))


TELLS_WHAT_IT_KNOWS = """#!/bin/sh
for each in "$@"; do
  case $each in --print-to-pdf=*) { printf %%PDF; env; } > "${each#--print-to-pdf=}" ;; esac
done
"""


@pytest.mark.skipif(os.name != "posix", reason="the program is a script of a shell")
def test_the_browser_that_prints_is_not_told_the_passphrase(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv(VARIABLE, "bako-rimu-tesa")
    monkeypatch.setenv("LANG", "en_IE.UTF-8")
    program = tmp_path / "browser"
    program.write_text(TELLS_WHAT_IT_KNOWS)
    program.chmod(0o755)
    told = printed(str(program), tmp_path / "page.html")
    assert b"LANG=en_IE.UTF-8" in told and b"bako" not in told
