"""What may stand in for a stem, how many of it, and in which order?"""

from __future__ import annotations

from typing import Any

import pytest

from corymb.studio.models import Stem
from corymb.trade.changes import LookLine
from corymb.trade.colour.areas import visible_area
from corymb.trade.swaps.beside import (
    A_DAY_LESS,
    A_DOUBLING,
    A_KIN_FORM,
    ANOTHER_FORM,
    LONG_ENOUGH_DAYS,
)
from corymb.trade.swaps.limits import SwapLimits
from corymb.trade.swaps.standing_in import StandIn, StandIns
from tests.trade.making import stem, style
from tests.trade.swaps.making import bed, line


def ranked(out: LookLine, *stems: Stem, **keys: Any) -> tuple[StandIn, ...]:
    return StandIns(bed(*stems)).ranked(out, style(**keys))


def offers(out: LookLine, *stems: Stem, **keys: Any) -> list[str]:
    return [each.in_ for each in ranked(out, *stems, **keys)]


NO_WATER = {"hours": "0", "do": "Keep dry."}

# One key of a stem that is otherwise the rose, and whether it may stand in for it.
MAY: dict[str, tuple[dict[str, Any], bool]] = {
    "the same in all but name": ({}, True),
    "another use": ({"use": "filler"}, False),
    "a hazard the style leaves out": ({"hazards": ["thorns"]}, False),
    "a hazard it lets in": ({"hazards": ["heavy pollen"]}, True),
    "too heavy": ({"weight": "31 g"}, False),
    "shorter, and long enough for the style": ({"length": "15-21 cm"}, True),
    "too short for seven tenths of what the style needs": ({"length": "15-20 cm"}, False),
    "another colour altogether": ({"colours": ["plum 4a1f3d 100 %"]}, False),
    "a little paler": ({"colours": ["ivory f3ddd2 100 %"]}, True),
    "heads of nearly three times the area": ({"head": "10.3 cm"}, True),
    "heads so large that one stands for more than three": ({"head": "10.5 cm"}, False),
    "heads of two fifths of the area": ({"head": "3.8 cm"}, True),
    "heads so small that it takes more than five for two": ({"head": "3.7 cm"}, False),
    "many small heads": ({"head": "2.9 cm", "heads_per_stem": "4"}, True),
    "a flower of another form": ({"form": "globe"}, True),
    "a leaf": ({"form": "leaf-spray", "head_length": "6 cm"}, False),
    "a pod": ({"form": "pod"}, False),
    "one that hangs": ({"form": "trail", "head_length": "6 cm"}, False),
    "a dried one": ({"vase_life": "180-365 days", "conditioning": NO_WATER}, False),
}


@pytest.mark.parametrize(("keys", "may"), MAY.values(), ids=MAY)
def test_only_a_stem_that_fits_and_is_alike_may_stand_in(keys: dict[str, Any], may: bool) -> None:
    assert offers(line(8), stem("other", **keys)) == (["other"] if may else [])


def test_nothing_stands_in_for_itself_nor_for_what_isnt_known() -> None:
    assert offers(line()) == []
    assert offers(line(stem_id="lost"), stem("other")) == []


def test_a_line_with_a_part_of_its_own_asks_for_stems_of_that_part() -> None:
    others = stem("focal"), stem("filler", use="filler")
    assert offers(line(use="filler"), *others) == ["filler"]
    assert offers(line(), *others) == ["focal"]


# So many roses, and a head that stands in for them by its area: may it, by role?
SPREAD = {
    "two and a half for one, as an accent": ("accent", 4, "3.8 cm", [10]),
    "more than that": ("accent", 4, "3.7 cm", []),
    "three dots of three": ("accent", 3, "6.5 cm", [3]),
    "two dots of three": ("accent", 3, "7.3 cm", []),
    "two of three that are no dots": ("light", 3, "7.3 cm", [2]),
    "two dots of five": ("accent", 5, "9 cm", []),
    "three dots of five": ("accent", 5, "8 cm", [3]),
    "one of four": ("depth", 4, "10.2 cm", []),
    "two of four": ("depth", 4, "9 cm", [2]),
    "one of two": ("accent", 2, "8 cm", [1]),
}


