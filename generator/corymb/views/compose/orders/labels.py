"""What stands on the labels of an order's buckets, sheet by sheet?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from corymb.language import gettext as _
from corymb.language import noted
from corymb.language.locales import figures
from corymb.trade.load.buckets import Filled
from corymb.trade.orders.due import Due
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.code import code_of
from corymb.views.compose.orders.cut_words import mornings_of
from corymb.views.compose.orders.cuts import cut_for, packed_for
from corymb.views.compose.orders.packing import head_of, order_link
from corymb.views.papers import LabelsView, LabelView, PartView
from corymb.views.pieces import Link

ON_A_SHEET = 8
"""Labels on a side of A4, large enough to read across a cold room. House value, no source."""

LEADS = noted("The code on each label opens the bench sheets of this order: {address}")
NO_CODE = noted(
    "Write under `staff_url` in mkdocs.yml where your people open this site, and each label gets "
    "a code that opens the bench sheets on their phone."
)


def labels_view(catalogue: Catalogue, due: Due, staff_url: str) -> LabelsView:
    """A label for every bucket that stands overnight; `staff_url` is where the site is opened.

    Without it there is no code: a camera can't follow a way within the site.
    """
    labels = tuple(_labels(catalogue, due))
    bench = addresses.of_bench(due.id)
    address = f"{staff_url}{bench}"
    return LabelsView(
        head=head_of(due),
        order=order_link(due),
        bench=Link(_("Bench sheets"), bench),
        code=code_of(address) if staff_url else None,
        told=_(LEADS).format(address=address) if staff_url else _(NO_CODE),
        sheets=tuple(_sheets(labels)),
    )


def _sheets(labels: tuple[LabelView, ...]) -> Iterator[tuple[LabelView, ...]]:
    for start in range(0, len(labels), ON_A_SHEET):
        yield labels[start : start + ON_A_SHEET]


def _labels(catalogue: Catalogue, due: Due) -> Iterable[LabelView]:
    buckets = packed_for(catalogue, due).buckets
    cut = _("Cut {days}").format(days=mornings_of(cut_for(catalogue, due).cut_on(due)))
    for number, bucket in enumerate(buckets.all, 1):
        goes = _("To the bench") if number <= len(buckets.bench) else _("Goes as it stands")
        yield LabelView(
            number=number,
            of=len(buckets.all),
            kind=bucket.kind.name,
            parts=tuple(
                PartView(part.count, catalogue.stem(part.lot.stem).name) for part in bucket.parts
            ),
            stems=sum(part.count for part in bucket.parts),
            cut=cut,
            goes=goes,
            stands=_stands(bucket),
            hours=max(catalogue.stem(p.lot.stem).conditioning.hours for p in bucket.parts),
            water="" if bucket.dry else litres(bucket.kind.water_litres),
        )


def litres(water: float) -> str:
    """`5 L`."""
    return _("{number} L").format(number=figures(water))


def _stands(bucket: Filled) -> str:
    if bucket.dry:
        return _("no water")
    return "" if bucket.stands else _("too long to stand alone: hold them up")
