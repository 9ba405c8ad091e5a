"""Which pages does a phone keep for the field, and what do they show?

First what is carried out: this week and next, with their cut lists, orders and papers. Then what
is looked up there: every arrangement with its steps, every flower and lesson, the lists, the
house's own pages. All else (made work, other weeks, the sizes side by side, other lights) is kept
once it was visited. Of a photo one width is kept, a phone's.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from html import unescape
from posixpath import dirname, join, normpath
from urllib.parse import unquote

from corymb.studio.values.dates import IsoWeek
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cuts import has_papers
from corymb.views.compose.orders.shown import shown_dues

SHOWN = re.compile(r'\s(?:src|srcset)="([^"]*)"')
PHOTO = re.compile(r"assets/photos/(?P<photo>[^/]+)-(?P<width>\d+)\.avif")
PHONE_PX = 780
"""How wide a photo has to be there: a phone's 390 CSS pixels at two of its own each."""

FRAME = ("assets/theme/css/", "assets/theme/js/", "assets/theme/fonts/", "assets/theme/icon.svg")
LOOKED_UP = ("arrangements/", "styles/", "flowers/", "lessons/", "practice/")
AS_VISITED = ("assets/sizes/",)
PIXELS = (".avif", ".jpg")
"""Of a drawing that a page shows so, the drawing itself is kept."""

NOT_NEEDED = (addresses.MADE, addresses.NOT_FOUND)


def kept_first(catalogue: Catalogue) -> list[str]:
    """The pages that are carried out, in the order in which they are missed."""
    now = IsoWeek.of(catalogue.today)
    weeks = (now, now.plus(1))
    dues = [due for due in shown_dues(catalogue) if IsoWeek.of(due.day) in weeks]
    wanted = {due.id for due in dues}
    cuts = [
        addresses.of_cut(cut.day)
        for cut in catalogue.cut_days
        if IsoWeek.of(cut.day) in weeks or wanted & {due.id for due in cut.dues}
    ]
    orders = [address for due in dues for address in _of_order(catalogue, due.id)]
    return [
        addresses.NO_SIGNAL,
        addresses.THIS_WEEK,
        *(addresses.of_week(str(week)) for week in weeks),
        addresses.ORDERS,
        *cuts,
        *orders,
    ]


def _of_order(catalogue: Catalogue, due_id: str) -> Iterator[str]:
    yield addresses.of_due(due_id)
    if any(has_papers(catalogue, due) for due in shown_dues(catalogue) if due.id == due_id):
        yield addresses.of_bench(due_id)
        yield addresses.of_labels(due_id)
        yield addresses.of_load(due_id)
        yield addresses.of_collection(due_id)


def looked_up(pages: Iterable[str]) -> list[str]:
    """The pages of a site that are looked up in the field, whichever week it is."""
    return [
        path
        for path in pages
        if path.startswith(LOOKED_UP) or ("/" not in path and path not in NOT_NEEDED)
    ]


def shown_on(pages: Iterable[str], made: Mapping[str, bytes]) -> list[str]:
    """What these pages show: their pictures, and of each photo one file."""
    found = dict.fromkeys(
        image
        for page in pages
        for image in _images(page, made[page].decode())
        if not image.startswith(AS_VISITED)
    )
    photos: dict[str, list[tuple[int, str]]] = {}
    for image in found:
        if match := PHOTO.fullmatch(image):
            photos.setdefault(match["photo"], []).append((int(match["width"]), image))
    drawn = [image for image in found if not image.endswith(PIXELS)]
    return [*drawn, *map(_for_a_phone, photos.values())]


def _images(page: str, html: str) -> Iterator[str]:
    """The addresses of a page's images, from the site's root."""
    for value in SHOWN.findall(html):
        for each in unescape(value).split(","):
            address = each.split()[0] if each.strip() else ""
            if address.startswith("data:"):
                break
            if address and not address.endswith(".js"):
                yield normpath(join(dirname(page), unquote(address)))


def _for_a_phone(files: list[tuple[int, str]]) -> str:
    """The narrowest that is wide enough, or else the widest."""
    wide_enough = [file for file in files if file[0] >= PHONE_PX]
    return (min(wide_enough) if wide_enough else max(files))[1]
