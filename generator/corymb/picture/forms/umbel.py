"""Wild carrot, dill, bishop's flower, yarrow: many small heads on rays, level at the top."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, varied
from corymb.picture.geometry import Point
from corymb.picture.paths import bow
from corymb.picture.seed import give
from corymb.picture.shapes import filling, spiral


def draw(head: Head) -> Drawn:
    """Seen from a little above: rays from the stem's end to a flattened dome of small heads."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    count = min(21, max(12, round(head.across_cm * 1.8)))
    small = r * 1.02 / count**0.5
    lift = -r * 0.3
    places = [
        Point(place.x + give(rng, small * 0.25), lift + place.y + give(rng, small * 0.2))
        for place in filling(count, r - small, 0.76)
    ]
    places.sort(key=lambda place: place.y)
    for place in places:
        middle = Point(place.x * 0.55, place.y * 0.3)
        sheet.line(bow(Point(0, 0), middle, place, place), varied(head.green, rng), r * 0.022)
    for index, place in enumerate(places):
        _small_head(sheet, head, place, small, index)
    return sheet.finished()


def _small_head(sheet: Sheet, head: Head, place: Point, small: float, index: int) -> None:
    """Florets in two sizes, the outer ones larger; a green point shows through the middle."""
    rng = head.rng
    spots = [
        Point(
            place.x + spot.x + give(rng, small * 0.06), place.y + spot.y + give(rng, small * 0.06)
        )
        for spot in spiral(17, small * 0.88, 0.82)
    ]
    colour = varied(head.palette.pick(index), rng)
    sheet.dot_layer(spots[7:], small * 0.38, colour, small * 0.1)
    sheet.dot_layer(spots[:7], small * 0.28, shade(colour, 0.015), small * 0.08)
    sheet.dots([place], small * 0.2, shade(head.green, 0.05), True)
