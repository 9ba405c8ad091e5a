"""How did the book's dates come to this garden, and what does the studio's own log add?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.studio.models.studio_file import ReferencePlace
from corymb.studio.saying import and_list, counted
from corymb.trade.season.beds import Beds
from corymb.trade.season.circle import gap
from corymb.trade.season.hopkins import Shift
from corymb.trade.season.logged import weight
from corymb.views.compose.catalogue import Catalogue

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
    yield _moved(house.reference_place, house.place, shift)
    if not shift.nothing:
        yield LIMITS
    yield _log(catalogue)


def _moved(reference: ReferencePlace, place: ReferencePlace, shift: Shift) -> str:
    book = f"The dates in the stems’ files are those of {reference.name}"
    if shift.nothing:
        return f"{book}, and hold good in {place.name} as they are."
    law = (
        f"{book}. By the bioclimatic law of A. D. Hopkins (1918: four days for a degree of "
        f"latitude or 400 feet of height) {place.name}"
    )
    half = " lies half a year away, and" if shift.half_year else ""
    days = round(abs(shift.days))
    if not days:
        return f"{law}{half} has them within a day."
    many = counted(days, "day", "days")
    later = "later in spring and earlier in autumn"
    sooner = "earlier in spring and later in autumn"
    return f"{law}{half} has them {many} {later if shift.days > 0 else sooner}."


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


def _first_cut(catalogue: Catalogue, stem: str) -> str:
    days = round(_change(catalogue, stem))
    if not days:
        return "So far it agrees with the book."
    word = "later" if days > 0 else "earlier"
    many = counted(abs(days), "day", "days")
    return f"It moved the first cut of {catalogue.stem(stem).name} most: {many} {word}."


def _change(catalogue: Catalogue, stem: str) -> float:
    """By how many days the log moved a stem's first cut; 0 where it stands all year."""
    logged = catalogue.beds.flushes(stem)
    book = Beds(catalogue.studio.stems, {}, catalogue.beds.shift).flushes(stem)
    return gap(book[0].first, logged[0].first) if book and logged else 0.0


def _counts(years: int) -> str:
    """How much so many years of log count against the book: `33 %`."""
    return f"{round(100 * weight(years))} %"
