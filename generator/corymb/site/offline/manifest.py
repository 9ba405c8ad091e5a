"""What does a phone have to know to put the staff's site on its home screen?

A manifest as the W3C's Web Application Manifest has it. Its addresses are relative, so that the
site may lie in any folder. A manifest has one colour for light and dark; the pages name both.
"""

from __future__ import annotations

import json
from functools import cache
from typing import Any

from corymb.language import gettext as _
from corymb.site.assets import ASSETS
from corymb.site.raster import raster_of
from corymb.site.raster.sheet import VIEW_BOX
from corymb.views.compose import addresses
from corymb.views.frame import SiteFrame

MANIFEST = "manifest.json"
ICON = "assets/icons/icon-{}.png"
WHOLE = (192, 512)
SHAPED = "shaped"
"""The icon for phones that cut it to a shape of theirs: what matters lies in the middle."""

APPLE = 180
"""The side that Apple's phones ask for, by a link in the page; from memory."""

PAPER = "#f7f2e8"
SHORT = 12
"""Letters that a home screen shows of a name; the W3C's advice, from memory."""


def manifest(site: SiteFrame) -> bytes:
    """The manifest of a studio's site for staff."""
    told: dict[str, Any] = {
        "id": "./",
        "name": site.name,
        "short_name": site.name if len(site.name) <= SHORT else _("Bench copy"),
        "description": site.tagline,
        "lang": site.language,
        "start_url": addresses.THIS_WEEK,
        "scope": "./",
        "display": "standalone",
        "theme_color": PAPER,
        "background_color": PAPER,
        "icons": [
            *(_icon(f"{side}", side, "any") for side in WHOLE),
            _icon(SHAPED, WHOLE[-1], "maskable"),
        ],
        "shortcuts": [
            {"name": _("This week"), "url": addresses.THIS_WEEK},
            {"name": _("Orders"), "url": addresses.ORDERS},
            {"name": _("Arrangements"), "url": addresses.ARRANGEMENTS},
        ],
    }
    return (json.dumps(told, ensure_ascii=False, indent=1) + "\n").encode()


def _icon(name: str, side: int, purpose: str) -> dict[str, str]:
    return {
        "src": ICON.format(name),
        "sizes": f"{side}x{side}",
        "type": "image/png",
        "purpose": purpose,
    }


@cache
def icons() -> dict[str, bytes]:
    """The theme's icon in pixels, by address."""
    drawing = (ASSETS / "icon.svg").read_text("utf-8")
    found = {ICON.format(side): raster_of(drawing, side) for side in (APPLE, *WHOLE)}
    found[ICON.format(SHAPED)] = raster_of(_with_room(drawing), WHOLE[-1])
    return found


def _with_room(drawing: str) -> str:
    """The icon with so much of its ground about it that no phone's shape cuts the flower.

    The safe zone is a circle across four fifths of the icon (W3C, Web Application Manifest); the
    flower's corners lie 23 of 40 from its middle.
    """
    wider = VIEW_BOX.sub('viewBox="-10 -10 60 60"', drawing, count=1)
    return wider.replace("M0 0h40v40H0z", "M-10-10h60v60h-60z", 1)
