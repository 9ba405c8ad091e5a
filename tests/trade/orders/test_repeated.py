"""An old order on another day: what can be made, what it costs, what was sent, what keeps."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest

from corymb.studio.models import Order, StandingOrder
from corymb.trade.orders.cut_days import cut_days
from corymb.trade.orders.due import Dues
from corymb.trade.orders.repeated import Repeated, Repeating
from corymb.trade.orders.timed import timed
from corymb.trade.season.makeable import Makeable
from tests.trade.making import recipe
from tests.trade.orders.hall import RECIPES, missing, order, standing, studio

JULY, SEPTEMBER, NOVEMBER = date(2027, 7, 6), date(2027, 9, 14), date(2027, 11, 9)


def repeating(*orders: Order | StandingOrder) -> Repeating:
    read = studio(*orders)
    return Repeating(read, Makeable.of(read))


def again(day: date, *lines: str) -> Repeated:
    old = order("old", "2026-07-07", *lines)
    return repeating(old).order(old, day)


@pytest.mark.parametrize(
    ("line", "day", "look", "state", "taken"),
    [
        pytest.param("2 jar", JULY, "jar", "pictured", False, id="as it was"),
        pytest.param("2 jar", SEPTEMBER, "jar--late", "variant", True, id="as its variant"),
        pytest.param("2 jar, late", JULY, "jar", "variant", True, id="back to the recipe"),
        pytest.param("2 jar, late", SEPTEMBER, "jar--late", "pictured", False, id="still late"),
        pytest.param("2 jar", NOVEMBER, "jar", "none", False, id="never as a draft"),
        pytest.param("2 loose", SEPTEMBER, "loose", "swaps", False, id="with swaps"),
    ],
)
def test_a_line_is_kept_or_another_variant_taken_or_swaps_are_offered(
    line: str, day: date, look: str, state: str, taken: bool
) -> None:
    (found,) = again(day, line).lines
    assert (found.best.look.id, found.best.state, found.taken) == (look, state, taken)
    assert found.piece.look.id == (look if taken else found.old.look.id)


def test_a_line_keeps_its_quantity_its_size_and_how_it_leaves() -> None:
    (line,) = again(SEPTEMBER, "3 jar, small, in buckets").lines
    assert (line.quantity, line.piece.size, line.piece.in_buckets) == (3, "small", True)
    assert line.piece.look.variant == "late"


def test_what_would_be_made_has_its_swaps_in_and_the_line_has_not() -> None:
    (line,) = again(SEPTEMBER, "1 loose").lines
    assert line.piece.counts == {"rose": 4, "holly": 6}
    assert line.made.counts == {"blush": 4, "holly": 6}


def test_what_cannot_be_made_says_what_blocks_it_when_it_can_and_what_could_be_instead() -> None:
    (line,) = again(NOVEMBER, "1 jar").lines
    assert not line.can
    assert line.best.answer.blocks == ("rose",)
    assert line.best.answer.nearest == 42  # the last week of its late variant; 45 is asked for
    assert [look.id for look in line.instead] == ["bowl"]


@pytest.mark.parametrize(
    ("line", "day", "look"),
    [
        # Both are Tuesdays, cut on the Sunday before: the last day of week 35, and of week 42.
        pytest.param("1 jar", date(2026, 9, 1), "jar", id="roses, in their last week"),
        pytest.param("1 jar, late", date(2026, 10, 20), "jar--late", id="asters, in theirs"),
    ],
)
def test_what_stands_is_asked_for_the_day_of_the_cut_as_on_the_orders_own_page(
    line: str, day: date, look: str
) -> None:
    told = again(day, line)
    (found,) = told.lines
    assert (found.best.look.id, found.best.answer.state) == (look, "pictured")
    assert (told.day - told.cut).days == 2
    assert told.cut_week != told.week
    read = studio(order("new", str(day), line))
    makeable = Makeable.of(read)
    (cut,) = cut_days(Dues(read, makeable).one_off(), read, makeable)
    assert (cut.day, missing(cut)) == (told.cut, {})


def test_a_look_of_a_rotation_is_asked_for_the_day_of_its_cut_too() -> None:
    # By hand: Sunday 30 August 2026 ends week 35, the last of the roses.
    told = repeating(standing("hall", rotation=["loose"])).visit("hall", date(2026, 9, 1))
    assert told is not None
    assert (told.cut, told.lines[0].best.state) == (date(2026, 8, 30), "pictured")


def test_the_first_of_what_could_be_instead_is_to_be_put_in_its_place() -> None:
    lines = again(NOVEMBER, "1 jar", "1 bowl").lines
    assert [line.put.in_a_line if line.put else "" for line in lines] == ["bowl", ""]


def test_a_rotations_line_gives_its_place_to_what_the_rotation_would_send() -> None:
    zinc = recipe("zinc", stems=["6 holly, depth, essential"])
    hall = standing("hall", rotation=["jar", "zinc"])
    old = order("own", "2026-07-07", "1 jar", "1 loose", visit_of="hall")
    read = studio(hall, old, recipes=(*RECIPES, zinc))
    told = Repeating(read, Makeable.of(read)).order(old, date(2026, 11, 10))
    assert [line.put.id for line in told.lines if line.put] == ["zinc", "bowl"]


def test_what_cannot_be_made_costs_nothing_and_is_not_quoted() -> None:
    told = again(NOVEMBER, "5 jar", "1 bowl")
    assert [line.number for line in told.able] == [2]
    alone = again(NOVEMBER, "1 bowl")
    assert told.money.now == alone.money.now


def test_costs_are_told_line_by_line_beside_what_they_were() -> None:
    # By hand, all stems 0.40 and 20 % of what is cut lost: two jars have 8 roses and 4 holly,
    # 4.80, with waste 6.00. Late they have 10 asters and 4 holly: 5.60, with waste 7.00.
    told = again(SEPTEMBER, "2 jar").money
    assert told.before is not None
    assert (told.before.stems, told.now.stems) == ((Decimal("6.00"),), (Decimal("7.00"),))
    # The stems are the only difference, and a fifth of overhead comes on top of it.
    assert told.now.cost - told.before.cost == Decimal("1.20")


def test_an_order_that_stays_as_it_was_costs_what_it_did() -> None:
    told = again(JULY, "2 jar", "1 loose").money
    assert told.before == told.now


def test_earlier_orders_of_the_same_client_are_told_the_latest_four() -> None:
    days = [f"202{n}-07-07" for n in range(1, 7)]
    orders = [order(f"old-{day}", day, "1 jar", "2 loose") for day in days]
    other = order("other", "2026-07-08", "1 bowl", client={"name": "Someone else"})
    told = repeating(*orders, other).order(orders[0], JULY)
    assert [str(sent.day) for sent in told.sent] == days[:-5:-1]
    assert told.sent[0].looks == ("jar", "loose")
    assert told.running == ("jar", "loose")


def test_what_else_is_due_that_day_is_told() -> None:
    old, other = order("old", "2026-07-07", "1 jar"), order("other", str(JULY), "1 bowl")
    assert [due.id for due in repeating(old, other).order(old, JULY).others] == ["other"]


def test_an_order_lasts_to_the_end_of_its_hours_from_two_days_before() -> None:
    old = order("old", "2026-07-07", "1 jar", hours="18:00-01:00")
    told = repeating(old).order(old, JULY).lasting
    assert (str(told.cut)[:16], str(told.until)[:16]) == ("2027-07-04 06:30", "2027-07-07 01:00")
    assert (told.days, told.short) == (3, ())


def test_a_visit_lasts_to_the_next_and_names_the_stems_that_do_not() -> None:
    told = repeating(standing("hall", rotation=["jar"])).visit("hall", date(2026, 7, 7))
    assert told is not None
    assert told.next_visit == date(2026, 7, 14)
    # From Sunday half past six to Tuesday of the week after at noon: nine days and a part.
    assert (told.lasting.days, told.lasting.short) == (10, (("rose", 4),))


def test_whether_an_order_keeps_is_told_as_on_its_own_page() -> None:
    # Made three days before, so cut four before: roses keep 4 days, and are wanted for 5.
    old = order("old", "2026-07-07", "1 jar")
    read = studio(old)
    work = read.house.work.model_copy(update={"make_days_before": 3})
    early = replace(read, house=read.house.model_copy(update={"work": work}))
    makeable = Makeable.of(early)
    told = Repeating(early, makeable).order(old, date(2027, 7, 7)).lasting
    (again,) = Dues(
        replace(early, orders={"new": order("new", "2027-07-07", "1 jar")}), makeable
    ).between(date(2027, 7, 7), date(2027, 7, 7))
    own = timed(again, early, makeable)
    assert (told.days, told.short) == (5, (("rose", 4),))
    assert (told.cut, told.until) == (own.cut_from, own.keeps_until)
    assert [flag.stem for flag in own.timeline.flags] == ["rose"]


def test_what_is_from_the_mix_alone_is_cut_for_nobody_and_keeps() -> None:
    told = again(JULY, "1 bowl, from the mix").lasting
    assert told.short == ()


def test_a_visit_gets_the_look_laid_out_and_what_was_sent_before() -> None:
    told = repeating(standing("hall", rotation=["jar", "bowl"], lines=["2 loose"])).visit(
        "hall", date(2026, 7, 7)
    )
    assert told is not None
    assert told.lines[0].piece.look.id == "loose"
    sent = [sent.looks[0] for sent in told.sent]
    assert [str(sent.day) for sent in told.sent] == [
        "2026-06-30", "2026-06-23", "2026-06-16", "2026-06-09",
    ]  # fmt: skip
    looks = [told.lines[1].piece.look.id, *sent]
    assert looks[1::2] in (["jar"] * 2, ["bowl"] * 2)
    assert set(looks[::2]) == {"jar", "bowl"} - {looks[1]}
    assert told.running == ()
    assert told.money.before is not None and len(told.money.before.stems) == 2


def test_a_day_without_a_visit_has_none() -> None:
    hall = standing("hall", rotation=["jar"], skip=["2026-07-07"])
    written = order("own", "2026-07-14", "1 bowl", visit_of="hall")
    each = repeating(hall, written)
    days = [date(2026, 7, 7), date(2026, 7, 8), date(2026, 7, 14)]
    assert [each.visit("hall", day) for day in days] == [None, None, None]


def test_a_written_visit_on_another_day_knows_what_the_rotation_would_send() -> None:
    hall = standing("hall", rotation=["jar", "bowl"])
    old = order("own", "2026-06-30", "1 jar", visit_of="hall")
    each = repeating(hall, old)
    laid = each.visit("hall", date(2026, 7, 7))
    assert laid is not None
    told = each.order(old, date(2026, 7, 7))
    assert told.standing == "hall"
    assert told.running == ("jar",)
    assert told.laid is not None and told.laid.id == "bowl" == laid.lines[0].piece.look.id


@pytest.mark.parametrize(
    ("day", "standing_id"),
    [(date(2026, 7, 14), "hall"), (date(2027, 7, 13), "hall-2027"), (date(2026, 7, 15), "")],
    ids=["the same", "next year's", "none that day"],
)
def test_a_written_visit_belongs_to_the_standing_order_of_its_day(
    day: date, standing_id: str
) -> None:
    later = {"from": "2027-01-05", "until": "2027-12-28"}
    old = order("own", "2026-07-07", "1 jar", visit_of="hall")
    each = repeating(
        standing("hall", rotation=["jar"]), standing("hall-2027", rotation=["jar"], **later), old
    )
    assert each.order(old, day).standing == standing_id


def test_every_recipe_of_the_tests_can_be_made_some_time() -> None:
    makeable = Makeable.of(studio())
    weeks = {each.id: again(JULY, f"1 {each.id}").lines[0] for each in RECIPES}
    assert set(weeks) == {"jar", "loose", "bowl", "poppies"}
    assert all(makeable.weeks_pictured(line.old.look) for line in weeks.values())
