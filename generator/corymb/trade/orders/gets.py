"""What does each order get of a cut, what is left over, and which buckets hold so many stems?

What an order gets is what it asked for, its stand-ins and its spare, cut or bought in; and what
was left over of the cut and goes into its pieces from the mix.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping

from corymb.studio.models import Stem
from corymb.studio.models.studio_file import StudioFile
from corymb.studio.studio import Studio
from corymb.trade.dried import is_dried
from corymb.trade.load.buckets import Filled, Lot, fill
from corymb.trade.load.kinds import BucketKind
from corymb.trade.orders.cut_days import CutDay

HARMS_OTHERS = ("irritant sap", "burns in sun")
"""Sap that harms skin clouds the water for other stems, as spurge and daffodils do. The nearest
that a stem's file tells; common practice, no source."""


def given(day: CutDay, due_id: str) -> dict[str, int]:
    """Whole stems that an order gets, by stem."""
    counts = Counter(day.stems[due_id])
    for each in day.mixed:
        if each.order == due_id:
            counts.update(each.left_over)
    return {stem: count for stem, count in sorted(counts.items()) if count}


def cut_for_it(days: Iterable[CutDay], due_id: str) -> int | None:
    """How many stems are cut for an order, bought ones left out; None where no day is planned."""
    for day in days:
        for due in day.dues:
            if due.id == due_id:
                return sum(given(day, due_id).values()) - sum(day.bought(due).values())
    return None


def left_over(day: CutDay) -> dict[str, int]:
    """Whole stems cut that no order gets, by stem."""
    counts = Counter({cut.stem: cut.left for cut in day.plan.cuts})
    for each in day.mixed:
        counts.subtract(each.left_over)
    return {stem: count for stem, count in sorted(counts.items()) if count}


def bucketed(name: str, counts: Mapping[str, int], studio: Studio) -> tuple[Filled, ...]:
    """So many stems in the studio's buckets."""
    lots = [lot_of(studio.stems[stem], count, studio.house) for stem, count in counts.items()]
    return fill(name, lots, bucket_kinds(studio.house))


def lot_of(stem: Stem, count: int, house: StudioFile) -> Lot:
    """So many of a stem, with what a bucket must know of it.

    Heads bruise where a stem is cut by the studio's delicate step or fewer.
    """
    return Lot(
        stem=stem.id,
        count=count,
        per_bucket=stem.stems_per_bucket,
        shortest_cm=stem.length.shortest_cm,
        longest_cm=stem.length.longest_cm,
        weight_g=stem.weight.grams,
        alone=any(hazard in HARMS_OTHERS for hazard in stem.hazards),
        dry=is_dried(stem),
        delicate=stem.cutting_step <= house.cutting.delicate_step,
    )


def bucket_kinds(house: StudioFile) -> tuple[BucketKind, ...]:
    """The kinds of buckets the studio has."""
    return tuple(
        BucketKind(
            each.name,
            each.across.cm,
            each.high.cm,
            each.water.litres,
            each.empty_weight.grams / 1000,
        )
        for each in house.buckets
    )
