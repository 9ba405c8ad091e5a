"""What a piece from the mix is made of: never of a stem that has left, or that nobody cut."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from typing import Any

import pytest

from corymb.studio.models import Walk
from corymb.studio.studio import Studio
from corymb.trade.load.buckets import Filled
from corymb.trade.orders.as_cut import as_cut, stems_of
from corymb.trade.orders.cut_days import CutDay, cut_days
from corymb.trade.orders.due import Due, Dues
from corymb.trade.orders.from_mix import mixed
from corymb.trade.orders.gets import given
from corymb.trade.orders.needs import options_for
from corymb.trade.orders.night_before import night_before
from corymb.trade.season.makeable import Makeable
from tests.trade.making import recipe
from tests.trade.orders.hall import RECIPES, STEMS, order, studio

WALK = {"rose": 400, "blush": 400, "holly": 400}
SHY = recipe("shy", stems=["2 rose, light", "1 holly, depth, essential"])


def planned(*lines: str, walk: dict[str, int] | None = None, **keys: Any) -> tuple[Due, CutDay]:
    """An order of Thursday 18 June 2026 and its cut: one by one, but blush by nine."""
    read = studio(order("tea", "2026-06-18", *lines, **keys), recipes=(*RECIPES, SHY))
    steps = {"blush": 9}
    stems = {
        each.id: each.model_copy(update={"cutting_step": steps.get(each.id, 1)}) for each in STEMS
    }
    counts = Walk(counts=WALK if walk is None else walk)
    one_by_one = replace(read, stems=stems, walks={"2026-W25": counts})
    return _cut(one_by_one)


def _cut(read: Studio) -> tuple[Due, CutDay]:
    makeable = Makeable.of(read)
    (due,) = Dues(read, makeable).between(*[read.orders["tea"].date] * 2)
    (day,) = cut_days([due], read, makeable)
    return due, day


def stems_in(buckets: tuple[Filled, ...]) -> Counter[str]:
    counts: Counter[str] = Counter()
    for bucket in buckets:
        counts.update({part.lot.stem: part.count for part in bucket.parts})
    return counts


def spare_in(due: Due, day: CutDay, number: int) -> Counter[str]:
    mets = as_cut(due, due.lines[number - 1], day)
    return Counter(stems_of(mets, spare=True)) - Counter(stems_of(mets))


ORDERS = {
    "beside what leaves loose": (["5 loose, in buckets", "1 jar, from the mix"], {"spare": "50 %"}),
    "beside what is made up": (["5 loose", "1 jar, from the mix"], {"spare": "50 %"}),
    "beside both": (
        ["2 loose", "5 loose, in buckets", "3 jar, from the mix"], {"spare": "50 %"},
    ),
    "loose itself": (
        ["2 loose", "5 loose, in buckets", "2 jar, from the mix, in buckets"], {"spare": "50 %"},
    ),
    "with less than it wants": (["5 loose, in buckets", "4 jar, from the mix"], {"spare": "10 %"}),
}  # fmt: skip


@pytest.mark.parametrize(("lines", "keys"), ORDERS.values(), ids=ORDERS)
def test_what_is_made_up_and_what_leaves_loose_is_what_was_cut(
    lines: list[str], keys: dict[str, Any]
) -> None:
    due, day = planned(*lines, **keys)
    loose = {line.number for line in due.lines if line.piece.in_buckets}
    buckets = night_before(due, day, day.walked.studio, loose)
    sheets: dict[bool, Counter[str]] = {False: Counter(), True: Counter()}
    for line in due.lines:
        sheets[line.number in loose].update(stems_of(as_cut(due, line, day)))
    bench, going = stems_in(buckets.bench), stems_in(buckets.going)
    assert sheets[False] <= bench
    assert sheets[True] <= going
    spare: Counter[str] = Counter()
    for line in due.lines:
        if not line.piece.from_the_mix:
            spare.update(spare_in(due, day, line.number))
    mixed: Counter[str] = Counter()
    for mix in day.mixed:
        mixed.update(mix.spare)
    assert mixed
    rest = spare - mixed
    assert sheets[False] + sheets[True] + rest == bench + going == Counter(given(day, due.id))


SWAPPED = {
    "takes what stands in": ("1 shy, from the mix", "2 blush, 1 holly", {}),
    "not for what is essential to it": ("1 jar, from the mix", "2 holly", {"rose": 4}),
}


@pytest.mark.parametrize(("line", "gets", "lacks"), SWAPPED.values(), ids=SWAPPED)
def test_a_piece_from_the_mix_follows_the_swaps_of_the_day(
    line: str, gets: str, lacks: dict[str, int]
) -> None:
    due, day = planned("5 loose", line, walk={"blush": 400, "holly": 400}, spare="50 %")
    (mix,) = day.mixed
    told = [f"{count} {stem}" for stem, count in stems_of(as_cut(due, due.lines[1], day)).items()]
    assert ", ".join(told) == gets
    assert mix.missing == lacks


def test_its_own_stem_comes_before_what_stands_in() -> None:
    due, day = planned("5 loose", "1 shy, from the mix", walk={"blush": 400, "holly": 400})
    left = Counter({"rose": 1, "blush": 5, "holly": 1})
    makeable = Makeable.of(day.walked.studio)
    (mix,) = mixed([due], day.plan, left, lambda need: options_for(need, day.walked, makeable))
    assert [[(fill.stem, fill.count) for fill in fills] for fills in mix.fills] == [
        [("rose", 1), ("blush", 1)],
        [("holly", 1)],
    ]
    assert mix.left_over == {"rose": 1, "blush": 1, "holly": 1}


def test_what_nobody_put_in_a_stems_place_that_day_does_not_stand_in() -> None:
    due, day = planned("5 loose", "1 shy, from the mix")
    makeable = Makeable.of(day.walked.studio)
    left = Counter({"blush": 5, "holly": 1})
    no_spare = replace(day.plan, filled=tuple(replace(each, spare=()) for each in day.plan.filled))
    (mix,) = mixed([due], no_spare, left, lambda need: options_for(need, day.walked, makeable))
    assert mix.missing == {"rose": 2}
