"""Each flower form keeps to the size and the colours it is asked for."""

import re
from math import pi
from random import Random

import pytest
from coloraide import Color

from corymb.picture.colour import Palette, shade
from corymb.picture.forms import FORMS, Drawn, Facing, Head
from corymb.trade.colour.areas import FILLED
from tests.picture.covered import covered
from tests.picture.samples import BY_FORM

CM = 20.0
GREEN = "#5d7350"
every_form = pytest.mark.parametrize("form", FORMS)


def drawn(form: str, across_cm: float, length_cm: float, colours: str = "e8c2b4 80 c98472 20",
          roll: int = 0, view: int = 0, heads: int = 1) -> Drawn:  # fmt: skip
    words = colours.split()
    palette = Palette.of(tuple((words[n], float(words[n + 1])) for n in range(0, len(words), 2)))
    dice = Random(f"{form}{roll}")
    head = Head(across_cm * CM, length_cm * CM, palette, GREEN, dice, CM, heads, view)
    return FORMS[form].draw(head)


def colours_in(markup: str) -> set[str]:
    return set(re.findall(r'(?:fill|stroke)="(#[0-9a-f]{6})"', markup))


def distance(one: str, other: str) -> float:
    return float(Color(one).delta_e(other, method="ok"))


FACE_SIZES = [1.0, 3.0, 9.0, 16.0]


@pytest.mark.parametrize("across_cm", FACE_SIZES)
@pytest.mark.parametrize("form", [name for name in FORMS if FORMS[name].facing is Facing.FRONT])
def test_a_face_is_as_wide_as_the_stem_says(form: str, across_cm: float) -> None:
    for roll in range(3):
        box = drawn(form, across_cm, across_cm, roll=roll).box
        assert box.width / CM == pytest.approx(across_cm, rel=0.09)
        assert abs(box.left + box.right) < 0.1 * across_cm * CM


@pytest.mark.parametrize("across_cm", FACE_SIZES)
@pytest.mark.parametrize("form", ["cup", "iris", "berry", "pod"])
def test_a_head_seen_from_the_side_is_as_wide_as_the_stem_says(form: str, across_cm: float) -> None:
    for roll in range(3):
        assert drawn(form, across_cm, across_cm, roll=roll).box.width / CM == pytest.approx(
            across_cm, rel=0.12
        )


LONG = ["spike", "bell", "plume", "leaf-spray", "needle-spray", "blade", "twig", "trail", "tassel"]


@pytest.mark.parametrize(("across_cm", "length_cm"), [(4, 14), (8, 24), (5, 40)])
@pytest.mark.parametrize("form", LONG)
def test_a_long_head_is_as_long_as_the_stem_says(
    form: str, across_cm: float, length_cm: float
) -> None:
    for roll in range(3):
        box = drawn(form, across_cm, length_cm, roll=roll).box
        assert box.height / CM == pytest.approx(length_cm, rel=0.1)


@pytest.mark.parametrize(("across_cm", "length_cm"), [(4, 14), (8, 24)])
@pytest.mark.parametrize("form", ["spike", "bell", "plume", "leaf-spray", "needle-spray", "twig"])
def test_a_long_head_is_about_as_wide_as_the_stem_says(
    form: str, across_cm: float, length_cm: float
) -> None:
    for roll in range(3):
        box = drawn(form, across_cm, length_cm, roll=roll).box
        assert box.width / CM == pytest.approx(across_cm, rel=0.25)


@every_form
def test_a_head_begins_where_its_stem_ends(form: str) -> None:
    box = drawn(form, 6, 18).box
    assert box.left <= 1 and box.right >= -1
    assert box.top <= 1 and box.bottom >= -1
    if FORMS[form].facing is Facing.SIDE:
        assert box.bottom < 0.2 * 18 * CM
    if FORMS[form].facing is Facing.HANGING:
        assert box.bottom > 0.8 * 18 * CM


@every_form
@pytest.mark.parametrize("colours", ["e8c2b4 80 c98472 20", "6d4c86 100", "f3ecdf 60 4a2630 40"])
def test_every_paper_is_a_near_shade_of_the_stem_s_own_colours(form: str, colours: str) -> None:
    own = [f"#{word}" for word in colours.split()[::2]] + [GREEN]
    for paper in colours_in(drawn(form, 6, 18, colours).pieces):
        assert min(distance(paper, colour) for colour in own) < 0.17


