"""How did the book's dates come to this garden, and what does the studio's own log add?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.language import ngettext, noted
from corymb.language.locales import and_list
from corymb.studio.models import StudioFile
from corymb.trade.season.beds import Beds
from corymb.trade.season.circle import gap
from corymb.trade.season.hopkins import Shift
from corymb.trade.season.logged import weight
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.moved import doubt_words, moved_words
from corymb.views.compose.plants import plant_words
from corymb.views.compose.wording import percent_words

LIMITS = noted(
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
        yield " ".join(filter(None, [doubt_words(shift), _(LIMITS)]))
    yield _log(catalogue)


def _moved(house: StudioFile, shift: Shift) -> str:
    book, moved = house.reference_place.name, moved_words(house, shift)
    if not moved:
        told = _(
            "The dates in the stems’ files are those of {book}, and hold good in {place} as they "
            "are."
        )
        return told.format(book=book, place=house.place.name)
    if shift.way.longitude_counts:
        told = _(
            "The dates in the stems’ files are those of {book}. By the bioclimatic law of A. D. "
            "Hopkins (1918: four days for a degree of latitude, five degrees of longitude or 400 "
            "feet of height) they are {moved}."
        )
    else:
        told = _(
            "The dates in the stems’ files are those of {book}. By the bioclimatic law of A. D. "
            "Hopkins (1918: four days for a degree of latitude or 400 feet of height) they are "
            "{moved}."
        )
    return told.format(book=book, moved=moved)


def _log(catalogue: Catalogue) -> str:
    studio, beds = catalogue.studio, catalogue.beds
    spoken_of = [stem for stem in studio.stems if beds.years(stem)]
    if not spoken_of:
        told = _(
            "No log of first and last cuts speaks of these stems yet. Each year of it will count "
            "for more: {one} in its first, {two} in its second."
        )
        return told.format(one=_counts(1), two=_counts(2))
    told = ngettext(
        "The log of {years} speaks of {number} stem. One year of it counts for {one} against the "
        "book, two for {two}, five for {five}.",
        "The log of {years} speaks of {number} stems. One year of it counts for {one} against the "
        "book, two for {two}, five for {five}.",
        len(spoken_of),
    ).format(
        years=and_list(sorted(studio.logs)),
        number=len(spoken_of),
        one=_counts(1),
        two=_counts(2),
        five=_counts(5),
    )
    most = max(spoken_of, key=lambda stem: abs(_change(catalogue, stem)))
    return f"{told} {_first_cut(catalogue, most)}"


def _first_cut(catalogue: Catalogue, stem: str) -> str:
    days = round(_change(catalogue, stem))
    if not days:
        return _("So far it agrees with the book.")
    if days > 0:
        told = ngettext(
            "It moved the first cut of {stem} most: {number} day later.",
            "It moved the first cut of {stem} most: {number} days later.",
            days,
        )
    else:
        told = ngettext(
            "It moved the first cut of {stem} most: {number} day earlier.",
            "It moved the first cut of {stem} most: {number} days earlier.",
            -days,
        )
    return told.format(stem=plant_words(catalogue.stem(stem)), number=abs(days))


def _change(catalogue: Catalogue, stem: str) -> float:
    """By how many days the log moved a stem's first cut; 0 where it stands all year."""
    logged = catalogue.beds.flushes(stem)
    book = Beds(catalogue.studio.stems, {}, catalogue.beds.shift).flushes(stem)
    return gap(book[0].first, logged[0].first) if book and logged else 0.0


def _counts(years: int) -> str:
    """How much so many years of log count against the book: `33 %`."""
    return percent_words(round(100 * weight(years)))
