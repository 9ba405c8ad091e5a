"""How can an arrangement be made in a week, or what keeps it from that, in words?

`page` is the look of the page on which an answer is told: on a variant's own it isn't named again.
Clients read what isn't out; staff, what nothing stands in for, since that is theirs to mend.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from datetime import date

from corymb.language import gettext as _
from corymb.studio.values.dates import IsoWeek
from corymb.trade.looks import Look, name_of
from corymb.trade.season.apart import never_together
from corymb.trade.season.best import Best, best_of
from corymb.trade.season.either_side import either_side
from corymb.trade.season.makeable import Answer
from corymb.trade.season.watch import cell_of
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.images import images_of
from corymb.views.compose.plants import names_of, plant_words
from corymb.views.compose.states import words_of_states
from corymb.views.compose.swaps import swap_view
from corymb.views.compose.week_words import day_words, week_words
from corymb.views.compose.wording import sentence, spans_of
from corymb.views.pieces import Link
from corymb.views.season import AnswerView


def answer_view(
    catalogue: Catalogue, best: Best, page: Look | None = None, week: IsoWeek | None = None
) -> AnswerView:
    """The best answer of a week; with the week of the calendar, also when its look is next."""
    answer, can = best.answer, best.state != "none"
    return AnswerView(
        state=best.state,
        words=sentence(state_words(catalogue, best, page)).rstrip("."),
        look=Link(look_name(catalogue, best.look), addresses.of_look(best.look)) if can else None,
        image=images_of(catalogue, best.look) if can else None,
        swaps=tuple(swap_view(catalogue, swap) for swap in answer.swaps),
        blocks="" if can else sentence(why_not(catalogue, [answer])),
        nearest="" if can or week is None else _nearest(catalogue, best.look, week),
    )


def _nearest(catalogue: Catalogue, look: Look, week: IsoWeek) -> str:
    return nearest_words(year_of(catalogue, look), week, catalogue.today)


def year_of(catalogue: Catalogue, look: Look) -> tuple[Best, ...]:
    """The 52 weeks of one look, whatever else its recipe has."""
    return best_of({"": look}, catalogue.makeable)


def look_name(catalogue: Catalogue, look: Look) -> str:
    """`Hedgerow jar`, or `Hedgerow jar: Later in the year`."""
    return name_of(catalogue.studio.recipes[look.recipe], look.variant)


def state_words(catalogue: Catalogue, best: Best, page: Look | None = None) -> str:
    """`as pictured`, `with the variant ‘Later in the year’ and swaps`, `not then`."""
    variant = catalogue.studio.recipes[best.look.recipe].variants.get(best.look.variant)
    if best.state in ("pictured", "none") or variant is None or best.look == page:
        return words_of_states()[best.state]
    if best.state == "swaps":
        return _("with the variant ‘{variant}’ and swaps").format(variant=variant.name)
    return _("with the variant ‘{variant}’").format(variant=variant.name)


def cell_words(catalogue: Catalogue, best: Best, page: Look | None = None) -> str:
    """What a cell of the strip says: `as pictured`, `with swaps: coral zinnia`, `not then`."""
    words = state_words(catalogue, best, page)
    if best.state == "swaps":
        return f"{words}: {names_of(catalogue, [swap.in_ for swap in best.answer.swaps])}"
    return words


def why_not(catalogue: Catalogue, answers: Sequence[Answer]) -> str:
    """What keeps a look from being made all the time, or else what does so most of the time."""
    alone = [answer for answer in answers if not answer.too_much]
    weeks = Counter(stem for answer in alone or answers for stem in answer.blocks)
    always = [stem for stem, count in weeks.items() if count == len(alone or answers)]
    names = names_of(catalogue, always or [stem for stem, _ in weeks.most_common()])
    if not alone:
        told = _("too much would change without {stems}")
    elif not always:
        told = _told_now_and_then(staff=catalogue.staff)
    else:
        told = _told_of_always(staff=catalogue.staff, more=len(always) < len(weeks))
    return told.format(stems=names)


def _told_now_and_then(*, staff: bool) -> str:
    if staff:
        return _("at one time or another nothing stands in for {stems}")
    return _("not out at one time or another: {stems}")


def _told_of_always(*, staff: bool, more: bool) -> str:
    if staff and more:
        return _("nothing stands in for {stems} and, for part of it, others")
    if staff:
        return _("nothing stands in for {stems}")
    if more:
        return _("not out then: {stems} and, for part of it, others")
    return _("not out then: {stems}")


def not_then(catalogue: Catalogue, bests: Sequence[Best], week: IsoWeek) -> str:
    """What keeps it from being made in a week without any way, when it was last, and is next."""
    if all(best.state == "none" for best in bests):
        never = sentence(never_words(catalogue, bests))
        return _("Not then. {why}").format(why=never)
    why = why_not(catalogue, [answer_toward_next(catalogue, bests, week)])
    nearest = nearest_words(bests, week)
    return _("Not then: {why}. {when_then}").format(why=why, when_then=nearest)


def never_words(catalogue: Catalogue, bests: Sequence[Best]) -> str:
    """What keeps it from being made at any time of the year: two that are never out together."""
    stems = [line.stem for line in bests[0].look.lines]
    apart = never_together(stems, catalogue.beds)
    if apart is None:
        return why_not(catalogue, [best.answer for best in bests])
    told = (
        _("{stem} stands {weeks}").format(
            stem=plant_words(catalogue.stem(stem)), weeks=spans_of(catalogue.beds.weeks(stem))
        )
        for stem in apart
    )
    return _("in no week of the year: {stems}").format(stems=", ".join(told))


def nearest_words(bests: Sequence[Best], week: IsoWeek, today: date | None = None) -> str:
    """When it can be made before a week in which it can't, and when again; '' for never.

    With the day of today nothing is told that is past, unless the week itself is.
    """
    sides = _sides(bests, week)
    if sides is None:
        return ""
    before, after = sides
    if today and before.sunday() < today <= week.sunday():
        return _("It can be made again from {day}.").format(day=day_words(after.monday()))
    told = _("It can be made until {before}, and again from {after}.")
    return told.format(before=week_words(before), after=week_words(after))


def answer_toward_next(catalogue: Catalogue, bests: Sequence[Best], week: IsoWeek) -> Answer:
    """The answer, in a week without any way, of the look that can be made next."""
    best, sides = bests[cell_of(week) - 1], _sides(bests, week)
    return answer_of(catalogue, best, bests[cell_of(sides[1]) - 1].look) if sides else best.answer


def answer_of(catalogue: Catalogue, best: Best, look: Look) -> Answer:
    """What one look lacks in a week in which no look of its recipe can be made."""
    if look == best.look:
        return best.answer
    return catalogue.makeable.answers(look)[best.week - 1]


def _sides(bests: Sequence[Best], week: IsoWeek) -> tuple[IsoWeek, IsoWeek] | None:
    return either_side({best.week for best in bests if best.state != "none"}, week)