@pytest.mark.parametrize("form", sorted(FORMS.keys() - {"pod"}))
def test_every_colour_of_the_stem_is_seen(form: str) -> None:
    papers = colours_in(drawn(form, 8, 24, "e8c2b4 70 4a62b8 30").pieces)
    for colour in ("#e8c2b4", "#4a62b8"):
        assert min(distance(paper, colour) for paper in papers) < 0.06


@every_form
def test_lighter_and_darker_papers_balance(form: str) -> None:
    """The faces of one colour vary about it: no form drifts lighter or darker as a whole."""
    papers = colours_in(drawn(form, 8, 24, "8c6f9a 100").pieces)
    own = [paper for paper in papers if distance(paper, "#8c6f9a") < 0.06]
    steps = [
        Color(paper).convert("oklch")["lightness"] - Color("#8c6f9a").convert("oklch")["lightness"]
        for paper in own
    ]
    assert abs(sum(steps) / len(steps)) < 0.03


# Heads on a stem, colour, and how high the head is for its width.
@pytest.mark.parametrize(
    ("heads", "colours", "high"),
    [
        (8, "6b2436 100", 1.28),
        (3, "94794f 100", 1.13),
        (11, "e8e2cd 100", 1.23),
        (2, "8d7f62 60 9aa56a 40", 1.03),
        (1, "b0aa90 100", 0.98),
    ],
    ids=["a dark one of many is a bobble", "one of a few a cone in its bracts",
         "a pale one of many a moon with its point",
         "one of two a balloon with horns", "one alone a capsule with its crown"],
)  # fmt: skip
def test_a_pod_is_of_the_kind_that_such_a_stem_bears(heads: int, colours: str, high: float) -> None:
    box = drawn("pod", 4, 4, colours, heads=heads).box
    assert box.height / box.width == pytest.approx(high, abs=0.06)


VIEWED = ["umbel", "cluster", "globe", "rosette", "cup"]


@pytest.mark.parametrize("form", VIEWED)
def test_each_view_of_a_head_is_another_and_as_wide(form: str) -> None:
    views = [drawn(form, 7, 7, view=view) for view in range(FORMS[form].cuts)]
    assert len({view.pieces for view in views}) == len(views) > 1
    for view in views:
        assert view.box.width / CM == pytest.approx(7, rel=0.09)


@pytest.mark.parametrize("across_cm", [3.0, 7.0, 12.0])
@pytest.mark.parametrize("form", VIEWED)
def test_each_view_covers_about_as_much_as_the_colours_are_reckoned_by(
    form: str, across_cm: float
) -> None:
    disc = pi / 4 * (across_cm * CM) ** 2
    for view in range(FORMS[form].cuts):
        part = covered(drawn(form, across_cm, across_cm, view=view)) / disc
        assert part == pytest.approx(FILLED[form], rel=0.2)


@every_form
def test_the_silhouette_takes_the_shadow_s_colour(form: str) -> None:
    assert colours_in(drawn(form, 6, 18).silhouette) == set()
    assert "currentColor" in drawn(form, 6, 18).silhouette


@every_form
def test_a_form_is_drawn_differently_for_other_dice_only(form: str) -> None:
    assert drawn(form, 6, 18) == drawn(form, 6, 18)
    if FORMS[form].cuts > 1 and form not in ("pod", "cup"):
        assert drawn(form, 6, 18, roll=0) != drawn(form, 6, 18, roll=1)


def test_the_samples_hold_every_form() -> None:
    assert BY_FORM.keys() == FORMS.keys()


@pytest.mark.parametrize("shares", [(80, 20), (0.5, 0.3, 0.2), (1,), (0, 0)])
def test_many_florets_keep_the_shares_of_the_colours(shares: tuple[float, ...]) -> None:
    hexes = ("e8c2b4", "c98472", "5a1a2c")
    palette = Palette.of(tuple(zip(hexes, shares, strict=False)))
    picked = [palette.pick(index) for index in range(400)]
    for colour, share in zip(palette.colours, palette.shares, strict=True):
        assert picked.count(colour) / 400 == pytest.approx(share, abs=0.01)


@pytest.mark.parametrize(
    ("colour", "step", "expected"),
    [
        # CSS Color 4: the lightness of #808080 in OKLCh is 0.5999, that of #bdbdbd 0.7984.
        ("#808080", 0.2, "#bdbdbd"),
        ("#808080", 0.0, "#808080"),
        ("#ffffff", 0.1, "#ffffff"),
        ("#000000", -0.1, "#000000"),
    ],
    ids=["lighter grey", "unchanged", "no lighter than white", "no darker than black"],
)
def test_a_shade_moves_lightness_alone(colour: str, step: float, expected: str) -> None:
    assert shade(colour, step) == expected
