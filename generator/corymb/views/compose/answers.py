"""How can an arrangement be made in a week, or what keeps it from that, in words?

`page` is the look of the page on which an answer is told: on a variant's own it isn't named again.
Clients read what isn't out; staff, what nothing stands in for, since that is theirs to mend.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

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
from corymb.views.compose.states import STATE_WORDS
from corymb.views.compose.swaps import swap_view
from corymb.views.compose.week_words import week_words
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
        nearest="" if can or week is None else nearest_words(year_of(catalogue, best.look), week),
    )


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
        return STATE_WORDS[best.state]
    named = f"with the variant ‘{variant.name}’"
    return f"{named} and swaps" if best.state == "swaps" else named


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
        return f"too much would change without {names}"
    more = ", and more in part of it" if always and len(always) < len(weeks) else ""
    now_and_then = "" if always else "at one time or another "
    if catalogue.staff:
        return f"{now_and_then}nothing stands in for {names}{more}"
    return f"not out {now_and_then or 'then'}: {names}{more}".replace(" :", ":")


def not_then(catalogue: Catalogue, bests: Sequence[Best], week: IsoWeek) -> str:
    """What keeps it from being made in a week without any way, when it was last, and is next."""
    if all(best.state == "none" for best in bests):
        return f"Not then. {sentence(never_words(catalogue, bests))}"
    why = why_not(catalogue, [answer_toward_next(catalogue, bests, week)])
    return f"Not then: {why}. {nearest_words(bests, week)}"


def never_words(catalogue: Catalogue, bests: Sequence[Best]) -> str:
    """What keeps it from being made at any time of the year: two that are never out together."""
    stems = [line.stem for line in bests[0].look.lines]
    apart = never_together(stems, catalogue.beds)
    if apart is None:
        return why_not(catalogue, [best.answer for best in bests])
    told = (
        f"{plant_words(catalogue.stem(stem))} stands {spans_of(catalogue.beds.weeks(stem))}"
        for stem in apart
    )
    return f"in no week of the year: {', '.join(told)}"


def nearest_words(bests: Sequence[Best], week: IsoWeek) -> str:
    """When it can be made before a week in which it can't, and when again; '' for never."""
    sides = _sides(bests, week)
    if sides is None:
        return ""
    before, after = map(week_words, sides)
    return f"It can be made until {before}, and again from {after}."


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
