"""Is the printed book a book: every recipe there once, on the page that its contents name?"""

from __future__ import annotations

import io
import re

import pytest
from pypdf import PdfReader
from pypdf.generic import Destination

from corymb.site.book import Asked, Book, printed_book
from corymb.site.book.numbered import begins_on
from tests.browser.chromium import MISSING, find_chromium
from tests.site.books import made
from tests.views.making import demo

MM = 72 / 25.4  # in points
FEWEST_LETTERS = 40  # on a page that has something to say


class Printed:
    """A book and what came out of the printer."""

    def __init__(self, book: Book) -> None:
        program = find_chromium()
        if program is None:
            pytest.fail(MISSING, pytrace=False)
        self.view = book.view
        self.pdf = printed_book(program, book)
        self.reader = PdfReader(io.BytesIO(self.pdf))
        self.pages = [page.extract_text() for page in self.reader.pages]
        self.begins = begins_on(self.pdf)

    @property
    def recipes(self) -> dict[str, str]:
        """The names of all recipes by where they begin."""
        return {r.anchor: r.view.name for c in self.view.chapters for r in c.recipes}


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Printed:
    """The staff's book of the demo, whole, on A4."""
    return Printed(made(demo(), Asked("staff"), tmp_path_factory.mktemp("book")))


@pytest.fixture(scope="module")
def small(tmp_path_factory: pytest.TempPathFactory) -> Printed:
    """A book of one style for clients, on A5."""
    asked = Asked("clients", "a5", ("crown",))
    return Printed(made(demo(), asked, tmp_path_factory.mktemp("small")))


def plain(text: str) -> str:
    """Words as they are however lines were broken and letters joined."""
    return re.sub(r"[\W_]+", " ", text).strip()


def test_every_recipe_and_lesson_begins_once_at_the_top_of_the_page_it_is_said_to(
    bench: Printed, small: Printed
) -> None:
    for book in (bench, small):
        named = book.recipes | {each.anchor: each.view.title for each in book.view.lessons}
        for anchor, name in named.items():
            tops = [
                number
                for number, text in enumerate(book.pages, 1)
                if plain(name) in plain(text[: 2 * len(name) + 60]) and number > 2
            ]
            assert book.begins[anchor] in tops, (name, tops)
        pages = [book.begins[anchor] for anchor in named]
        assert pages == sorted(set(pages))


def test_the_contents_name_the_true_page_of_each_recipe(bench: Printed, small: Printed) -> None:
    for book in (bench, small):
        contents = plain(book.pages[1])
        for anchor, name in book.recipes.items():
            assert f"{plain(name)} {book.begins[anchor]}" in contents, name


def test_every_page_but_the_title_bears_its_number_and_none_is_empty(
    bench: Printed, small: Printed
) -> None:
    for book in (bench, small):
        assert all(len(re.sub(r"\W", "", text)) > FEWEST_LETTERS for text in book.pages)
        lines = [{line.strip() for line in text.splitlines()} for text in book.pages]
        assert all(str(number) in lines[number - 1] for number in range(2, len(lines) + 1))
        assert "1" not in lines[0]


@pytest.mark.parametrize(("name", "across", "high"), [("bench", 210, 297), ("small", 148, 210)])
def test_its_pages_are_of_the_paper_that_was_asked_for(
    name: str, across: int, high: int, request: pytest.FixtureRequest
) -> None:
    book: Printed = request.getfixturevalue(name)
    for page in book.reader.pages:
        assert float(page.mediabox.width) == pytest.approx(across * MM, abs=1.5)
        assert float(page.mediabox.height) == pytest.approx(high * MM, abs=1.5)


def test_a_reader_finds_title_language_and_bookmarks(bench: Printed) -> None:
    assert bench.reader.metadata
    assert bench.reader.metadata.title == "The recipe book · Teasel & Rook"
    root = bench.reader.trailer["/Root"]
    assert root["/Lang"] == "en-IE" and root["/MarkInfo"]["/Marked"]
    marks = {
        plain(str(mark.title)): bench.reader.get_destination_page_number(mark)
        for mark in flat(bench.reader.outline)
    }
    told = bench.recipes | {each.anchor: each.view.title for each in bench.view.lessons}
    told |= {chapter.anchor: chapter.name for chapter in bench.view.chapters}
    assert {plain(name): bench.begins[anchor] - 1 for anchor, name in told.items()}.items() <= (
        marks.items()
    )
    assert len(marks) == len(told) + 2  # the chapter of lessons, and the index


def flat(outline: list[Destination | list]) -> list[Destination]:  # type: ignore[type-arg]
    """Bookmarks with those below them."""
    return [mark for each in outline for mark in (flat(each) if isinstance(each, list) else [each])]
