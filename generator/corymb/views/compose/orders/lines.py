"""How is a line of an order shown: what it is, and how it can be made in the order's week?"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.studio.values.dates import IsoWeek
from corymb.trade.order_lines import REGULAR
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.timed import LineThen
from corymb.trade.season.best import Best
from corymb.trade.season.weeks import week_on
from corymb.views.compose import addresses
from corymb.views.compose.answers import answer_view, look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.images import images_of
from corymb.views.compose.orders.cuts import has_papers
from corymb.views.compose.orders.planned import planned_view
from corymb.views.compose.trade_words import size_words, trade_word
from corymb.views.orders import OrderLineView
from corymb.views.pieces import Link
from corymb.views.season import AnswerView


def line_view(catalogue: Catalogue, due: Due, then: LineThen) -> OrderLineView:
    """A line, with its answer for the week of its day."""
    line, look = then.line, then.line.piece.look
    best = best_then(then)
    planned = planned_view(catalogue, due, line) if has_papers(catalogue, due) else None
    each = sum(then.stems.values())
    return OrderLineView(
        number=line.number,
        quantity=line.quantity,
        look=Link(look_name(catalogue, look), addresses.of_look(look)),
        leaves=leaves_words(line),
        image=images_of(catalogue, look),
        stems_each=planned.each if planned else f"{each}",
        stems=planned.stems if planned else each * line.quantity,
        planned=planned,
        answer=answer_view(catalogue, best, look, IsoWeek.of(due.day)),
        sure=trade_word("sureness", best.sure),
        instead=_instead(catalogue, due, best),
        bench=_bench(catalogue, due, line),
    )


def _bench(catalogue: Catalogue, due: Due, line: DueLine) -> Link | None:
    """Its bench sheet, where the cut is planned."""
    if not has_papers(catalogue, due):
        return None
    return Link(_("Bench sheet"), addresses.of_bench(due.id, line.number))


def best_then(then: LineThen) -> Best:
    """The answer of the line's own look, as a week's."""
    return Best(then.answer.week, then.line.piece.look, then.answer, then.answer.state)


def leaves_words(line: DueLine) -> str:
    """The size, where it isn't the regular one, and how it leaves: `small, in buckets`."""
    piece = line.piece
    words = [
        size_words(piece.size) if piece.size != REGULAR else "",
        _("in buckets") if piece.in_buckets else "",
        _("from the mix") if piece.from_the_mix else "",
    ]
    return ", ".join(filter(None, words))


def line_words(catalogue: Catalogue, line: DueLine) -> str:
    """`12 Hedgerow jar: Later in the year, small, in buckets`."""
    return number_of(line.quantity, piece_words(catalogue, line))


def number_of(number: int, what: str) -> str:
    """So many pieces, what they are told already: `12 Hedgerow jar, small`."""
    return _("{number} {what}").format(number=number, what=what)


def piece_words(catalogue: Catalogue, line: DueLine) -> str:
    """`Hedgerow jar: Later in the year, small, in buckets`."""
    name = look_name(catalogue, line.piece.look)
    return ", ".join(filter(None, [name, leaves_words(line)]))


def _instead(catalogue: Catalogue, due: Due, best: Best) -> AnswerView | None:
    """Another look of the recipe, for one that can't be made as pictured."""
    if best.state in ("pictured", "variant"):
        return None
    other = catalogue.best[best.look.recipe][week_on(due.day) - 1]
    if other.look == best.look or other.state == "none":
        return None
    better = other.state in ("pictured", "variant") or best.state == "none"
    return answer_view(catalogue, other, best.look) if better else None
