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


STEPS = {
    "a whole step": (50, 50),
    "half a step": (25, 50),
    "less than half": (24, 10),
    "one": (1, 10),
}


@pytest.mark.parametrize(("asked", "step"), STEPS.values(), ids=STEPS)
def test_nobody_cuts_fifty_for_one_urn(asked: int, step: int) -> None:
    walked = Walked(STUDIO, MAKEABLE.beds, IsoWeek(2026, 38))
    assert STUDIO.stems["cosmos-white"].cutting_step == 50
    assert walked.standing("cosmos-white", date(2026, 9, 17), asked).step == step


def test_what_is_cut_one_by_one_stays_so() -> None:
    walked = Walked(STUDIO, MAKEABLE.beds, IsoWeek(2026, 38))
    assert walked.standing("dahlia-blush-large", date(2026, 9, 17), 1).step == 1
