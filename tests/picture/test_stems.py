"""No head floats: every head stands on a stem that runs into the tie, the vessel or the ring."""

import re
from itertools import pairwise
from xml.etree import ElementTree

import pytest

from corymb.picture import Arrangement, Vessel, draw
from corymb.picture.layout import Layout
from corymb.picture.stems import width_cm
from corymb.picture.stringing import TWIG
from corymb.picture.styles import style_of
from corymb.picture.styles.base import hold_of
from tests.picture.samples import ARRANGEMENTS, DAHLIA, HONESTY

SVG = "{http://www.w3.org/2000/svg}"
every = pytest.mark.parametrize("arrangement", ARRANGEMENTS.values(), ids=ARRANGEMENTS)
standing = pytest.mark.parametrize(
    "arrangement",
    [one for one in ARRANGEMENTS.values() if one.vessel.kind != "ring"],
    ids=[one.id for one in ARRANGEMENTS.values() if one.vessel.kind != "ring"],
)
NUMBER = re.compile(r"-?\d*\.?\d+")


def laid_out(arrangement: Arrangement) -> Layout:
    style = style_of(arrangement)
    return style.lay(style.as_used(arrangement))


def end_of(path: str) -> tuple[float, float]:
    """Where an open path of curves ends."""
    x = y = 0.0
    for letter, numbers in re.findall(r"([Mcl])([^Mclz]*)", path):
        values = [float(value) for value in NUMBER.findall(numbers)]
        x, y = (values[0], values[1]) if letter == "M" else (x + values[-2], y + values[-1])
    return x, y


@every
def test_in_the_drawing_a_stem_ends_at_every_head(arrangement: Arrangement) -> None:
    root = ElementTree.fromstring(draw(arrangement))
    body = root.findall(f"{SVG}g")[-1]
    ends = [end_of(path.get("d", "")) for path in body if path.get("stroke")]
    heads = [use for use in body.iter(f"{SVG}use") if not use.get("opacity")]
    assert len(heads) >= sum(stem.count for stem in arrangement.stems)
    for head in heads:
        *_, x, y = (float(value) for value in NUMBER.findall(head.get("transform", "")))
        assert min(abs(x - ex) + abs(y - ey) for ex, ey in ends) < 0.3


@standing
def test_every_stem_passes_through_the_hold(arrangement: Arrangement) -> None:
    hold = hold_of(arrangement)
    for stalk in laid_out(arrangement).stalks:
        assert stalk.held.y == hold.at.y
        assert abs(stalk.held.x - hold.at.x) <= hold.half_cm + 1e-9
        assert stalk.end is not None
        assert abs(stalk.end.x - hold.at.x) <= hold.end_half_cm + 1e-9
        assert hold.at.y < stalk.end.y <= hold.end_y


def test_many_pods_hang_apart_on_twigs_of_their_own_stem() -> None:
    layout = laid_out(Arrangement("x", "table-centre", Vessel("bowl"), 44, 30, (HONESTY, DAHLIA)))
    stalks = [stalk for stalk in layout.stalks if stalk.width_cm < width_cm(DAHLIA)]
    own, twigs = (
        [stalk for stalk in stalks if (stalk.end is None) is twig] for twig in (False, True)
    )
    assert len(own) == 5 and len(twigs) >= 5 * 5
    for twig in twigs:
        assert twig.held.distance(twig.head) == pytest.approx(TWIG * 4)
    for pod in twigs:
        near = [other for other in twigs if other.head.distance(pod.head) < 1]
        assert len(near) <= 2


@every
def test_every_stem_of_the_recipe_is_in_the_picture(arrangement: Arrangement) -> None:
    blooms = laid_out(arrangement).blooms
    for stem in arrangement.stems:
        seen = sum(bloom.stem.id == stem.id for bloom in blooms)
        assert stem.count <= seen <= stem.count * stem.heads_per_stem


@every
def test_every_head_lies_on_the_sheet(arrangement: Arrangement) -> None:
    layout = laid_out(arrangement)
    for bloom in layout.blooms:
        assert layout.box.left <= bloom.at.x <= layout.box.right
        assert layout.box.top <= bloom.at.y <= layout.box.bottom


@standing
def test_the_picture_has_the_recipe_s_proportions(arrangement: Arrangement) -> None:
    """Tips may break the outline, so within three tenths of the width."""
    box = laid_out(arrangement).box
    assert box.width == pytest.approx(arrangement.across_cm, rel=0.3)
    assert box.height == pytest.approx(arrangement.high_cm, rel=0.2)


@every
def test_heads_of_a_kind_are_spread_over_the_arrangement(arrangement: Arrangement) -> None:
    """Five or more heads of one kind never all keep to one side of the middle."""
    for stem in arrangement.stems:
        xs = [bloom.at.x for bloom in laid_out(arrangement).blooms if bloom.stem.id == stem.id]
        if len(xs) >= 5:
            assert min(xs) < 0 < max(xs)


def test_the_samples_are_all_different() -> None:
    drawings = [draw(one) for one in ARRANGEMENTS.values()]
    assert all(one != other for one, other in pairwise(sorted(drawings)))
