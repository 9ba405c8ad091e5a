"""What an order's stems bring with them to the buckets."""

from __future__ import annotations

from dataclasses import replace

import pytest

from corymb.trade.orders.gets import bucketed
from tests.trade.orders.hall import STEMS, studio

STEP = next(each.cutting_step for each in STEMS if each.id == "rose")


@pytest.mark.parametrize(("step", "delicate"), [(STEP, True), (STEP - 1, False)])
def test_heads_bruise_by_the_studios_own_delicate_step(step: int, delicate: bool) -> None:
    read = studio()
    cutting = read.house.cutting.model_copy(update={"delicate_step": step})
    own = replace(read, house=read.house.model_copy(update={"cutting": cutting}))
    (bucket,) = bucketed("tea", {"rose": 3}, own)
    assert bucket.parts[0].lot.delicate is delicate
