"""Where do a stem's dates here come from: the book, the way to this place, the studio's log?"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.number_words import number_word
from corymb.studio.models import Stem
from corymb.trade.season.logged import weight
from corymb.trade.season.weeks import thursday
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.moved import doubt_words, moved_words
from corymb.views.compose.season_words import window_words
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import percent_words, sentence


def dates_words(catalogue: Catalogue, stem: Stem) -> str:
    """From the book's dates to those here, and how sure it is in the week of the build."""
    here, week = window_words(catalogue.beds.season(stem.id)), catalogue.week
    book = window_words(stem.in_season)
    chance = catalogue.beds.chance(stem.id, thursday(week))
    sure = _("In week {week}: {sure} ({chance} %).").format(
        week=week,
        sure=trade_word("sureness", catalogue.beds.sure(stem.id, week)),
        chance=round(100 * chance),
    )
    return " ".join(
        (
            _("The book says {season}.").format(season=book),
            *_moved(catalogue, stem),
            *([_("So here it is {season}.").format(season=here)] if here != book else []),
            sure,
        )
    )


def _moved(catalogue: Catalogue, stem: Stem) -> Iterator[str]:
    years = [flush.years for flush in catalogue.beds.flushes(stem.id)]
    if not years:
        return  # it stands all year, here as in the book
    house, shift = catalogue.studio.house, catalogue.beds.shift
    unmoved = _("Its dates hold good for {place}.").format(place=house.place.name)
    yield sentence(moved_words(house, shift)) or unmoved
    if doubt := doubt_words(shift):
        yield doubt
    yield _logged(max(years), alike=len(set(years)) == 1)


def _logged(years: int, *, alike: bool) -> str:
    """What the log counts for; where it speaks of one flush and not of another, for that one."""
    if not years:
        return _("Your log doesn't speak of it yet.")
    if alike:
        told = ngettext(
            "{number} year of your log counts for {share}.",
            "{number} years of your log count for {share}.",
            years,
        )
    else:
        told = ngettext(
            "{number} year of your log counts for {share} in the flush that it knows best.",
            "{number} years of your log count for {share} in the flush that it knows best.",
            years,
        )
    return sentence(told.format(number=number_word(years), share=_share(weight(years))))


def _share(part: Fraction) -> str:
    fractions = {
        Fraction(1, 3): _("a third"),
        Fraction(1, 2): _("half"),
        Fraction(2, 3): _("two thirds"),
        Fraction(3, 4): _("three quarters"),
    }
    whole = percent_words(round(100 * part))
    return fractions.get(part.limit_denominator(12), whole)
