"""Books of recipes for tests, with empty sheets in place of drawings."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from corymb.site.book import Asked, Book, book_of
from corymb.site.drawn.pictures import Pictures
from corymb.site.settings import SiteSettings
from corymb.studio.studio import Studio
from corymb.trade.looks import looks_of
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Drawing, PlanDrawing

DAY = date(2026, 9, 16)
SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 30"><path d="M0 0h9v9z"/></svg>'


def drawn(studio: Studio) -> Pictures:
    """A sheet for every picture, with nothing that takes long to draw on it."""
    pictures = Pictures()
    for recipe in studio.recipes.values():
        for look in looks_of(recipe, studio.recipes).values():
            href, plan = addresses.of_drawing(look), addresses.of_plan(look)
            pictures.drawn |= {href: SVG, plan: SVG}
            pictures.drawings[look.id] = Drawing(href, 40, 30)
            pictures.plans[look.id] = PlanDrawing(Drawing(plan, 40, 30), ())
    return pictures


def made(studio: Studio, asked: Asked, cache: Path = Path("nowhere")) -> Book:
    """A studio's book; only what is to be printed with its pictures needs a cache."""
    settings = SiteSettings(Path("mkdocs.yml"), Path("content"), cache)
    return book_of(studio, settings, drawn(studio), asked, DAY)
