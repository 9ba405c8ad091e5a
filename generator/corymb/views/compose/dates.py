"""Where do a stem's dates here come from: the book, the way to this place, the studio's log?"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from corymb.studio.models import Stem
from corymb.studio.models.studio_file import StudioFile
from corymb.studio.saying import and_list, counted
from corymb.trade.season.hopkins import (
    DAYS_A_DEGREE_OF_LATITUDE,
    DAYS_A_DEGREE_OF_LONGITUDE,
    DAYS_A_METRE,
    Shift,
)
from corymb.trade.season.logged import weight
from corymb.trade.season.weeks import thursday
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.wording import window_words

NOTICED = 0.5  # days; less changes no date
NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
FRACTIONS = {
    Fraction(1, 3): "a third",
    Fraction(1, 2): "half",
    Fraction(2, 3): "two thirds",
    Fraction(3, 4): "three quarters",
}


def dates_words(catalogue: Catalogue, stem: Stem) -> str:
    """From the book's dates to those here, and how sure it is in the week of the build."""
    here, week = window_words(catalogue.beds.season(stem.id)), catalogue.week
    book = window_words(stem.in_season)
    sure, chance = (
        catalogue.beds.sure(stem.id, week),
        catalogue.beds.chance(stem.id, thursday(week)),
    )
    return " ".join(
        (
            f"The book says {book}.",
            *_moved(catalogue, stem),
            *([f"So here it is {here}."] if here != book else []),
            f"In week {week}: {sure} ({round(100 * chance)} %).",
        )
    )


def _moved(catalogue: Catalogue, stem: Stem) -> Iterator[str]:
    flushes = catalogue.beds.flushes(stem.id)
    if not flushes:
        return  # it stands all year, here as in the book
    yield move_words(catalogue.studio.house, catalogue.beds.shift)
    yield _logged(max(flush.years for flush in flushes))


def move_words(house: StudioFile, shift: Shift) -> str:
    """How far, and why, the book's dates are moved for the studio's place."""
    place = house.place.name
    if abs(shift.days) < NOTICED and not shift.half_year:
        return f"Its dates hold good for {place}."
    days = counted(round(abs(shift.days)), "day", "days")
    later = "later in spring, earlier in autumn"
    earlier = "earlier in spring, later in autumn"
    how_far = [f"up to {days}"] if abs(shift.days) >= NOTICED else []
    half_year = ["half a year, to the other half of the world"] if shift.half_year else []
    why = and_list(_ways(house, shift))
    moved = f"Moved by {and_list([*half_year, *how_far])} for {place}"
    if not how_far:
        return f"{moved}."
    return f"{moved}, {why}: {later if shift.days > 0 else earlier}."


def _ways(house: StudioFile, shift: Shift) -> Iterator[str]:
    """`1.1 degrees further north`, `20 m lower`; eastwards only where that was counted."""
    place, book = house.place, house.reference_place
    polewards = abs(place.latitude) - abs(book.latitude)
    upwards = place.height.metres - book.height.metres
    counted_so_far = DAYS_A_DEGREE_OF_LATITUDE * polewards + DAYS_A_METRE * upwards
    eastwards = (shift.days - counted_so_far) / DAYS_A_DEGREE_OF_LONGITUDE
    to_the_pole = "nearer the pole" if shift.half_year else _further(shift.south)
    to_the_equator = "nearer the equator" if shift.half_year else _further(not shift.south)
    yield from _way(polewards, "degree", to_the_pole, to_the_equator)
    yield from _way(eastwards, "degree", "further east", "further west")
    if round(abs(upwards)):
        yield f"{abs(upwards):.0f} m {'higher' if upwards > 0 else 'lower'}"


def _further(south: bool) -> str:
    return "further south" if south else "further north"


def _way(degrees: float, unit: str, there: str, back: str) -> Iterator[str]:
    size = f"{abs(degrees):.1f}".removesuffix(".0")
    if size != "0":
        yield f"{size} {unit}{'' if size == '1' else 's'} {there if degrees > 0 else back}"


def _logged(years: int) -> str:
    if not years:
        return "Your log doesn't speak of it yet."
    counts = weight(years)
    share = FRACTIONS.get(counts, f"{round(100 * counts)} %")
    number = NUMBERS[years] if years < len(NUMBERS) else str(years)
    verb = "year of your log counts" if years == 1 else "years of your log count"
    return f"{number.capitalize()} {verb} for {share}."
