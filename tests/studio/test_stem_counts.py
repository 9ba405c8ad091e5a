"""No piece holds a thousand of one stem, and no stem bears a thousand heads."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from corymb.studio.values.stem_counts import parse_heads, parse_stems


@pytest.mark.parametrize(("text", "count"), [("1", 1), ("7", 7), ("500", 500)])
def test_so_many_stems_go_into_a_piece(text: str, count: int) -> None:
    assert parse_stems(text) == count


@pytest.mark.parametrize(
    ("text", "parse", "says"),
    [
        ("501", parse_stems, "A count of 501 is more than this can be: at most 500 of one stem"),
        ("0", parse_stems, "A count of 0 needs no line"),
        ("201", parse_heads, "A count of 201 is more than this can be: at most 200 heads"),
        ("1000000000", parse_heads, "‘1000000000’ is more than this can be: it is 100000 at most"),
    ],
    ids=["a stem too many", "no stem", "a head too many", "a figure pressed too long"],
)
def test_more_is_a_slip_of_the_hand(text: str, parse: Callable[[str], int], says: str) -> None:
    with pytest.raises(ValueError) as told:
        parse(text)
    assert str(told.value).startswith(says)
