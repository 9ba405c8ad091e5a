"""What a colour plays in a mix, by itself and where a recipe calls it something."""

from __future__ import annotations

import pytest

from corymb.trade.colour.mixture import mixture
from corymb.trade.colour.parts import part_played
from tests.trade.colour.mixes import HOUSE, bed, demo, demo_looks, look

CRIMSON = "#b01e3c"

BY_ITSELF = {
    "strong among quiet ones": (("9 cream", "1 crimson"), 0.1, "accent"),
    "at the most an accent takes": (("9 cream", "3 crimson"), 0.25, "accent"),
    "more than an accent takes": (("9 cream", "4 crimson"), 4 / 13, "depth"),
    "among strong ones": (("9 crimson", "1 cream"), 0.1, "depth"),
}


@pytest.mark.parametrize(("lines", "share", "part"), BY_ITSELF.values(), ids=BY_ITSELF)
def test_a_strong_colour_is_an_accent_only_in_small_parts_among_quieter_ones(
    lines: tuple[str, ...], share: float, part: str
) -> None:
    assert part_played(CRIMSON, share, mixture(look(*lines), bed()).measures, HOUSE) == part


# White, plum, moss and crimson are about 100, 16, 46 and 38 light.
AS_CALLED = {
    "a leaf of the middle called light": ("4 white, light", "4 plum, depth", "2 moss, light"),
    "that leaf called depth": ("4 white, light", "4 plum, depth", "2 moss, depth"),
    "a strong dark colour called depth": ("8 white, light", "2 crimson, depth"),
    "an accent that is one": ("8 white, light", "2 crimson, accent"),
}


@pytest.mark.parametrize("lines", AS_CALLED.values(), ids=AS_CALLED)
def test_what_is_not_plainly_otherwise_counts_as_called(lines: tuple[str, ...]) -> None:
    mix = mixture(look(*lines), bed())
    assert mix.parts == pytest.approx(mix.roles)


OTHERWISE = {
    "a light that is dark": (("6 white, light", "4 plum, light"), (0.4, 0.6, 0)),
    "a depth that is light": (("6 white, depth", "4 plum, depth"), (0.4, 0.6, 0)),
    "an accent that takes too much": (("6 white, light", "4 crimson, accent"), (0.4, 0.6, 0)),
}


@pytest.mark.parametrize(("lines", "parts"), OTHERWISE.values(), ids=OTHERWISE)
def test_what_is_plainly_otherwise_counts_as_what_it_is(
    lines: tuple[str, ...], parts: tuple[float, ...]
) -> None:
    mix = mixture(look(*lines), bed())
    assert tuple(mix.parts.values()) == pytest.approx(parts)


def test_no_shares_of_the_demo_contradict_that_all_its_stems_do_what_they_are_called() -> None:
    """The second colour of a stem may do something else; a sixth of the whole never does."""
    studio, _ = demo()
    for known_as, each in demo_looks().items():
        mix = mixture(each.lines, studio.stems, limits=studio.house.colour)
        apart = {role: abs(mix.roles[role] - mix.parts[role]) for role in mix.roles}
        assert max(apart.values()) < 1 / 6, known_as
