"""How does a studio's book of recipes come about: one page, printed by the browser, numbered?

`files` makes the page and all it shows, `chromium` prints it, `numbered` has it printed until the
page numbers in it are those of the paper.
"""

from corymb.site.book.asked import PAPERS, Asked, NothingInBookError, Paper
from corymb.site.book.chromium import BrowserError, find_browser
from corymb.site.book.made import Book, book_of
from corymb.site.book.numbered import printed_book

__all__ = [
    "PAPERS",
    "Asked",
    "Book",
    "BrowserError",
    "NothingInBookError",
    "Paper",
    "book_of",
    "find_browser",
    "printed_book",
]
