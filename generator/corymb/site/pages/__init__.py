"""Which pages does a site have? One module a kind of page; this is the list of them."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from corymb.site.pages import (
    arrangements,
    cut,
    flowers,
    home,
    in_season,
    kept,
    leading_on,
    lessons,
    links,
    made,
    orders,
    papers,
    prose,
    standing,
    training,
    weeks,
    weeks_ahead,
    your_date,
)
from corymb.site.pages.page import Making, Page, Planned

KINDS: tuple[Callable[[Making], Iterator[Planned]], ...] = (
    home.pages,
    arrangements.pages,
    in_season.pages,
    your_date.pages,
    flowers.pages,
    made.pages,
    kept.pages,
    weeks.pages,
    orders.pages,
    papers.pages,
    standing.pages,
    cut.pages,
    links.pages,
    weeks_ahead.pages,
    training.pages,
    lessons.pages,
    prose.pages,
    leading_on.pages,
)

__all__ = ["KINDS", "Making", "Page", "Planned", "all_pages", "planned_pages"]


def planned_pages(making: Making) -> Iterator[Planned]:
    """Every page of one audience's site, in the order of its menu, before any is made."""
    for pages in KINDS:
        yield from pages(making)


def all_pages(making: Making) -> Iterator[Page]:
    """The same, made."""
    for planned in planned_pages(making):
        yield planned.page(making)
