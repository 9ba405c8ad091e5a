"""How can an arrangement be made in a week, in words a client reads? And the year in spells of it.

A spell is weeks on end with one answer: the same look with the same swaps, or none. `page` is the
look of the page on which an answer is told: on a variant's own it isn't named again.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import groupby

from corymb.trade.looks import Look, name_of
from corymb.trade.season.best import Best
from corymb.trade.season.sureness import WORDS
from corymb.trade.season.weeks import WEEKS
from corymb.trade.swaps.reasons import new_hazards, reasons
from corymb.trade.swaps.standing_in import StandIn
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import at_the_bench, take_home
from corymb.views.compose.images import images_of
from corymb.views.compose.wording import sentence, third_of
from corymb.views.pieces import Link
from corymb.views.season import AnswerView, SpellView, SwapView

NAMED = 3  # more stems than this are only counted: our own choice, no source


def answer_view(catalogue: Catalogue, best: Best, page: Look | None = None) -> AnswerView:
    """The best answer of a week."""
    answer, can = best.answer, best.state != "none"
    return AnswerView(
        state=best.state,
        words=_state_words(catalogue, best, page),
        look=Link(look_name(catalogue, best.look), addresses.of_look(best.look)) if can else None,
        image=images_of(catalogue, best.look) if can else None,
        swaps=tuple(swap_view(catalogue, swap) for swap in answer.swaps),
        blocks="" if can else _blocks(catalogue, [best]),
        nearest="" if can else _nearest(best),
    )


def swap_view(catalogue: Catalogue, swap: StandIn) -> SwapView:
    """A swap in words, with why, and with what to be careful of where that is new."""
    going, coming = catalogue.stem(swap.out), catalogue.stem(swap.in_)
    cautions_of = at_the_bench if catalogue.staff else take_home
    is_new = new_hazards(swap, catalogue.studio.stems)
    return SwapView(
        words=f"{swap.in_count} {coming.name} for {swap.out_count} {going.name}",
        coming=Link(coming.name, addresses.of_stem(swap.in_)),
        going=Link(going.name, addresses.of_stem(swap.out)),
        reasons=reasons(swap, catalogue.studio.stems),
        careful=cautions_of([coming]) if is_new else (),
    )


def look_name(catalogue: Catalogue, look: Look) -> str:
    """`Hedgerow jar`, or `Hedgerow jar: Later in the year`."""
    return name_of(catalogue.studio.recipes[look.recipe], look.variant)


def cell_words(catalogue: Catalogue, best: Best, page: Look | None = None) -> str:
    """What a cell of the strip says: `as pictured`, `with swaps: Zinnia, coral`, `not then`."""
    words = _state_words(catalogue, best, page)
    words = words[0].lower() + words[1:]
    if best.state == "swaps":
        return f"{words}: {names_of(catalogue, [swap.in_ for swap in best.answer.swaps])}"
    return words


def names_of(catalogue: Catalogue, stems: Sequence[str]) -> str:
    """`Dahlia, shell; Cosmos, white and 4 more`: many names hold a comma themselves."""
    names = [catalogue.stem(stem).name for stem in stems]
    if len(names) > NAMED + 1:
        names[NAMED:] = [f"{len(names) - NAMED} more"]
    *most, last = names or [""]
    return f"{'; '.join(most)} and {last}" if most else last


def spells_of(
    catalogue: Catalogue, bests: Sequence[Best], page: Look | None = None
) -> tuple[SpellView, ...]:
    """The year in spells, from the week of the build on."""
    start = WEEKS.index(catalogue.week)
    turned = [*bests[start:], *bests[:start]]
    runs = [list(run) for _, run in groupby(turned, key=_same)]
    if len(runs) > 1 and _same(runs[0][0]) == _same(runs[-1][0]):
        runs = [[*runs[-1], *runs[0]], *runs[1:-1]]
    return tuple(_spell(catalogue, run, page) for run in runs)


def sure_words(bests: Iterable[Best]) -> str:
    """How sure a run of weeks is: one word, or those of its best week and of its ends."""
    found = sorted({WORDS.index(best.sure) for best in bests})
    best, worst = WORDS[found[0]], WORDS[found[-1]]
    return best if best == worst else f"{best}, {worst} at the ends"


def _same(best: Best) -> tuple[object, ...]:
    return (best.state, *([best.look.id, best.answer.swaps] if best.state != "none" else []))


def _spell(catalogue: Catalogue, run: Sequence[Best], page: Look | None) -> SpellView:
    start, end = third_of(run[0].week), third_of(run[-1].week)
    when = "all year" if len(run) == len(WEEKS) else start if start == end else f"{start} to {end}"
    answer = answer_view(catalogue, run[0], page)
    if answer.state == "none":
        answer = replace(answer, blocks=_blocks(catalogue, run), nearest=_nearest_to_any(run))
    return SpellView(sentence(when).rstrip("."), _weeks(run), sure_words(run), answer)


def _weeks(run: Sequence[Best]) -> str:
    first, last = run[0].week, run[-1].week
    return f"week {first}" if first == last else f"weeks {first} to {last}"


def _state_words(catalogue: Catalogue, best: Best, page: Look | None) -> str:
    variant = catalogue.studio.recipes[best.look.recipe].variants.get(best.look.variant)
    named = f"‘{variant.name}’" if variant and best.look != page else ""
    return {
        "pictured": "As pictured",
        "variant": f"As {named}",
        "swaps": f"As {named}, with swaps" if named else "With swaps",
        "none": "Not then",
    }[best.state]


def _blocks(catalogue: Catalogue, run: Sequence[Best]) -> str:
    """What keeps it from being made all the time, or else what does so most of the time."""
    alone = [best.answer for best in run if not best.answer.too_much]
    answers = alone or [best.answer for best in run]
    weeks = Counter(stem for answer in answers for stem in answer.blocks)
    always = [stem for stem, count in weeks.items() if count == len(answers)]
    names = names_of(catalogue, always or [stem for stem, _ in weeks.most_common()])
    if not alone:
        return f"Too much would change without {names}."
    return f"Nothing stands in for {names}."


def _nearest(best: Best) -> str:
    week = best.answer.nearest
    return sentence(f"the nearest is {third_of(week)}") if week else ""


def _nearest_to_any(run: Sequence[Best]) -> str:
    """Before them and after; with their weeks, for the same third may hold both yes and no."""
    weeks = dict.fromkeys(best.answer.nearest for best in run if best.answer.nearest)
    either = " or ".join(f"{third_of(week)} (week {week})" for week in weeks)
    return sentence(f"the nearest is {either}" if either else "")
