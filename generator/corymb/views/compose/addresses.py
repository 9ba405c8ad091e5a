"""Where on the site does each thing live?

The address of whatever a studio's file makes is decided here. The few that are the same in every
studio (the lists, the search, the theme's own files) stand in the templates as well; one that
doesn't agree is found when the finished pages are checked.
"""

from __future__ import annotations

from corymb.trade.looks import Look

HOME = "index.html"
ARRANGEMENTS = "arrangements.html"
FLOWERS = "flowers.html"
MADE = "made.html"
LESSONS = "lessons.html"
SEARCH = "search.html"
NOT_FOUND = "404.html"

FIXED = (HOME, ARRANGEMENTS, FLOWERS, MADE, LESSONS, SEARCH, NOT_FOUND)
"""The pages that every site can have, whatever the studio's files are called."""


def of_style(style_id: str) -> str:
    """A style's page."""
    return f"styles/{style_id}.html"


def of_look(look: Look) -> str:
    """The page of a recipe, or of one of its variants."""
    return f"arrangements/{look.id}.html"


def of_stem(stem_id: str) -> str:
    """A flower's page."""
    return f"flowers/{stem_id}.html"


def of_made(made_id: str) -> str:
    """The page of a piece of made work."""
    return f"made/{made_id}.html"


def of_lesson(technique_id: str) -> str:
    """A lesson's page."""
    return f"lessons/{technique_id}.html"


def of_page(page_id: str) -> str:
    """A page of plain text."""
    return f"{page_id}.html"


def of_photo(name: str) -> str:
    """One file of a published photo."""
    return f"assets/photos/{name}"


def of_drawing(look: Look) -> str:
    """The drawn picture of a look."""
    return f"assets/pictures/{look.id}.svg"


def of_head(stem_id: str) -> str:
    """The drawn head of a stem."""
    return f"assets/flowers/{stem_id}.svg"
