"""How did the book's dates come to this garden, and what does the studio's own log add?"""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from corymb.studio.models import StudioFile
from corymb.studio.saying import and_list, counted
from corymb.trade.season.beds import Beds
from corymb.trade.season.circle import gap
from corymb.trade.season.hopkins import Shift
from corymb.trade.season.logged import weight
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.moved import doubt_words, moved_words
from corymb.views.compose.plants import plant_words
from corymb.views.compose.wording import percent

LIMITS = (
    "The law is a rule of thumb, drawn up for the springs of North America and for woody plants "
    "out of doors. A warm wall or a frost pocket outweighs it, and it knows nothing of what is "
    "grown under glass."
)


def season_note(catalogue: Catalogue) -> tuple[str, ...]:
    """A few paragraphs, the first of them on the book's dates."""
    return tuple(_note(catalogue))


def _note(catalogue: Catalogue) -> Iterator[str]:
    house, shift = catalogue.studio.house, catalogue.beds.shift
    yield _moved(house, shift)
    if moved_words(house, shift):
        yield " ".join(filter(None, [doubt_words(shift), LIMITS]))
    yield _log(catalogue)


def _moved(house: StudioFile, shift: Shift) -> str:
    book = f"The dates in the stems’ files are those of {house.reference_place.name}"
    moved = moved_words(house, shift)
    if not moved:
        return f"{book}, and hold good in {house.place.name} as they are."
    longitude = ", five degrees of longitude" if shift.way.longitude_counts else ""
    return (
        f"{book}. By the bioclimatic law of A. D. Hopkins (1918: four days for a degree of "
        f"latitude{longitude} or 400 feet of height) they are {moved}."
    )


def _log(catalogue: Catalogue) -> str:
    studio, beds = catalogue.studio, catalogue.beds
    spoken_of = [stem for stem in studio.stems if beds.years(stem)]
    if not spoken_of:
        return (
            "No log of first and last cuts speaks of these stems yet. Each year of it will count "
            f"for more: {_counts(1)} in its first, {_counts(2)} in its second."
        )
    years = and_list(sorted(studio.logs))
    many = counted(len(spoken_of), "stem", "stems")
    most = max(spoken_of, key=lambda stem: abs(_change(catalogue, stem)))
    return (
        f"The log of {years} speaks of {many}. One year of it counts for {_counts(1)} against "
        f"the book, two for {_counts(2)}, five for {_counts(5)}. "
        f"{_first_cut(catalogue, most)}"
    )


def _weight(catalogue: Catalogue, years: int) -> str:
    return percent(Decimal(round(100 * weight(years))) / 100, catalogue.studio.house)


def _first_cut(catalogue: Catalogue, stem: str) -> str:
    days = round(_change(catalogue, stem))
    if not days:
        return "So far it agrees with the book."
    word = "later" if days > 0 else "earlier"
    many = counted(abs(days), "day", "days")
    return f"It moved the first cut of {plant_words(catalogue.stem(stem))} most: {many} {word}."


def _change(catalogue: Catalogue, stem: str) -> float:
    """By how many days the log moved a stem's first cut; 0 where it stands all year."""
    logged = catalogue.beds.flushes(stem)
    book = Beds(catalogue.studio.stems, {}, catalogue.beds.shift).flushes(stem)
    return gap(book[0].first, logged[0].first) if book and logged else 0.0


def _counts(years: int) -> str:
    """How much so many years of log count against the book: `33 %`."""
    return f"{round(100 * weight(years))} %"
