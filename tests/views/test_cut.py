"""What the cut list shows: the beds as they are walked, where each stem goes, what is missing."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import date
from decimal import Decimal
from functools import cache

import pytest

from corymb.studio.models import Walk
from corymb.trade.cut import Cut
from corymb.trade.cut.gaps import Gap, ShortStandIn
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.gets import given, left_over
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cut_gaps import mends_of
from corymb.views.compose.orders.cut_table import NO_ORDER, cut_table, head
from corymb.views.compose.orders.cut_words import (
    PROVEN,
    UNCOUNTED,
    careful_words,
    proof_words,
    steps_words,
    walk_words,
)
from corymb.views.compose.orders.cutting import (
    NO_BED,
    cut_list_view,
    cut_share_view,
    walking_order,
)
from corymb.views.compose.orders.labels import labels_view
from corymb.views.cut import CutListView
from tests.trade.orders.hall import order
from tests.trade.orders.hall import studio as hall
from tests.views.making import catalogue_of, demo

TODAY = date(2026, 9, 16)
STAFF = catalogue_of(demo(), "staff", TODAY)
SUPPER, VISIT = "2026-09-17", "2026-09-20"
DAYS = {str(day.day): day for day in STAFF.cut_days}
EACH_DAY = pytest.mark.parametrize("day", DAYS)


@cache
def cut_list(day: str) -> CutListView:
    return cut_list_view(STAFF, DAYS[day])


def test_beds_are_walked_by_name_with_their_numbers_by_value_and_the_unnamed_last() -> None:
    beds = ["", "long bed 10", "Rose walk 1", "long bed 2", "herb square 3", "bed 7 north", "long"]
    assert sorted(beds, key=walking_order) == [
        "bed 7 north",
        "herb square 3",
        "long",
        "long bed 2",
        "long bed 10",
        "Rose walk 1",
        "",
    ]


@EACH_DAY
def test_the_list_holds_each_stem_that_is_cut_once_and_all_of_it(day: str) -> None:
    rows = [row for bed in cut_list(day).beds for row in bed.rows]
    cuts = {cut.stem: cut.cut for cut in DAYS[day].plan.cuts if cut.cut}
    assert {row.stem.href: row.count for row in rows} == {
        f"flowers/{stem}.html": count for stem, count in cuts.items()
    }
    assert len(rows) == len(cuts)


@EACH_DAY
def test_what_is_cut_of_a_stem_goes_to_orders_or_is_left_over(day: str) -> None:
    for bed in cut_list(day).beds:
        for row in bed.rows:
            assert sum(home.stems for home in row.homes) + row.over == row.count


@EACH_DAY
def test_an_order_s_buckets_hold_all_that_it_gets(day: str) -> None:
    for due, share in zip(DAYS[day].dues, cut_list(day).shares, strict=True):
        held: Counter[str] = Counter()
        for bucket in share.buckets:
            for words in bucket.holds:
                count, _, name = words.partition(" ")
                held[name] += int(count)
        assert held == {demo().stems[s].name: n for s, n in given(DAYS[day], due.id).items()}
        assert [bucket.number for bucket in share.buckets] == [*range(1, len(share.buckets) + 1)]
        assert sum(row.pieces + row.spare for row in share.rows) == share.stems


@EACH_DAY
def test_the_buckets_named_beside_a_stem_are_those_that_hold_it(day: str) -> None:
    view = cut_list(day)
    holding = {
        share.name: {f"{bucket.number}": " ".join(bucket.holds) for bucket in share.buckets}
        for share in view.shares
    }
    for bed in view.beds:
        for row in bed.rows:
            for home in row.homes:
                numbers = home.buckets.replace(";", ",").replace(",", " ").split()
                of_stem = [number for number in numbers if number.isdigit()]
                assert of_stem
                assert all(row.stem.label in holding[home.order][n] for n in of_stem)


def test_a_stem_without_a_bed_stands_at_the_end_of_the_list() -> None:
    apples = demo().stems["crab-apple-red"].model_copy(update={"bed": ""})
    lost = replace(demo(), stems={**demo().stems, "crab-apple-red": apples})
    last = cut_list_view(catalogue_of(lost, "staff", TODAY), DAYS[SUPPER]).beds[-1]
    assert last.name == NO_BED
    assert [row.stem.label for row in last.rows] == [apples.name]


CUTS = {
    "3 × 25": (75, 25),
    "1 × 50": (50, 50),
    "one by one": (8, 1),
    "": (1, 1),
}


@pytest.mark.parametrize(("words", "cut"), CUTS.items())
def test_a_count_says_in_which_steps_it_is_cut(words: str, cut: tuple[int, int]) -> None:
    count, step = cut
    assert steps_words(Cut("rose", count, step, 0, count, 0, 0, 0)) == words


CAREFUL = {
    "sap": (["irritant sap"], ("gloves: irritant sap",)),
    "sap that burns": (
        ["burns in sun", "irritant sap"],
        ("gloves and sleeves: its sap burns in sunlight",),
    ),
    "two for gloves": (["thorns", "irritant hairs"], ("gloves: irritant hairs and thorns",)),
    "no gloves": (["poisonous if eaten"], ("poisonous: wash hands",)),
    "nothing at the cut": (["heavy pollen"], ()),
}


@pytest.mark.parametrize(("hazards", "words"), CAREFUL.values(), ids=CAREFUL)
def test_a_stem_that_can_hurt_says_what_to_wear(hazards: list[str], words: tuple[str, ...]) -> None:
    assert careful_words(hazards) == words


def test_the_walk_is_told_with_its_age_and_what_was_cut_since() -> None:
    assert walk_words(DAYS[SUPPER]).endswith("14 to 20 September 2026, counted the same week.")
    assert "counted the same week, less what is cut before this day." in walk_words(DAYS[VISIT])
    old = walk_words(DAYS["2026-09-27"])
    assert "1 week old" in old and old.endswith("Look at the beds again before you go by it.")


def test_without_a_walk_the_list_says_that_it_is_only_what_is_wanted() -> None:
    uncounted = [day for day in DAYS.values() if day.week is None]
    assert uncounted
    for day in uncounted:
        assert walk_words(day) == UNCOUNTED
        rows = [row for bed in cut_list(str(day.day)).beds for row in bed.rows]
        assert rows and all(row.stays is None for row in rows)


def test_a_plan_says_whether_it_is_proven_or_how_far_off_it_may_be() -> None:
    plan = DAYS[SUPPER].plan
    assert proof_words(plan) == PROVEN
    assert "by at most 3.4 % of" in proof_words(replace(plan, proven=False, gap=0.0341))
    close = proof_words(replace(plan, gap=0.0003))
    assert close.startswith("No other plan leaves less missing: that is proven.")
    assert close.endswith("by at most 0.03 %.")


def test_a_swap_says_why_and_what_to_be_careful_of() -> None:
    # 20 crab apples stand: 15 may be cut of the 24 wanted, and 15 rose hips, at 5 for 3, do for 9.
    counts = {**demo().walks["2026-W38"].counts, "crab-apple-red": 20}
    few = catalogue_of(replace(demo(), walks={"2026-W38": Walk(counts=counts)}), "staff", TODAY)
    days = {str(day.day): day for day in few.cut_days}
    swaps = [swap for share in cut_list_view(few, days[SUPPER]).shares for swap in share.swaps]
    assert swaps and all(swap.reasons for swap in swaps)
    hips = next(swap for swap in swaps if "Rose hips" in swap.words.partition(" for ")[0])
    assert hips.words == "15 Rose hips, scarlet for 9 Crab apple, red"
    assert any("Gloves" in words for words in hips.careful)


def test_nothing_goes_in_for_spare() -> None:
    (share,) = cut_list(SUPPER).shares
    assert not share.swaps
    assert share.spare_missed == "Spare that can't be cut: 6 Dahlia, shell and 2 Zinnia, coral."


def test_what_is_bought_is_told_by_whom_it_is_for_and_adds_up() -> None:
    view, plan = cut_list(SUPPER), DAYS[SUPPER].plan
    assert view.cost == f"€{plan.parts.bought_cost:.2f}" != "€0.00"
    assert [row.count for row in view.buys if row.stem.label == "Dahlia, shell"] == [
        cut.bought for cut in plan.cuts if cut.stem == "dahlia-shell"
    ]
    assert sum(row.count for row in view.buys) == sum(cut.bought for cut in plan.cuts)
    together = [Decimal(row.together.removeprefix("€")) for row in view.buys]
    assert together == [row.count * Decimal(row.each.removeprefix("€")) for row in view.buys]
    assert all(row.whose == f"{row.count} for Barn supper" for row in view.buys)


def test_a_hand_tie_from_the_mix_says_what_it_gets_and_what_would_mend_what_it_lacks() -> None:
    (mix,), (made,) = cut_list(SUPPER).shares[0].mixes, DAYS[SUPPER].mixed
    wanted, lacks = sum(made.wanted.values()), sum(made.missing.values())
    assert mix.piece == "1 Rook's-wing hand-tie, from the mix"
    assert mix.gets.startswith(f"Gets {wanted - lacks} of its {wanted} stems: ")
    names = {demo().stems[stem].name: count for stem, count in made.missing.items()}
    assert [gap.words for gap in mix.gaps] == [f"{n} {name} short" for name, n in names.items()]
    mends = {gap.words.partition(" ")[2]: gap.mends for gap in mix.gaps}
    assert mends["Ninebark, plum short"][0] == "Cut 10 more: they are cut by 10."
    assert mends["Dahlia, shell short"] == (
        "Make 8 of the 12 Gleaner's trough a stem lighter.",
        "Buy 8 in, €11.20.",
    )
    assert cut_list(SUPPER).short == lacks + DAYS[SUPPER].plan.parts.short


def test_what_pieces_lack_is_told_with_the_piece_that_lacks_it() -> None:
    share = cut_list("2026-11-19").shares[0]
    assert [gap.words for gap in share.gaps] == ["2 Winter camellia, blush, for 2 Snow-light bowl"]
    assert "3 Winter camellia, blush" in share.spare_missed
    assert share.gaps[0].mends == (
        "2 more stand, left for seed and bees.",
        "The walk would have to count 2 more.",
    )


# 6 stems a jar and a tenth spare, 300 an hour by two, 4 hours a morning, in buckets the day after.
MORNINGS = {
    "one": ("60 jar, in buckets", "", "Cut Wednesday 17 June"),
    "two": (
        "300 jar, in buckets",
        "For 2 mornings, Tuesday 16 June and Wednesday 17 June.",
        "Cut Tuesday 16 June and Wednesday 17 June",
    ),
    "more": (
        "600 jar, in buckets",
        "For 4 mornings, Sunday 14 June to Wednesday 17 June.",
        "Cut Sunday 14 June to Wednesday 17 June",
    ),
}


@pytest.mark.parametrize(("line", "words", "label"), MORNINGS.values(), ids=MORNINGS)
def test_a_list_and_its_labels_say_for_which_mornings_they_are(
    line: str, words: str, label: str
) -> None:
    crowd = catalogue_of(hall(order("crowd", "2026-06-18", line)), "staff", date(2026, 6, 10))
    (day,) = crowd.cut_days
    assert cut_list_view(crowd, day).mornings == words
    sheets = labels_view(crowd, day.dues[0], "").sheets
    assert {each.cut for sheet in sheets for each in sheet} == {label}


SHORT = Gap("cosmos-white", ("hall/1/1/cosmos-white",), 5, 0, None, 0, 0, None, ())
OTHER = ShortStandIn("scabious-white", 7, 4.0, ("nearly the same colour", "smaller heads"))
MENDS = {
    "nothing": (SHORT, ()),
    "a step": (replace(SHORT, by_breaking_step=5), ("5 may be cut if the step is broken.",)),
    "the bees' share": (
        replace(SHORT, by_leaving_less=3),
        ("3 more stand, left for seed and bees.",),
    ),
    "money": (replace(SHORT, price=Decimal("0.55")), ("Buy 5 in, €2.75.",)),
    "money, spent": (replace(SHORT, price=Decimal("0.55"), bought=2), ()),
    "another stem": (
        replace(SHORT, stand_ins=(OTHER,)),
        ("7 more Scabious, white would do (nearly the same colour; smaller heads).",),
    ),
    "a better year": (
        replace(SHORT, more_standing=12),
        ("The walk would have to count 12 more.",),
    ),
}


@pytest.mark.parametrize(("gap", "words"), MENDS.values(), ids=MENDS)
def test_each_thing_that_would_mend_a_gap_is_a_sentence(gap: Gap, words: tuple[str, ...]) -> None:
    assert mends_of(STAFF, gap) == words


SEASONS = {
    "out": ("2026-12-22", "It is out of season: it stands "),
    "in": ("2026-08-04", "The walk would have to count 12 more."),
}


@pytest.mark.parametrize(("on", "words"), SEASONS.values(), ids=SEASONS)
def test_nobody_is_sent_to_count_a_stem_that_is_over(on: str, words: str) -> None:
    (told,) = mends_of(STAFF, replace(SHORT, more_standing=12), date.fromisoformat(on))
    assert told.startswith(words)


@EACH_DAY
def test_what_to_order_in_stands_on_top_of_the_list(day: str) -> None:
    view = cut_list(day)
    assert bool(view.order_in) is bool(view.buys)
    assert all(f"{row.count} {row.stem.label}" in view.order_in for row in view.buys)


@EACH_DAY
def test_a_list_tells_what_was_written_down_on_its_walk(day: str) -> None:
    week = DAYS[day].week
    assert cut_list(day).noted == (demo().walks[str(week)].notes if week else "")


def test_an_order_s_page_shows_its_share_and_leads_to_the_list() -> None:
    due = next(due for due in DAYS[SUPPER].dues)
    share = cut_share_view(STAFF, due)
    assert share
    assert share.list.href == "cut/2026-09-17.html"
    assert share.share == cut_list(SUPPER).shares[0]


def test_an_order_far_ahead_has_no_share_yet() -> None:
    later = STAFF.dues.between(date(2026, 12, 20), date(2026, 12, 31))
    assert later and all(cut_share_view(STAFF, due) is None for due in later)


def test_clients_have_no_cut() -> None:
    assert catalogue_of(demo(), "clients", TODAY).cut_days == ()


def table_of(*days: CutDay, catalogue: Catalogue = STAFF) -> list[dict[str, object]]:
    return [dict(zip(head(), row, strict=True)) for row in cut_table(catalogue, days).rows]


@EACH_DAY
def test_the_rows_of_a_table_add_up_to_what_is_cut_and_bought(day: str) -> None:
    cut: Counter[object] = Counter()
    bought: Counter[object] = Counter()
    for row in table_of(DAYS[day]):
        assert row["stems"] == row["cut"] + row["bought in"]  # type: ignore[operator]
        cut[row["stem"]] += row["cut"]  # type: ignore[operator]
        bought[row["stem"]] += row["bought in"]  # type: ignore[operator]
    names = {cut.stem: demo().stems[cut.stem].name for cut in DAYS[day].plan.cuts}
    assert +cut == +Counter({names[each.stem]: each.cut for each in DAYS[day].plan.cuts})
    assert +bought == +Counter({names[each.stem]: each.bought for each in DAYS[day].plan.cuts})


def test_a_table_has_a_row_a_stem_and_order_in_the_order_of_the_beds() -> None:
    rows = table_of(DAYS[SUPPER])
    keys = [(row["stem"], row["order"]) for row in rows]
    assert len(keys) == len(set(keys))
    beds = [str(row["bed"]) for row in rows]
    assert beds == sorted(beds, key=walking_order)
    over = {row["stem"]: row["stems"] for row in rows if row["order"] == NO_ORDER}
    names = {demo().stems[stem].name: count for stem, count in left_over(DAYS[SUPPER]).items()}
    assert over == names
