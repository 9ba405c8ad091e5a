"""An order's price stays as agreed; its cost is told as written, with swaps, as cut and as made.

One gate jar in round figures: 6 rose at 0.40, 4 mint at 0.30 and 2 poppies at 0.60 are 4.80, with
a fifth lost 6.00; sundries 1.50; 20 minutes at 18.00 an hour are 6.00; a fifth of overhead on
13.50 is 2.70. It costs 16.20 and works out at 6.00 x 2.5 + 1.50 x 1.5 + 6.00 + 2.70 = 25.95, with
a tenth of tax 28.55: 30.
"""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest

from corymb.studio.models import Order, StudioFile
from corymb.studio.studio import Studio
from corymb.trade.hours.learning import making_minutes
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.paid import Gathered, paid
from corymb.trade.orders.pieces import piece_of
from tests.trade.making import recipe, stem
from tests.trade.money.figures import money

JAR = recipe(
    price="from 25",
    sizes={"large": "2"},
    sundries=["1 pint jar, 1.20", "0.3 m twine, 0.30"],
)
STEMS = {
    "rose": stem("rose", grown="0.40", bought="1.00"),
    "mint": stem("mint", grown="0.30"),
    "poppy": stem("poppy", grown="0.60"),
    "lily": stem("lily", grown="0.90", bought="2.00"),
}
HOUSE: dict[str, Any] = {"money": money()}
STUDIO = Studio(Path(), StudioFile.model_construct(**HOUSE), stems=STEMS, recipes={"gate-jar": JAR})
WRITTEN = {"rose": 6, "mint": 4, "poppy": 2}


def due(*lines: str, **keys: Any) -> Due:
    order = Order.model_validate(
        {
            "name": "Supper",
            "client": {"name": "the committee"},
            "where": {"place": "the barn", "setting": "indoors", "light": "candle"},
            "handover": "collection",
            "date": "2026-09-19",
            "lines": list(lines),
            **keys,
        }
    ).with_id("supper")
    numbered = (
        DueLine(number, line.quantity, piece_of(line, STUDIO.recipes))
        for number, line in enumerate(order.lines, 1)
    )
    return Due("supper", order, date(2026, 9, 19), tuple(numbered), Fraction(1, 10))


def test_an_order_as_written_costs_and_brings_what_its_piece_does() -> None:
    one = paid(due("1 gate-jar"), STUDIO)
    assert (one.standing.cost, one.quote.to_pay) == (Decimal("16.20"), Decimal(30))
    assert one.standing.net == Decimal("27.27")  # 30 / 1.1
    assert one.standing.left == Decimal("11.07")
    assert (one.change, one.made) == (None, None)
    assert one.costs.total == one.standing.cost


def test_a_line_tells_what_its_piece_works_out_at_beside_the_guide_price() -> None:
    regular, large = paid(due("1 gate-jar", "2 gate-jar, large"), STUDIO).lines
    assert regular.guide
    assert (regular.price.shown, regular.guide.difference) == (Decimal(30), Decimal(5))
    assert large.guide is None
    assert large.quoted.each > regular.quoted.each


def test_many_pieces_alike_are_made_faster_than_one_by_one() -> None:
    twelve = paid(due("12 gate-jar"), STUDIO)
    assert twelve.minutes == making_minutes(20, 12)
    assert twelve.minutes < 12 * 20


def test_what_leaves_in_buckets_takes_no_making() -> None:
    assert paid(due("12 gate-jar, in buckets"), STUDIO).costs.labour == 0


def test_what_is_from_the_mix_is_made_and_costs_no_stems() -> None:
    mixed = paid(due("1 gate-jar, from the mix"), STUDIO).costs
    assert (mixed.stems, mixed.labour) == (Decimal(0), Decimal("6.00"))


# Six lilies at 0.90 in place of the roses: 3.00 more, 3.75 with the waste, 4.50 with overhead.
LILIES = {"lily": 6, "mint": 4, "poppy": 2}
CUTS: dict[str, tuple[Gathered, str, str]] = {
    "just what is written, and nothing lost": (Gathered(WRITTEN, WRITTEN), "0", "1.44"),
    "as many lost as reckoned with": (Gathered(WRITTEN, {**WRITTEN, "rose": 9}), "0", "0"),
    "a bunch of roses more": (Gathered(WRITTEN, {**WRITTEN, "rose": 25}), "0", "-7.68"),
    "lilies stand in": (Gathered(LILIES, LILIES), "-4.50", "2.34"),
    "lilies bought in": (Gathered(LILIES, LILIES, {"lily": 6}), "-14.40", "4.32"),
    "a bunch of lilies bought in": (
        Gathered(LILIES, {**LILIES, "lily": 10}, {"lily": 10}), "-14.40", "-5.28"
    ),
}  # fmt: skip


@pytest.mark.parametrize(("gathered", "swaps", "spare"), CUTS.values(), ids=CUTS)
def test_swaps_and_spare_move_the_margin_and_never_the_price(
    gathered: Gathered, swaps: str, spare: str
) -> None:
    as_written = paid(due("1 gate-jar"), STUDIO)
    as_cut = paid(due("1 gate-jar"), STUDIO, gathered)
    assert as_cut.change
    assert (as_cut.change.by_swaps, as_cut.change.by_spare) == (Decimal(swaps), Decimal(spare))
    assert as_cut.quote == as_written.quote
    assert as_cut.standing == as_cut.change.after
    assert as_cut.costs.total == as_cut.standing.cost


def test_an_order_that_has_been_made_goes_by_what_it_took() -> None:
    made = paid(due("1 gate-jar", used={"rose": 9}, minutes="30"), STUDIO)
    # 1.20 of roses more, 1.50 with the waste; ten minutes more, 3.00; a fifth on both, 0.90
    assert made.made
    assert made.written.cost == Decimal("16.20")
    assert made.standing == made.made
    assert made.standing.cost == made.costs.total == Decimal("21.60")
    assert made.minutes == 30


def test_minutes_alone_leave_the_stems_as_written() -> None:
    made = paid(due("1 gate-jar", minutes="30"), STUDIO)
    assert made.costs.stems == Decimal("6.00")
    assert made.costs.labour == Decimal("9.00")


def test_a_stem_that_another_stood_in_for_is_not_paid_for() -> None:
    made = paid(due("1 gate-jar", used={"rose": 0, "lily": 6}), STUDIO)
    assert made.costs.grown == Decimal("7.80")  # 5.40 + 1.20 + 1.20
