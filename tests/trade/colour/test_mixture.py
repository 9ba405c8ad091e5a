"""What the colours of a look come to, by hand."""

from __future__ import annotations

import pytest

from corymb.trade.colour.ciede2000 import difference, lab_of
from corymb.trade.colour.mixture import backing_of, mixture
from tests.trade.colour.mixes import COLOURS, HOUSE, bed, look
from tests.trade.making import stem


def test_lightness_is_the_mean_over_what_is_seen_and_its_spread_that_of_all_of_it() -> None:
    mix = mixture(look("3 white, light", "1 mid-grey"), bed()).measures
    white, grey = lab_of("#ffffff")[0], lab_of("#777777")[0]
    assert mix.lightness == pytest.approx((3 * white + grey) / 4)
    assert mix.spread == pytest.approx((white - grey) * (3 / 16) ** 0.5)


def test_a_head_twice_as_wide_counts_four_times() -> None:
    stems = bed() | {"wide": stem("wide", colours=["777777 100 %"], head="8 cm")}
    once = mixture(look("1 white", "1 wide"), stems).measures
    four = mixture(look("1 white", "4 mid-grey"), stems).measures
    assert once == pytest.approx(four)


def test_the_order_of_lines_and_how_they_are_split_make_no_difference() -> None:
    one = mixture(look("4 plum", "2 crimson, accent", "6 cream, light"), bed())
    other = mixture(look("3 cream, light", "2 crimson, accent", "4 plum", "3 cream, light"), bed())
    assert one.measures[:6] == pytest.approx(other.measures[:6])
    assert one.roles == pytest.approx(other.roles)
    assert one.parts == pytest.approx(other.parts)


SHARES = {
    "warm and cool": (("3 crimson", "1 cornflower"), 0.75, 0.25),
    "neither": (("2 white", "2 mid-grey"), 0.0, 0.0),
    "cool and neither": (("1 cornflower", "1 white"), 0.0, 0.5),
}


@pytest.mark.parametrize(("lines", "warm", "cool"), SHARES.values(), ids=SHARES)
def test_warm_and_cool_colours_take_their_shares_and_neutral_ones_neither(
    lines: tuple[str, ...], warm: float, cool: float
) -> None:
    mix = mixture(look(*lines), bed()).measures
    assert (mix.warm, mix.cool) == pytest.approx((warm, cool))


HUES = {
    "one hue": (("4 crimson",), 0, 1e-6),
    "one hue and white": (("4 crimson", "9 white"), 0, 1e-6),
    "greys alone": (("4 white", "2 mid-grey"), 0, 1e-6),
    "neighbours": (("4 crimson", "4 apricot"), 20, 15),
    "opposites": (("4 apricot", "4 cornflower"), 110, 60),
}


@pytest.mark.parametrize(("lines", "told", "within"), HUES.values(), ids=HUES)
def test_hues_lie_apart_as_far_as_they_do_on_the_circle(
    lines: tuple[str, ...], told: float, within: float
) -> None:
    assert mixture(look(*lines), bed()).measures.hue_spread == pytest.approx(told, abs=within)


def test_what_is_near_the_cloth_is_lost_against_it() -> None:
    backing = backing_of("#ffffff", HOUSE)
    mix = mixture(look("1 white, light", "3 plum"), bed(), backing).measures
    assert mix.lost == pytest.approx(0.25)
    plum = difference(f"#{COLOURS['plum']}", "#ffffff")
    assert mix.contrast == pytest.approx(0.75 * plum)


def test_without_a_cloth_nothing_is_said_of_one() -> None:
    mix = mixture(look("1 white, light"), bed(), backing_of(None, HOUSE)).measures
    assert (mix.contrast, mix.lost) == (None, None)


def test_roles_are_told_as_written_and_as_the_colours_play_them() -> None:
    mix = mixture(look("5 cream, depth", "4 plum, light", "1 crimson, accent"), bed())
    assert mix.roles == pytest.approx({"depth": 0.5, "light": 0.4, "accent": 0.1})
    assert mix.parts == pytest.approx({"depth": 0.4, "light": 0.5, "accent": 0.1})
    assert sum(mix.parts.values()) == pytest.approx(1)


def test_no_stems_are_no_mix() -> None:
    with pytest.raises(ValueError, match="no colours"):
        mixture((), bed())
