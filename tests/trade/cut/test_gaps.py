"""What is missing is named with all that would mend it, worked out by hand."""

from __future__ import annotations

from decimal import Decimal

from corymb.trade.cut import (
    CutProblem,
    Gap,
    Settings,
    ShortStandIn,
    Standing,
    StandInOption,
    Wanted,
    gaps,
    plan_cut,
)

SUPPER = Wanted("supper/1/dahlia", "supper", "dahlia", 60)


def dahlias(standing: int, keep: str = "0.25", bought: str = "1.40") -> Standing:
    price = Decimal(bought) if bought else None
    return Standing("dahlia", standing, 25, Decimal(keep), Decimal("0.38"), price)


def found(problem: CutProblem, buy_in: bool = False) -> tuple[Gap, ...]:
    settings = Settings(buy_in=buy_in)
    return gaps(problem, plan_cut(problem, settings))


def test_a_gap_tells_what_would_mend_it() -> None:
    # 60 stand, 45 may be cut, so 25 are: 35 are short. Three steps need 100 standing.
    (gap,) = found(CutProblem([dahlias(60)], [SUPPER]))
    assert gap == Gap(
        stem="dahlia",
        keys=("supper/1/dahlia",),
        missing=35,
        bought=0,
        more_standing=40,
        by_breaking_step=20,
        by_leaving_less=15,
        price=Decimal("1.40"),
        stand_ins=(),
    )
    assert gap.cost == Decimal("49.00")


def test_what_is_bought_in_is_a_gap_of_the_garden() -> None:
    (gap,) = found(CutProblem([dahlias(60)], [SUPPER]), buy_in=True)
    assert (gap.missing, gap.bought, gap.wanted, gap.cost) == (0, 35, 35, Decimal("49.00"))


def test_no_price_is_told_where_a_stem_cannot_be_bought() -> None:
    (gap,) = found(CutProblem([dahlias(60, bought="")], [SUPPER]))
    assert (gap.price, gap.cost) == (None, None)


def test_no_more_standing_mends_it_where_all_is_kept() -> None:
    (gap,) = found(CutProblem([dahlias(60, keep="1")], [SUPPER]))
    assert (gap.more_standing, gap.by_breaking_step, gap.by_leaving_less) == (None, 0, 60)


def test_stand_ins_that_are_short_too_are_named_the_nearest_first() -> None:
    options = [
        StandInOption("supper/1/dahlia", "zinnia", 1, 1, 9.0),
        StandInOption("supper/1/dahlia", "cosmos", 3, 5, 4.0, ("a little paler",)),
    ]
    (gap,) = found(CutProblem([dahlias(60)], [SUPPER], options))
    assert gap.stand_ins == (  # 35 are eleven blocks of 3 for 5, and 2 at 2 each
        ShortStandIn("cosmos", 59, 4.0, ("a little paler",)),
        ShortStandIn("zinnia", 35, 9.0, ()),
    )


def test_a_stand_in_that_would_mend_only_some_of_it_is_not_named() -> None:
    hand_tie = Wanted("supper/2/dahlia", "supper", "dahlia", 10)
    options = [StandInOption("supper/1/dahlia", "cosmos", 1, 1, 4.0)]
    (gap,) = found(CutProblem([dahlias(0)], [SUPPER, hand_tie], options))
    assert (gap.keys, gap.stand_ins) == (("supper/1/dahlia", "supper/2/dahlia"), ())


def test_a_plan_that_lacks_nothing_has_no_gaps() -> None:
    assert found(CutProblem([dahlias(100)], [SUPPER])) == ()
