"""The pages that ask for the passphrase: all that a stranger sees of a locked site.

One stands at the front, one where hosts look for a page to show for what isn't there, so that a
link from before finds it too; and one is the door, to which a phone goes that has locked itself.
"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.site.locked.places import DOOR
from corymb.site.render import render
from corymb.views.frame import PageFrame, SiteFrame
from corymb.views.locked import LockedView

FRONT, LOST = "index.html", "404.html"


def doors(name: str, language: str, base_path: str) -> dict[str, bytes]:
    """The pages, in the language that is spoken; of the studio they say its name alone."""
    site = SiteFrame(
        name=name,
        tagline="",
        language=language,
        audience="staff",
        menu=(),
        foot=(),
        email="",
        phone="",
        place="",
        base_path=base_path,
    )
    return {path: render(site, _page(path), LockedView(name)) for path in (FRONT, LOST, DOOR)}


def _page(path: str) -> PageFrame:
    return PageFrame(
        path=path,
        template="locked.html",
        section="",
        title=_("Locked"),
        description="",
        indexed=False,
    )
