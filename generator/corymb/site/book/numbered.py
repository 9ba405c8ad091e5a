"""On which page does everything in the book begin? It is printed once to see, and again to say so.

Chromium has no numbers of pages for a list of contents, but it keeps where each link leads. The
first printing is with empty drawings, which is quick; if the numbers that were written in move
anything, it is printed once more.
"""

from __future__ import annotations

import io
from collections.abc import Callable, Mapping
from pathlib import Path
from tempfile import TemporaryDirectory

from pypdf import PdfReader

from corymb.language import in_language
from corymb.site.book.bookmarks import with_bookmarks
from corymb.site.book.chromium import printed
from corymb.site.book.made import PAGE, Book

MOST_PRINTINGS = 3
Told = Callable[[int, int], None]


def printed_book(program: str, book: Book, told: Told = lambda done, total: None) -> bytes:
    """The book as PDF, its contents and index with true page numbers. Raises BrowserError."""
    told(0, MOST_PRINTINGS)
    numbers = begins_on(_printed(program, book.bare_files))
    for printing in range(1, MOST_PRINTINGS):
        told(printing, MOST_PRINTINGS)
        book = book.with_numbers(numbers)
        pdf = _printed(program, book.files)
        numbers = begins_on(pdf)
        if numbers == book.numbers:
            break
    told(MOST_PRINTINGS, MOST_PRINTINGS)
    with in_language(book.language):
        return with_bookmarks(pdf, book.view, numbers)


def begins_on(pdf: bytes) -> dict[str, int]:
    """The page, counted from 1, to which each link within a PDF leads, by its name."""
    reader = PdfReader(io.BytesIO(pdf))
    found = {}
    for name, place in reader.named_destinations.items():
        page = reader.get_destination_page_number(place)
        if page is not None:
            found[name.removeprefix("/")] = page + 1
    return found


def _printed(program: str, files: Mapping[str, bytes]) -> bytes:
    with TemporaryDirectory(prefix="corymb-book-", ignore_cleanup_errors=True) as folder:
        for path, data in files.items():
            file = Path(folder) / path
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_bytes(data)
        return printed(program, Path(folder) / PAGE)
