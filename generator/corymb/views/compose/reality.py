"""What did an order really take, beside what its recipes asked, and what is learnt from it?"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import and_list
from corymb.studio.models import Order
from corymb.studio.studio import Studio
from corymb.trade.made_orders import learnt, made_orders
from corymb.trade.orders.due import Due
from corymb.trade.reality import Correction, Evidence, MadeOrder
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import time_words
from corymb.views.pieces import Link
from corymb.views.reality import ProposalView, RealityRow, RealityView


def reality_view(catalogue: Catalogue, due: Due) -> RealityView | None:
    """An order's recipes against reality; None where it doesn't tell what it took."""
    if not isinstance(due.order, Order):
        return None
    made = made_orders([due.order], catalogue.studio.recipes)
    if not made:
        return None
    asked = _asked(made[0])
    uncounted = [stem for stem in asked if made[0].used and stem not in made[0].used]
    return RealityView(
        (*_stems(catalogue, made[0], asked), *_time(made[0], due.order)),
        "; ".join(catalogue.stem(stem).name for stem in uncounted),
        tuple(_proposals(catalogue, due.order.id)),
    )


def look_words(studio: Studio, look_id: str) -> str:
    """A look by its names, to stand in a list: `Hedgerow jar (Later in the year)`."""
    recipe_id, __, variant_id = look_id.partition("--")
    recipe = studio.recipes[recipe_id]
    return f"{recipe.name} ({recipe.variants[variant_id].name})" if variant_id else recipe.name


def correction_words(studio: Studio, correction: Correction) -> str:
    """What should be written instead: `5 Dahlia, plum, not 4`, `15 min, not 12 min`."""
    written = correction.written
    if written.stem is None:
        told = _("{time}, not {written}")
        return told.format(time=time_words(correction.proposed), written=time_words(written.number))
    told = _("{number} {stem}, not {written}")
    stem = studio.stems[written.stem].name
    return told.format(number=correction.proposed, stem=stem, written=written.number)


def evidence_words(evidence: Evidence, stem: str | None) -> str:
    """What an order tells: `19 went in where 15 were asked`."""
    if stem is None:
        told = _("it took {time} where {asked} was asked")
        return told.format(time=time_words(evidence.used), asked=time_words(evidence.asked))
    return ngettext(
        "{number} went in where {asked} was asked",
        "{number} went in where {asked} were asked",
        evidence.asked,
    ).format(number=evidence.used, asked=evidence.asked)


def _asked(made: MadeOrder) -> dict[str, int]:
    """What all its recipes asked for, by stem."""
    asked: dict[str, int] = {}
    for line in made.lines:
        for stem, count in line.stems.items():
            asked[stem] = asked.get(stem, 0) + count
    return asked


def _stems(catalogue: Catalogue, made: MadeOrder, asked: Mapping[str, int]) -> Iterator[RealityRow]:
    """The stems that were counted, those that stood in after those that were asked for."""
    for stem in dict.fromkeys([*asked, *made.used]):
        if stem in made.used:
            before, took = asked.get(stem, 0), made.used[stem]
            yield RealityRow(
                catalogue.stem(stem).name,
                addresses.of_stem(stem),
                str(before),
                str(took),
                _difference(before, took),
            )


def _difference(asked: int, took: int) -> str:
    if not asked:
        return _("stood in")
    if took == asked:
        return _("as asked")
    number = abs(took - asked)
    if took > asked:
        return ngettext("{number} more", "{number} more", number).format(number=number)
    return ngettext("{number} fewer", "{number} fewer", number).format(number=number)


def _time(made: MadeOrder, order: Order) -> Iterator[RealityRow]:
    if order.minutes is None:
        return
    asked = sum(line.minutes for line in made.lines)
    longer = order.minutes - asked
    if made.minutes is None:
        words = _("some went in buckets: not compared")
    elif not longer:
        words = _("as asked")
    else:
        told = _("{time} longer") if longer > 0 else _("{time} shorter")
        words = told.format(time=time_words(abs(longer)))
    yield RealityRow(_("Making"), "", time_words(asked), time_words(order.minutes), words)


def _proposals(catalogue: Catalogue, order_id: str) -> Iterator[ProposalView]:
    studio = catalogue.studio
    for correction, place in learnt(studio.orders.values(), studio.recipes):
        for evidence in correction.evidence:
            if evidence.order == order_id:
                look = place.look if place else correction.written.looks[0]
                yield _proposal(catalogue, correction, evidence, look)


def _proposal(
    catalogue: Catalogue, correction: Correction, evidence: Evidence, look: str
) -> ProposalView:
    """What to look at again in the look whose own part of the file says it."""
    studio = catalogue.studio
    recipe, __, variant = look.partition("--")
    others = [look_words(studio, other) for other in evidence.shared_with]
    return ProposalView(
        Link(look_words(studio, look), addresses.of_look(catalogue.looks[recipe][variant])),
        correction_words(studio, correction),
        evidence_words(evidence, correction.written.stem),
        _("shared with {others}").format(others=and_list(others)) if others else "",
    )
