"""What does a client need who arranges loose stems: what, how many, how, from which bucket?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.trade.orders.as_cut import as_cut, stems_of
from corymb.trade.orders.due import Due, DueLine
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.images import images_of
from corymb.views.compose.orders.cuts import cut_for, packed_for
from corymb.views.compose.orders.sheet_stems import share, words_as_made
from corymb.views.compose.trade_words import trade_word
from corymb.views.papers import ArrangeView


def arranging_views(catalogue: Catalogue, due: Due) -> Iterator[ArrangeView]:
    """For every line whose stems leave loose, how one is made."""
    for line in due.lines:
        if line.piece.in_buckets:
            yield _arranging(catalogue, due, line)


def loose_buckets(catalogue: Catalogue, due: Due) -> Iterator[str]:
    """What is in which bucket, by the number on its label; none where no client arranges."""
    if not any(line.piece.in_buckets for line in due.lines):
        return
    buckets = packed_for(catalogue, due).buckets
    for number, bucket in enumerate(buckets.all, 1):
        if number > len(buckets.bench):
            parts = (f"{p.count} {catalogue.stem(p.lot.stem).name}" for p in bucket.parts)
            yield _("Bucket {number}: {stems}").format(number=number, stems=", ".join(parts))


def _arranging(catalogue: Catalogue, due: Due, line: DueLine) -> ArrangeView:
    mets = as_cut(due, line, cut_for(catalogue, due))
    words = words_as_made(catalogue, line, mets)
    vessel = line.piece.recipe.vessel
    return ArrangeView(
        what=look_name(catalogue, line.piece.look),
        quantity=line.quantity,
        vessel=vessel.name or trade_word("vessel", vessel.kind),
        image=images_of(catalogue, line.piece.look),
        stems=tuple(
            f"{share(count, line.quantity)} {catalogue.stem(stem).name}"
            for stem, count in stems_of(mets).items()
        ),
        steps=words.steps("method"),
        looks_right=words.steps("looks_right_when"),
    )