@pytest.mark.parametrize(("role", "out", "head", "counts"), SPREAD.values(), ids=SPREAD)
def test_what_is_spread_through_a_piece_stays_spread_and_never_becomes_a_crowd(
    role: str, out: int, head: str, counts: list[int]
) -> None:
    found = ranked(line(out, role=role), stem("other", head=head))
    assert [each.in_count for each in found] == counts


# Beside roses that go out: what else is in the look, and whether the dahlia may come in.
BESIDE: dict[str, tuple[dict[str, Any], bool]] = {
    "another plant": ({"botanical": "Zinnia"}, True),
    "the dahlia itself": ({"known_as": "dahlia"}, False),
    "another dahlia of nearly its colour": ({"colours": ["blush e6c0b2 100 %"]}, False),
    "a dahlia of another colour": ({"colours": ["white fafaf8 100 %"]}, True),
    "a dried one of its colour": (
        {"vase_life": "180-365 days", "conditioning": NO_WATER, "use": "filler"},
        False,
    ),
}


@pytest.mark.parametrize(("keys", "may"), BESIDE.values(), ids=BESIDE)
def test_no_plant_comes_in_that_is_in_the_look_already(keys: dict[str, Any], may: bool) -> None:
    other = stem(**{"known_as": "other", "botanical": "Dahlia", **keys})
    stems = bed(stem("dahlia", botanical="Dahlia"), other)
    lines = (line(6), line(3, other.id))
    found = StandIns(stems).beside(lines[0], lines, style())
    assert ("dahlia" in [each.in_ for each in found]) == may


def test_another_stem_of_the_plant_that_goes_out_may_come_in() -> None:
    roses = (line(6),)
    found = StandIns(bed(stem("rambler"))).beside(roses[0], roses, style())
    assert [each.in_ for each in found] == ["rambler"]


def test_what_is_dried_stands_in_for_what_is_dried() -> None:
    dried: dict[str, Any] = {"vase_life": "180-365 days", "conditioning": NO_WATER}
    stems = {"rose": stem(**dried), "other": stem("other", **dried), "fresh": stem("fresh")}
    assert [each.in_ for each in StandIns(stems).ranked(line(), style())] == ["other"]


def test_a_longer_style_asks_for_longer_stems() -> None:
    short = stem("short", length="20-41 cm")
    assert offers(line(), short, stem_length="30-50 cm") == ["short"]
    assert offers(line(), stem("short", length="20-34 cm"), stem_length="30-50 cm") == []


@pytest.mark.parametrize(
    ("role", "hex_", "may"),
    [
        ("depth", "#909090", True),
        ("depth", "#dedede", False),
        ("light", "#909090", False),
        ("light", "#dedede", True),
        ("accent", "#909090", True),
        ("accent", "#dedede", True),
    ],
)
def test_depth_stays_deep_and_light_stays_light(role: str, hex_: str, may: bool) -> None:
    """Fourteen L* darker and lighter; an accent may be either."""
    stems = {
        "rose": stem(colours=["grey b6b6b6 100 %"]),
        "other": stem("other", colours=[f"grey {hex_[1:]} 100 %"]),
    }
    found = StandIns(stems).ranked(line(role=role), style())
    assert [each.in_ for each in found] == (["other"] if may else [])


# The rose's head is 6 cm: how many come in for so many, by their visible area.
COUNTS = {
    "as large": (6, "6 cm", 1, 6),
    "half as wide again": (9, "9 cm", 1, 4),
    "two thirds as wide": (4, "4 cm", 1, 9),
    "four small heads on each": (5, "3 cm", 4, 5),
    "a half goes up": (10, "6 cm", 2, 5),
    "never fewer than one": (1, "7 cm", 1, 1),
}


