"""What holds of every swap that is offered, whatever grows in the beds."""

from __future__ import annotations

from math import isclose

from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.models import Stem
from corymb.studio.words import FORMS, HAZARDS, LONG_FORMS, ROLES, USES
from corymb.trade.changes import LookLine
from corymb.trade.colour.areas import visible_area
from corymb.trade.colour.likeness import apart, palette_of
from corymb.trade.swaps.beside import Pair, facts_of
from corymb.trade.swaps.limits import SwapLimits, limits_broken
from corymb.trade.swaps.reasons import reasons
from corymb.trade.swaps.standing_in import StandIn, StandIns
from tests.trade.making import stem, style
from tests.trade.swaps.making import line

HEXES = st.sampled_from(["e8c2b4", "f3ddd2", "d9a796", "b5646a", "6e1f33", "f7f3ea", "c0504a"])


@st.composite
def stems(draw: st.DrawFn, known_as: str) -> Stem:
    """A stem such as might stand in a bed; uses and colours are few, so that swaps are many."""
    form = draw(st.sampled_from(FORMS))
    one, other = draw(HEXES), draw(HEXES)
    share = draw(st.integers(1, 99))
    long = {"head_length": f"{draw(st.integers(4, 30))} cm"} if form in LONG_FORMS else {}
    return stem(
        known_as,
        form=form,
        use=draw(st.sampled_from(USES[:2])),
        colours=[f"{one} {share} %", f"{other} {100 - share} %"],
        head=f"{draw(st.integers(2, 12))} cm",
        heads_per_stem=str(draw(st.integers(1, 4))),
        hazards=draw(st.lists(st.sampled_from(HAZARDS[:4]), max_size=2, unique=True)),
        vase_life=f"{draw(st.integers(2, 20))} days",
        **long,
    )


BEDS = st.tuples(*(stems(f"s{i}") for i in range(6)))
LINES = st.builds(
    line,
    count=st.integers(1, 20),
    stem_id=st.sampled_from(["s0", "s1"]),
    role=st.sampled_from(ROLES),
    use=st.sampled_from([None, *USES[:2]]),
)
EXCLUDED = st.lists(st.sampled_from(HAZARDS[:4]), max_size=3, unique=True)


def offered(bed: tuple[Stem, ...], out: LookLine, excludes: list[str]) -> tuple[StandIn, ...]:
    return StandIns({each.id: each for each in bed}).ranked(out, style(excludes=excludes))


@given(BEDS, LINES, EXCLUDED)
def test_no_hazard_that_the_style_leaves_out_is_ever_offered(
    bed: tuple[Stem, ...], out: LookLine, excludes: list[str]
) -> None:
    hazards = {each.id: set(each.hazards) for each in bed}
    for swap in offered(bed, out, excludes):
        assert not hazards[swap.in_] & set(excludes)


@given(BEDS, LINES)
def test_a_swap_is_another_stem_of_the_use_in_whole_stems_of_about_the_same_area(
    bed: tuple[Stem, ...], out: LookLine
) -> None:
    known = {each.id: each for each in bed}
    limits = SwapLimits()
    for swap in offered(bed, out, []):
        assert swap.in_ != out.stem
        assert known[swap.in_].use == (out.use or known[out.stem].use)
        assert isinstance(swap.in_count, int) and swap.in_count >= 1
        before = out.count * visible_area(known[out.stem])
        ratio = swap.in_count * visible_area(known[swap.in_]) / before
        assert 1 / limits.area - 1e-9 <= ratio <= limits.area + 1e-9
        assert swap.colour_distance <= limits.colour
        distance = apart(palette_of(known[out.stem]), palette_of(known[swap.in_]))
        assert isclose(swap.colour_distance, distance)


@given(BEDS, LINES, EXCLUDED)
def test_what_breaks_no_limit_is_offered_and_nothing_else_is(
    bed: tuple[Stem, ...], out: LookLine, excludes: list[str]
) -> None:
    facts = {each.id: facts_of(each.id, each) for each in bed}
    going = facts.pop(out.stem)
    keeping = {
        coming.id
        for coming in facts.values()
        if coming.use == (out.use or going.use)
        and not limits_broken(Pair(going, coming), out, style(excludes=excludes), SwapLimits())
    }
    assert {swap.in_ for swap in offered(bed, out, excludes)} == keeping


@given(BEDS, LINES, EXCLUDED)
def test_the_order_of_the_stems_makes_no_difference_and_asking_again_neither(
    bed: tuple[Stem, ...], out: LookLine, excludes: list[str]
) -> None:
    first = offered(bed, out, excludes)
    assert first == offered(bed[::-1], out, excludes)
    assert first == offered(bed, out, excludes)
    assert [(each.score, each.in_) for each in first] == sorted(
        (each.score, each.in_) for each in first
    )


@given(BEDS, LINES)
def test_every_swap_has_its_reasons_in_words(bed: tuple[Stem, ...], out: LookLine) -> None:
    known = {each.id: each for each in bed}
    for swap in offered(bed, out, []):
        told = reasons(swap, known)
        assert told == reasons(swap, known)
        assert 3 <= len(told) <= 4
        assert all(word and "{" not in word for word in told)
        counted = f"so {swap.in_count} for {swap.out_count}"
        assert (counted in told[1]) == (swap.in_count != swap.out_count)
