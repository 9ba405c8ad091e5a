"""What is cut for the demo's orders: nothing is lost between the beds and the vans."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from corymb.studio.load import read_studio
from corymb.studio.models import Walk
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.cut import CutProblem, Wanted, plan_cut
from corymb.trade.orders.as_cut import fill_counts
from corymb.trade.orders.cut_days import CutDay, cut_days
from corymb.trade.orders.due import Dues
from corymb.trade.orders.walked import UNCOUNTED, Walked, walk_on
from corymb.trade.season.makeable import Makeable
from tests.trade.orders.hall import missing

DEMO = Path(__file__).parents[3] / "content"
WEEK = (date(2026, 9, 14), date(2026, 9, 22))


def read() -> Studio:
    studio, _ = read_studio(DEMO)
    assert studio is not None
    return studio


STUDIO = read()
MAKEABLE = Makeable.of(STUDIO)
DUES = Dues(STUDIO, MAKEABLE)


@pytest.fixture(scope="module")
def days() -> tuple[CutDay, ...]:
    return cut_days(DUES.between(*WEEK), STUDIO, MAKEABLE)


def test_orders_are_cut_together_by_their_cutting_day(days: tuple[CutDay, ...]) -> None:
    assert [(str(day.day), [due.id for due in day.dues]) for day in days] == [
        ("2026-09-13", ["lantern-house--2026-09-15"]),
        ("2026-09-17", ["barn-supper"]),
        ("2026-09-20", ["lantern-house--2026-09-22"]),
    ]
    assert all(day.plan.proven for day in days)


def test_what_was_cut_on_one_day_no_longer_stands_on_the_next(days: tuple[CutDay, ...]) -> None:
    supper, visit = days[1:]
    assert supper.walked is visit.walked
    stood = {each.stem: each.standing for each in visit.problem.standing}
    walk = STUDIO.walks["2026-W38"].counts
    cut = {each.stem: each.cut for each in supper.plan.cuts}
    both = [stem for stem in stood if cut.get(stem)]
    assert both
    for stem in both:
        assert stood[stem] == walk.get(stem, 0) - cut[stem]


def assert_conserved(day: CutDay) -> None:
    """Stem by stem: what is cut and bought goes into orders, into spare, or is left over."""
    to_orders: Counter[str] = Counter()
    for counts in day.stems.values():
        to_orders.update(counts)
    for cut in day.plan.cuts:
        assert cut.cut + cut.bought == cut.used + cut.spare + cut.left
        assert cut.used + cut.spare == to_orders[cut.stem]
        keep = Fraction(STUDIO.house.cutting.keep_standing.fraction)
        stood = next(s.standing for s in day.problem.standing if s.stem == cut.stem)
        assert cut.cut <= stood * (1 - keep)
        assert cut.left_standing == stood - cut.cut
    for each in day.plan.filled:
        assert each.met + each.short == each.count
    left = {cut.stem: cut.left for cut in day.plan.cuts}
    for mix in day.mixed:
        assert all(count <= left[stem] for stem, count in mix.left_over.items())
        fills = [fill for some in mix.fills for fill in some]
        went_in = fill_counts(fills)
        assert went_in == Counter(mix.left_over) + Counter(mix.spare)
        assert sum(f.of for f in fills) + sum(mix.missing.values()) == sum(mix.wanted.values())


def test_nothing_is_lost_between_the_beds_and_the_orders(days: tuple[CutDay, ...]) -> None:
    for day in days:
        assert_conserved(day)


@settings(max_examples=25)
@given(st.data())
def test_nothing_is_lost_whatever_the_walk_counted(data: st.DataObject) -> None:
    walk = STUDIO.walks["2026-W38"].counts
    counts = {stem: data.draw(st.integers(0, 2 * count)) for stem, count in walk.items()}
    studio = replace(STUDIO, walks={"2026-W38": Walk(counts=counts)})
    first = WEEK[0] + timedelta(days=3)
    for day in cut_days(Dues(studio, MAKEABLE).between(first, WEEK[1]), studio, MAKEABLE):
        assert_conserved(day)
        assert_all_is_cut_first(day)


def lacking(day: CutDay) -> Counter[str]:
    """Those that are bought, swapped or missed of each stem, spare and all."""
    lacks = Counter({cut.stem: cut.bought for cut in day.plan.cuts})
    for each in day.plan.filled:
        swapped = sum(fill.of for fill in each.fills if fill.stem != each.stem)
        lacks[each.stem] += swapped + each.short + each.spare_missed
    return +lacks


def assert_all_is_cut_first(day: CutDay) -> None:
    """A stem of its own lines alone lacks nothing while one more of it may be cut.

    Where 11 stand in for 7, one of the 7 saves none of the 11.
    """
    swaps = [(e.stem, fill) for e in day.plan.filled for fill in e.fills if fill.stem != e.stem]
    stands_in = {fill.stem for _, fill in swaps}
    in_blocks = {going for going, fill in swaps if fill.count % fill.of}
    may_cut = {each.stem: each.may_cut for each in day.problem.standing}
    cut = {each.stem: each.cut for each in day.plan.cuts}
    for stem in set(lacking(day)) - stands_in - in_blocks:
        assert cut[stem] == may_cut[stem], stem


def test_nothing_is_bought_swapped_or_missed_that_may_be_cut(days: tuple[CutDay, ...]) -> None:
    assert set(lacking(days[1])) == {"dahlia-shell", "zinnia-coral"}
    for day in days:
        assert_all_is_cut_first(day)


def test_an_essential_stem_has_no_stand_in(days: tuple[CutDay, ...]) -> None:
    for day in days:
        essential = {each.key for each in day.problem.wanted if each.essential}
        assert not essential & {option.wanted for option in day.problem.options}


def test_a_swap_of_the_cut_keeps_to_what_the_style_leaves_out(days: tuple[CutDay, ...]) -> None:
    told = 0
    for day in days:
        for due in day.dues:
            for line in due.lines:
                style = STUDIO.house.styles[line.piece.recipe.style]
                for option in day.problem.options:
                    if option.wanted.startswith(f"{due.id}/{line.number}/"):
                        told += 1
                        assert not set(STUDIO.stems[option.stem].hazards) & set(style.excludes)
                        assert option.why
    assert told


def test_what_is_from_the_mix_is_made_of_what_is_left_and_spare(days: tuple[CutDay, ...]) -> None:
    (hand_tie,) = days[1].mixed
    assert hand_tie.order == "barn-supper"
    assert sum(hand_tie.left_over.values()) + sum(hand_tie.spare.values()) > 0
    assert not set(missing(days[1]))


WALKS = {
    "the week's own": ("2026-09-16", "2026-W38"),
    "the week before's": ("2026-09-23", "2026-W38"),
    "too old": ("2026-09-30", None),
    "before the first": ("2026-01-07", None),
}


@pytest.mark.parametrize(("day", "week"), WALKS.values(), ids=WALKS)
def test_the_walk_that_counts_is(day: str, week: str | None) -> None:
    found = walk_on(STUDIO, date.fromisoformat(day))
    assert (str(found) if found else None) == week


def test_without_a_walk_what_is_in_season_stands_in_any_number() -> None:
    walked = Walked(STUDIO, MAKEABLE.beds, None)
    september = date(2026, 9, 17)
    assert walked.standing("cosmos-white", september, 100).standing == UNCOUNTED
    assert walked.standing("tulip-cream", september, 100).standing == 0


def test_a_stem_that_the_walk_does_not_name_was_not_seen() -> None:
    walked = Walked(STUDIO, MAKEABLE.beds, IsoWeek(2026, 38))
    assert walked.standing("ivy-trail", date(2026, 9, 17), 9).standing == 0


FIFTIES, TWENTY_FIVES, ONES = "cosmos-white", "dahlia-shell", "dahlia-blush-large"

STEPS = {
    # stem, so many asked, so many counted of which a quarter stays: the step, and so many cut
    "a whole step": (FIFTIES, 50, 100, 50, 50),
    "two whole steps": (FIFTIES, 60, 160, 50, 100),
    "half a step": (FIFTIES, 25, 100, 50, 50),
    "less than half": (FIFTIES, 24, 100, 10, 30),
    "for one urn": (FIFTIES, 5, 100, 10, 10),
    "20 asked, 21 may be cut": (TWENTY_FIVES, 20, 28, 10, 20),
    "27 asked, 45 may be cut": (TWENTY_FIVES, 27, 60, 10, 30),
    "66 asked, 37 may be cut": (TWENTY_FIVES, 66, 50, 1, 37),
    "23 asked, 24 may be cut": (TWENTY_FIVES, 23, 32, 1, 23),
    "5 asked, 6 may be cut": (FIFTIES, 5, 9, 1, 5),
    "it only stands in": (FIFTIES, 0, 100, 10, 0),
    "it only stands in, and 6 may be cut": (FIFTIES, 0, 9, 1, 0),
    "one by one, many asked": (ONES, 30, 100, 1, 30),
    "one by one, few asked": (ONES, 1, 100, 1, 1),
}


@pytest.mark.parametrize(("stem", "asked", "counted", "step", "cut"), STEPS.values(), ids=STEPS)
def test_the_step_gives_way_to_what_is_asked_and_what_may_be_cut(
    stem: str, asked: int, counted: int, step: int, cut: int
) -> None:
    studio = replace(STUDIO, walks={"2026-W38": Walk(counts={stem: counted})})
    walked = Walked(studio, MAKEABLE.beds, IsoWeek(2026, 38))
    standing = walked.standing(stem, date(2026, 9, 17), asked)
    assert standing.by == step
    plan = plan_cut(CutProblem([standing], [Wanted("urn", "hall", stem, asked)]))
    assert [each.cut for each in plan.cuts] == [cut]


def test_the_cutting_steps_of_the_table_are_those_of_the_demo() -> None:
    steps = [STUDIO.stems[stem].cutting_step for stem in (FIFTIES, TWENTY_FIVES, ONES)]
    assert steps == [50, 25, 1]