@pytest.mark.parametrize(("out", "head", "heads", "count"), COUNTS.values(), ids=COUNTS)
def test_whole_stems_come_in_that_show_the_area_of_what_goes_out(
    out: int, head: str, heads: int, count: int
) -> None:
    (only,) = ranked(line(out, role="light"), stem("other", head=head, heads_per_stem=str(heads)))
    assert (only.out_count, only.in_count) == (out, count)


def test_a_stem_that_would_show_far_too_much_even_alone_isnt_offered() -> None:
    large = stem("large", head="8 cm")  # 1.78 times the area
    assert offers(line(1), large) == []
    assert offers(line(2), large) == ["large"]


# What sets a stem apart from the rose (rosette, 6 cm, 5 days), and what it costs.
COSTS: dict[str, tuple[dict[str, Any], float]] = {
    "nothing": ({}, 0),
    "twice as wide, and fewer": ({"head": "12 cm", "form": "umbel"}, A_DOUBLING + ANOTHER_FORM),
    "half as wide, and twice as many": ({"head": "3 cm", "heads_per_stem": "2"}, A_DOUBLING),
    "a form of its kin": ({"form": "daisy"}, A_KIN_FORM),
    "another form": ({"form": "globe"}, ANOTHER_FORM),
    "two days less": ({"vase_life": "3-9 days"}, 2 * A_DAY_LESS),
    "days more": ({"vase_life": "9 days"}, 0),
}


@pytest.mark.parametrize(("keys", "cost"), COSTS.values(), ids=COSTS)
def test_each_thing_that_sets_a_stem_apart_has_its_cost(keys: dict[str, Any], cost: float) -> None:
    (only,) = ranked(line(8), stem("other", **keys))
    assert only.score == pytest.approx(cost)


def test_what_keeps_for_a_year_loses_no_more_than_its_first_fortnight() -> None:
    stems = {"rose": stem(vase_life="365 days"), "other": stem("other", vase_life="4 days")}
    (only,) = StandIns(stems).ranked(line(), style())
    assert only.score == pytest.approx((LONG_ENOUGH_DAYS - 4) * A_DAY_LESS)
    assert only.days == 4 - 365


def test_the_best_comes_first_and_ties_go_by_id() -> None:
    paler = stem("paler", colours=["ivory f3ddd2 100 %"])
    twins = stem("b-twin"), stem("a-twin")
    smaller = stem("smaller", head="5 cm")
    assert offers(line(), paler, smaller, *twins) == ["a-twin", "b-twin", "smaller", "paler"]


def test_a_stand_in_tells_what_sets_it_apart() -> None:
    daisy = stem("daisy", head="9 cm", form="daisy", vase_life="4 days")
    (only,) = ranked(line(10, role="light"), daisy)
    assert (only.out, only.in_, only.role) == ("rose", "daisy", "light")
    assert only.colour_distance == 0
    assert only.size_ratio == pytest.approx(1.5)
    assert only.days == -1
    assert not only.same_form


def test_a_long_head_counts_by_its_area() -> None:
    spike = stem("spike", form="spike", head="3 cm", head_length="12 cm")
    (only,) = ranked(line(), spike)
    assert only.size_ratio == pytest.approx(1)
    assert only.in_count == round(6 * visible_area(stem()) / visible_area(spike))


def test_a_studio_may_ask_for_nearer_colours() -> None:
    stems = bed(stem("paler", colours=["ivory f3ddd2 100 %"]))
    assert StandIns(stems, SwapLimits(colour=20)).ranked(line(), style())
    assert not StandIns(stems, SwapLimits(colour=5)).ranked(line(), style())


def test_one_style_may_have_what_another_of_the_same_name_leaves_out() -> None:
    stand_ins = StandIns(bed(stem("thorny", hazards=["thorns"])))
    assert not stand_ins.ranked(line(), style())
    assert stand_ins.ranked(line(), style(excludes=[]))
    assert not stand_ins.ranked(line(), style())
