"""What does a page tell search engines about itself? schema.org terms, as JSON-LD.

Only what the client's views hold goes in; the staff's pages carry none.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import Any

from corymb.studio.models import StudioFile
from corymb.views.pages import MadeView
from corymb.views.pieces import Link
from corymb.views.recipe import ClientRecipe

CONTEXT = "https://schema.org"


def written(*things: dict[str, Any]) -> str:
    """The things as JSON that can't end the script element it stands in."""
    graph = [thing for thing in things if thing]
    if not graph:
        return ""
    text = json.dumps({"@context": CONTEXT, "@graph": graph}, ensure_ascii=False, sort_keys=True)
    return text.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026")


def studio(house: StudioFile, site_url: str) -> dict[str, Any]:
    """The studio, as the kind of shop it is."""
    return {
        "@type": "Florist",
        "name": house.name,
        "description": house.about or house.tagline,
        "url": site_url,
        "email": house.contact.email,
        "areaServed": house.place.name,
    }


def path_back(crumbs: Sequence[Link], title: str, site_url: str) -> dict[str, Any]:
    """The way from home to the page."""
    steps = [*((crumb.label, site_url + crumb.href) for crumb in crumbs), (title, "")]
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
