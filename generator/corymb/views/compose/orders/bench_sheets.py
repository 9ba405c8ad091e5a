"""What does the bench sheet of an order's line show: what to fetch, how it is made and should look?

Counts and words are of the stems as they will be: with what the cutting day put in place of what
doesn't stand.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping

from corymb.language import gettext as _
from corymb.language import ngettext, pgettext
from corymb.language.locales import figures
from corymb.trade.hours.learning import EXPERIENCED, HELPER, making_minutes
from corymb.trade.money.from_recipe import minutes_of
from corymb.trade.orders.as_cut import as_cut, stems_of
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.sizes import piece_size
from corymb.views.compose import addresses
from corymb.views.compose.answers import look_name
from corymb.views.compose.bench import conditioning
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import time_words
from corymb.views.compose.hazards import at_the_bench
from corymb.views.compose.orders.bench_drawn import DrawnLine, sheet_drawn
from corymb.views.compose.orders.brief import brief_of
from corymb.views.compose.orders.cuts import cut_for, packed_for
from corymb.views.compose.orders.lines import leaves_words
from corymb.views.compose.orders.packing import head_of, order_link
from corymb.views.compose.orders.sheet_stems import (
    missing_words,
    role_stems,
    share,
    sundry_words,
    swap_words,
    words_as_made,
)
from corymb.views.compose.sizes import told_cm
from corymb.views.papers import BenchSheet, BenchSheetsView
from corymb.views.pieces import Fact, Link


def bench_sheets_view(
    catalogue: Catalogue, due: Due, drawn: Mapping[tuple[str, int], DrawnLine] | None = None
) -> BenchSheetsView:
    """A sheet for every line of an order; `drawn` are the lines that have drawings of their own."""
    keys = _keys(due)
    sheets = tuple(
        _sheet(catalogue, due, line, drawn or {}, key)
        for line, key in zip(due.lines, keys, strict=True)
    )
    key = f"{due.id} {due.day}"
    return BenchSheetsView(key, head_of(due), order_link(due), brief_of(catalogue, due), sheets)


def _keys(due: Due) -> Iterator[str]:
    """A key for each line that no other line of the order has, and that outlasts its place."""
    known: Counter[str] = Counter()
    for line in due.lines:
        key = f"{line.piece.look.id} {line.piece.size}".rstrip()
        known[key] += 1
        yield key if known[key] == 1 else f"{key} {known[key]}"


def _sheet(
    catalogue: Catalogue,
    due: Due,
    line: DueLine,
    drawn: Mapping[tuple[str, int], DrawnLine],
    key: str,
) -> BenchSheet:
    day = cut_for(catalogue, due)
    mets = as_cut(due, line, day)
    piece = line.piece
    words = words_as_made(catalogue, line, mets)
    counts = stems_of(mets)
    stems = [catalogue.stem(known_as) for known_as in counts]
    total = sum(counts.values())
    made = not piece.in_buckets
    return BenchSheet(
        key=key,
        number=line.number,
        of=len(due.lines),
        quantity=line.quantity,
        look=Link(look_name(catalogue, piece.look), addresses.of_look(piece.look)),
        leaves=_leaves(line, line.number in packed_for(catalogue, due).there),
        drawn=sheet_drawn(catalogue, due, line, mets, drawn),
        facts=tuple(_facts(catalogue, line)),
        roles=role_stems(catalogue, mets, line.quantity, packed_for(catalogue, due).buckets.all),
        stems_each=share(total, line.quantity),
        stems_all=total,
        fetch=tuple(sundry_words(catalogue, line)) if made else (),
        swaps=tuple(swap_words(catalogue, mets, day)),
        short=tuple(missing_words(catalogue, mets, piece.from_the_mix)),
        steps=words.steps("method") if made else (),
        looks_right=words.steps("looks_right_when") if made else (),
        careful=tuple(dict.fromkeys([*(words.cautions() if made else ()), *at_the_bench(stems)])),
        conditioning=conditioning(stems),
    )


def _leaves(line: DueLine, there: bool) -> str:
    """How it leaves the bench, or that it is made elsewhere."""
    where = _("made up where it will stand") if there else ""
    return ", ".join(filter(None, [leaves_words(line), where]))


def _facts(catalogue: Catalogue, line: DueLine) -> Iterator[Fact]:
    """How big it is, and how long it takes: one, and all of them by either hand."""
    piece = line.piece
    size = piece_size(piece.recipe, piece.recipe.sizes.get(piece.size))
    across, high = (figures(told_cm(cm, piece.size)) for cm in (size.across_cm, size.high_cm))
    yield Fact(_("{across} x {high} cm").format(across=across, high=high), _("across, high"))
    if piece.in_buckets:
        return
    minutes = float(minutes_of(piece, catalogue.studio.recipes))
    yield Fact(time_words(round(minutes)), _("for one"))
    for hand, who in (
        (EXPERIENCED, pgettext("hand", "practised")),
        (HELPER, pgettext("hand", "helper")),
    ):
        alone = making_minutes(minutes, line.quantity, hand)
        # L10N: how long all pieces take {who}: a practised hand, or a helper.
        every = ngettext("all {number}, {who}", "all {number}, {who}", line.quantity)
        told = every.format(number=line.quantity, who=who) if line.quantity > 1 else who
        yield Fact(time_words(alone), told)
