"""What does a page tell search engines about itself? schema.org terms, as JSON-LD.

Only what the client's views hold goes in; the staff's pages carry none.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from typing import Any

from corymb.views.frame import SiteFrame
from corymb.views.pages import HomeView, MadeView
from corymb.views.pieces import Link
from corymb.views.recipe import ClientRecipe

CONTEXT = "https://schema.org"


def written(*things: dict[str, Any]) -> str:
    """The things as JSON that can't end the script element it stands in; unknown is left out."""
    known = ({name: value for name, value in thing.items() if value} for thing in things)
    graph = [thing for thing in known if thing]
    if not graph:
        return ""
    text = json.dumps({"@context": CONTEXT, "@graph": graph}, ensure_ascii=False, sort_keys=True)
    return text.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026")


def studio(site: SiteFrame, view: HomeView, url: str) -> dict[str, Any]:
    """The studio, as the kind of shop it is."""
    return {
        "@type": "Florist",
        "name": site.name,
        "description": view.about or site.tagline,
        "url": url,
        "email": site.email,
        "areaServed": site.place,
    }


def path_back(
    crumbs: Sequence[Link], title: str, canonical: Callable[[str], str]
) -> dict[str, Any]:
    """The way from home to the page, each step by the one address it is known by."""
    steps = [*((crumb.label, canonical(crumb.href)) for crumb in crumbs), (title, "")]
    items = [
        {"@type": "ListItem", "position": place, "name": name} | ({"item": url} if url else {})
        for place, (name, url) in enumerate(steps, 1)
    ]
    return {"@type": "BreadcrumbList", "itemListElement": items} if crumbs else {}


def arrangement(view: ClientRecipe, image: str, url: str) -> dict[str, Any]:
    """An arrangement, as a thing that is made and can be asked for."""
    name = f"{view.name}, {view.variant_name}" if view.variant_name else view.name
    return {
        "@type": "Product",
        "name": name,
        "description": view.summary,
        "category": view.style.label,
        "url": url,
        "image": image,
    }


def made_work(view: MadeView, image: str, url: str) -> dict[str, Any]:
    """A piece of made work, as a work that was photographed."""
    return {
        "@type": "CreativeWork",
        "name": view.title,
        "description": view.about,
        "url": url,
        "image": image,
        "creditText": view.photos[0].credit,
    }
