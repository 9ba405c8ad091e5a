"""Where do a stem's dates here come from: the book, the way to this place, the studio's log?"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from corymb.studio.models import Stem
from corymb.studio.saying import number_word
from corymb.trade.season.logged import weight
from corymb.trade.season.weeks import thursday
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.moved import doubt_words, moved_words
from corymb.views.compose.wording import sentence, window_words

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
    chance = catalogue.beds.chance(stem.id, thursday(week))
    return " ".join(
        (
            f"The book says {book}.",
            *_moved(catalogue, stem),
            *([f"So here it is {here}."] if here != book else []),
            f"In week {week}: {catalogue.beds.sure(stem.id, week)} ({round(100 * chance)} %).",
        )
    )


def _moved(catalogue: Catalogue, stem: Stem) -> Iterator[str]:
    years = [flush.years for flush in catalogue.beds.flushes(stem.id)]
    if not years:
        return  # it stands all year, here as in the book
    house, shift = catalogue.studio.house, catalogue.beds.shift
    yield sentence(moved_words(house, shift)) or f"Its dates hold good for {house.place.name}."
    if doubt := doubt_words(shift):
        yield doubt
    yield _logged(max(years), alike=len(set(years)) == 1)


def _logged(years: int, *, alike: bool) -> str:
    """What the log counts for; where it speaks of one flush and not of another, for that one."""
    if not years:
        return "Your log doesn't speak of it yet."
    counts = weight(years)
    share = FRACTIONS.get(Fraction(counts).limit_denominator(12), f"{round(100 * counts)} %")
    verb = "year of your log counts" if years == 1 else "years of your log count"
    where = "" if alike else " in the flush that it knows best"
    return f"{number_word(years).capitalize()} {verb} for {share}{where}."
