"""What stands on the labels of an order's buckets, sheet by sheet?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from corymb.trade.load.buckets import Filled
from corymb.trade.orders.due import Due
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.code import code_of
from corymb.views.compose.orders.cuts import cut_for, packed_for
from corymb.views.compose.orders.packing import head_of, order_link
from corymb.views.compose.orders.when import weekday_and_day
from corymb.views.papers import LabelsView, LabelView, PartView
from corymb.views.pieces import Link

ON_A_SHEET = 8

LEADS = "The code on each label opens the bench sheets of this order: {address}"
LEADS_NOWHERE = (
    "The code on each label holds only the way to the bench sheets within this site: {address}. "
    "A camera can't follow that by itself. Write under `staff_url` in mkdocs.yml where your "
    "people open this site, and it will."
)


def labels_view(catalogue: Catalogue, due: Due, staff_url: str) -> LabelsView:
    """A label for every bucket that stands overnight; `staff_url` is where the site is opened."""
    labels = tuple(_labels(catalogue, due))
    bench = addresses.of_bench(due.id)
    address = f"{staff_url}{bench}"
    told = LEADS if staff_url else LEADS_NOWHERE
    return LabelsView(
        head=head_of(due),
        order=order_link(due),
        bench=Link("Bench sheets", bench),
        code=code_of(address),
        told=told.format(address=address),
        sheets=tuple(_sheets(labels)),
    )


def _sheets(labels: tuple[LabelView, ...]) -> Iterator[tuple[LabelView, ...]]:
    for start in range(0, len(labels), ON_A_SHEET):
        yield labels[start : start + ON_A_SHEET]


def _labels(catalogue: Catalogue, due: Due) -> Iterable[LabelView]:
    buckets = packed_for(catalogue, due).buckets
    cut = f"Cut {weekday_and_day(cut_for(catalogue, due).day)}"
    for number, bucket in enumerate(buckets.all, 1):
        goes = "To the bench" if number <= len(buckets.bench) else "Goes as it stands"
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
        )


def _stands(bucket: Filled) -> str:
    if bucket.dry:
        return "no water"
    return "" if bucket.stands else "too long to stand alone: hold them up"
