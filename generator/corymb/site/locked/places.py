"""Where does what stand in a locked site, and what of it may anyone read?

The theme's own files, which are the same for every studio; the page that asks for the passphrase;
and what a phone needs to put the site on its home screen. All else is sealed, under a name that
tells nothing.
"""

from __future__ import annotations

from corymb.site.offline import MANIFEST

FOLDER = "locked/"
"""No page stands in it but the door, whatever a studio calls its own."""

DOOR = f"{FOLDER}open.html"
"""The page that asks. What stands behind `#` in its address is where one goes from there."""

LOCK = f"{FOLDER}lock.json"

SEALED = "sealed/"

FOR_ANYONE = ("assets/theme/", "assets/icons/", FOLDER, MANIFEST, "robots.txt")
"""Files, and folders with all that lies in them."""


def is_for_anyone(path: str) -> bool:
    """Whether a file of the staff's site stays as it is, and where it is."""
    return path.startswith(FOR_ANYONE)


def sealed_at(name: str) -> str:
    """The address of a sealed file."""
    return f"{SEALED}{name}.bin"
