"""Where on the site does each thing live?

The address of whatever a studio's file makes is decided here. The few that are the same in every
studio (the lists, the search, the theme's own files) stand in the templates as well; one that
doesn't agree is found when the finished pages are checked.
"""

from __future__ import annotations

from datetime import date

from corymb.trade.looks import Look

HOME = "index.html"
ARRANGEMENTS = "arrangements.html"
IN_SEASON = "in-season.html"
YOUR_DATE = "your-date.html"
WEEKS_AHEAD = "weeks-ahead.html"
FLOWERS = "flowers.html"
MADE = "made.html"
KEPT = "kept.html"
ORDERS = "orders.html"
COSTS = "costs.csv"
PRICES = "prices.html"
LESSONS = "lessons.html"
LEARNING = "learning.html"
QUESTIONS = "questions.html"
RECORD = "record.html"
LINKS = "links.html"
LINKS_FOLDER = "links"
NO_LINKS = "links/index.html"
SEARCH = "search.html"
THIS_WEEK = "this-week.html"
NO_SIGNAL = "no-signal.html"
NOT_FOUND = "404.html"

FIXED = (
    HOME,
    ARRANGEMENTS,
    IN_SEASON,
    YOUR_DATE,
    FLOWERS,
    MADE,
    KEPT,
    ORDERS,
    PRICES,
    LESSONS,
    LEARNING,
    QUESTIONS,
    RECORD,
    LINKS,
    WEEKS_AHEAD,
    THIS_WEEK,
    NO_SIGNAL,
    SEARCH,
    NOT_FOUND,
)
"""The pages that every site can have, whatever the studio's files are called."""


def of_month(name: str) -> str:
    """A month of the year at a glance, by its English name."""
    return f"{IN_SEASON}#{name.lower()}"


def of_style(style_id: str) -> str:
    """A style's page."""
    return f"styles/{style_id}.html"


def of_look(look: Look) -> str:
    """The page of a recipe, or of one of its variants."""
    return of_look_called(look.id)


def of_look_called(look_id: str) -> str:
    """The same by its id."""
    return f"arrangements/{look_id}.html"


def of_stem(stem_id: str) -> str:
    """A flower's page."""
    return f"flowers/{stem_id}.html"


def of_made(made_id: str) -> str:
    """The page of a piece of made work."""
    return f"made/{made_id}.html"


def of_due(due_id: str) -> str:
    """The page of an order on its day."""
    return f"orders/{due_id}.html"


def of_bench(due_id: str, line: int | None = None) -> str:
    """The bench sheets of an order, or the sheet of one of its lines."""
    return f"orders/{due_id}-bench.html{f'#line-{line}' if line else ''}"


def of_bench_picture(due_id: str, line: int) -> str:
    """A line's piece as it will be made, where no look's page shows it so."""
    return f"orders/{due_id}-bench-{line}.svg"


def of_bench_plan(due_id: str, line: int) -> str:
    """The same from above."""
    return f"orders/{due_id}-bench-{line}-plan.svg"


def of_labels(due_id: str) -> str:
    """The labels of an order's buckets."""
    return f"orders/{due_id}-labels.html"


def of_load(due_id: str) -> str:
    """The load sheet of an order."""
    return f"orders/{due_id}-load.html"


def of_collection(due_id: str) -> str:
    """The client's own sheet of an order."""
    return f"orders/{due_id}-collection.html"


def of_cards(due_id: str) -> str:
    """The care cards of an order."""
    return f"orders/{due_id}-cards.html"


def of_style_cards(style_id: str, look: Look | None = None) -> str:
    """The care cards of a style, or of one of its looks."""
    return f"cards/{style_id}.html{f'#{look.id}' if look else ''}"


def of_standing(standing_id: str) -> str:
    """The page of a standing order."""
    return f"standing/{standing_id}.html"


def of_week(week: str) -> str:
    """The page of a week of the calendar, by a name like `2026-W38`."""
    return f"weeks/{week}.html"


def of_week_calendar(week: str) -> str:
    """The same for a calendar program."""
    return f"weeks/{week}.ics"


def of_cut(day: date) -> str:
    """The cut list of a day."""
    return f"cut/{day}.html"


def of_cut_table(day: date) -> str:
    """The same for a spreadsheet: a row a stem."""
    return f"cut/{day}.csv"


def of_cut_orders(day: date) -> str:
    """Which order gets what of it, for a spreadsheet: a row a stem and order."""
    return f"cut/{day}-orders.csv"


def of_lesson(technique_id: str) -> str:
    """A lesson's page."""
    return f"lessons/{technique_id}.html"


def of_practice(look: Look) -> str:
    """A look made step by step."""
    return of_practice_of(look.id)


def of_practice_of(look_id: str) -> str:
    """The same by its id."""
    return f"practice/{look_id}.html"


def of_page(page_id: str) -> str:
    """A page of plain text."""
    return f"{page_id}.html"


def of_photo(name: str) -> str:
    """One file of a published photo."""
    return f"assets/photos/{name}"


def of_drawing(look: Look) -> str:
    """The drawn picture of a look."""
    return f"assets/pictures/{look.id}.svg"


def look_drawn_at(address: str) -> str:
    """The id of the look whose picture stands at an address; empty for any other address."""
    return address[len("assets/pictures/") : -len(".svg")] if _is_drawing(address) else ""


def _is_drawing(address: str) -> bool:
    return address.startswith("assets/pictures/") and address.endswith(".svg")


def of_small(look: Look, *, wide: bool = False) -> str:
    """The picture of a look as pixels, for a phone's lists; or for lists of wide ones."""
    return f"assets/pictures/{look.id}{'.wide' if wide else ''}.avif"


def of_card(look: Look, digits: str) -> str:
    """The picture of a look as messages show it beside a link, by digits of its digest."""
    return f"assets/cards/{look.id}-{digits}.jpg"


def of_colours_in_light(look: Look) -> str:
    """What becomes of the colours of a look's picture in other lights than noon's."""
    return f"assets/pictures/{look.id}.json"


def of_sizes(recipe_id: str) -> str:
    """The sizes of a recipe side by side."""
    return f"assets/sizes/{recipe_id}.svg"


def of_small_sizes(recipe_id: str) -> str:
    """The same as pixels, for a phone."""
    return f"assets/sizes/{recipe_id}.avif"


def of_plan(look: Look) -> str:
    """The plan of a look from above; in a folder of its own, so that no recipe can be called it."""
    return f"assets/plans/{look.id}.svg"


def of_head(stem_id: str) -> str:
    """The drawn head of a stem."""
    return f"assets/flowers/{stem_id}.svg"


def of_link(code: str) -> str:
    """The page of a style link. No other page of the clients' site leads there."""
    return f"{LINKS_FOLDER}/{code}.html"


def of_link_picture(code: str, line: int, light: str = "") -> str:
    """A look as a style link's page draws it: with swaps, in a size, or in a light of its hours."""
    return f"{LINKS_FOLDER}/{code}/look-{line}{f'-by-{light}' if light else ''}.svg"
