"""Wild carrot, dill, bishop's flower, yarrow: many small heads on rays, level at the top."""

from dataclasses import dataclass

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, varied
from corymb.picture.geometry import Point
from corymb.picture.paths import bow
from corymb.picture.seed import give
from corymb.picture.shapes import filling, spiral

FLORETS = 22  # in a small head


@dataclass(frozen=True)
class View:
    """From where it is seen; lengths in radii of the whole head."""

    deep: float  # how far the small heads spread from back to front
    arch: float  # how much the middle stands above the rim
    lift: float
    foot: float  # where the rays leave the stem
    small: float  # a small head, against the room there is for it


VIEWS = (
    View(deep=0.7, arch=0.12, lift=-0.22, foot=0.12, small=0.98),  # from a little above
    View(deep=0.4, arch=0.34, lift=-0.1, foot=0.62, small=1.16),  # from the side
    View(deep=0.96, arch=0.0, lift=0.0, foot=0.0, small=0.92),  # from the front
)


def draw(head: Head) -> Drawn:
    """Rays from the stem's end to a flattened dome of small heads."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    view = VIEWS[head.view % len(VIEWS)]
    count = min(21, max(12, round(head.across_cm * 1.8)))
    small = r * 0.98 / count**0.5 * view.small
    places = [_seen(place, head, view, small) for place in filling(count, 1 - small / r)]
    places.sort(key=lambda place: place.y)
    foot = Point(0, view.foot * r)
    for place in places:
        bend = Point(place.x * 0.6, foot.between(place, 0.4).y)
        sheet.line(bow(foot, bend, place, place), varied(head.green, rng), r * 0.024)
    for place in places:
        _small_head(sheet, head, place, small)
    return sheet.finished()


def _seen(at: Point, head: Head, view: View, small: float) -> Point:
    """A place on the disc of radius 1, as it is seen on the dome."""
    up = view.arch * (1 - min(1.0, at.x**2 + at.y**2)) - view.lift
    y = at.y * view.deep - up
    return Point(
        round(at.x * head.radius + give(head.rng, small * 0.1), 1),
        round(y * head.radius + give(head.rng, small * 0.2), 1),
    )


def _small_head(sheet: Sheet, head: Head, place: Point, small: float) -> None:
    """Florets in two sizes, the outer ones larger and of the first colour; a green point amid."""
    light = give(head.rng, 0.02)
    groups: dict[tuple[bool, str], list[Point]] = {}
    for order, spot in enumerate(spiral(FLORETS, small * 0.86, 0.84)):
        colour = head.palette.at(1 - (order + 0.5) / FLORETS)
        at = Point(place.x + spot.x, place.y + spot.y)
        groups.setdefault((order < FLORETS // 3, colour), []).append(at)
    for (inner, colour), spots in sorted(groups.items()):
        across = small * (0.26 if inner else 0.34)
        sheet.dot_layer(spots, across, shade(colour, light + 0.015 * inner), small * 0.09)
    sheet.dots([place], small * 0.2, shade(head.green, 0.05), True)
