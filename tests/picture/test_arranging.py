"""Arrangements are full, in proportion, and held by what the recipe says."""

import dataclasses
import math

import pytest

from corymb.picture import Arrangement, Vessel, draw
from corymb.picture.colour import lightness
from corymb.picture.forms import FORMS, Facing
from corymb.picture.geometry import Point
from corymb.picture.layout import Band, Layout
from corymb.picture.placing import heads_of, mixed
from corymb.picture.styles import STYLES, style_of
from corymb.picture.styles.base import hold_of
from corymb.picture.vessels import VESSELS, kind_of, size_cm
from corymb.picture.vessels.materials import material
from tests.picture.samples import (
    ARRANGEMENTS,
    COSMOS,
    DAHLIA,
    GRASS,
    LACE,
    LARKSPUR,
    SMOKE_BUSH,
)

DOMES = [one for one in ARRANGEMENTS.values() if one.vessel.kind not in ("ring", "wire")]
every_dome = pytest.mark.parametrize("arrangement", DOMES, ids=[one.id for one in DOMES])


def laid_out(arrangement: Arrangement) -> Layout:
    style = style_of(arrangement)
    return style.lay(style.as_used(arrangement))


def covered(layout: Layout, spot: Point) -> bool:
    """Whether a head or a leaf lies over the spot, counting heads as no more than their discs."""
    for bloom in layout.blooms:
        half = bloom.stem.head_cm / 2
        if FORMS[bloom.stem.form].facing is Facing.FRONT:
            middles = [bloom.at]
        else:
            middles = [bloom.at.towards(bloom.lean, bloom.length_cm * n / 8) for n in range(9)]
        if any(spot.distance(middle) < half for middle in middles):
            return True
    return any(
        spot.distance(leaf.at.towards(leaf.lean, leaf.length_cm / 2)) < leaf.length_cm / 2
        for leaf in layout.leaves
    )


@every_dome
def test_there_is_no_gap_in_the_middle(arrangement: Arrangement) -> None:
    layout = laid_out(arrangement)
    faces = [bloom.at for bloom in layout.blooms if bloom.band is not Band.BACK]
    middle = Point(sum(at.x for at in faces) / len(faces), sum(at.y for at in faces) / len(faces))
    reach = arrangement.across_cm * 0.22
    spots = [middle.towards(n * 137.508, reach * math.sqrt(n / 150)) for n in range(150)]
    mouth = hold_of(arrangement).at.y
    bare = [spot for spot in spots if spot.y < mouth and not covered(layout, spot)]
    assert len(bare) <= 4


@every_dome
def test_focal_heads_stand_in_front_and_line_behind(arrangement: Arrangement) -> None:
    for bloom in laid_out(arrangement).blooms:
        if bloom.stem.use == "focal":
            assert bloom.band is Band.FRONT
        if bloom.stem.use == "line":
            assert bloom.band is Band.BACK


@every_dome
def test_lines_stand_higher_than_focal_heads(arrangement: Arrangement) -> None:
    tops: dict[str, list[float]] = {}
    for bloom in laid_out(arrangement).blooms:
        tops.setdefault(bloom.stem.use, []).append(bloom.reach.top)
    if {"line", "focal"} <= tops.keys():
        assert min(tops["line"]) < min(tops["focal"])


def test_heads_keep_their_true_sizes_beside_one_another() -> None:
    """A dahlia of 9 cm is drawn three times as wide as a cornflower of 3 cm."""
    small = dataclasses.replace(DAHLIA, id="cornflower", head_cm=3.0)
    layout = laid_out(Arrangement("x", "posy", Vessel("jar"), 24, 30, (DAHLIA, small)))
    wide = {bloom.stem.id: bloom.reach.width for bloom in layout.blooms}
    assert wide["dahlia-shell"] == pytest.approx(3 * wide["cornflower"])


def test_kinds_take_turns() -> None:
    order = [stem.id for stem in mixed([DAHLIA, dataclasses.replace(LACE, count=2)])]
    assert order.count("dahlia-shell") == 5 and order.count("minoan-lace") == 2
    assert "minoan-lace" in order[:3] and "minoan-lace" in order[4:]


@pytest.mark.parametrize(
    ("heads", "room_cm", "shown"),
    [(1, 1.0, 1), (2, 20.0, 2), (12, 99.0, 10), (5, 4.0, 1), (0, 9.0, 1)],
)
def test_a_spray_is_taken_apart_where_there_is_little_room(
    heads: int, room_cm: float, shown: int
) -> None:
    assert heads_of(dataclasses.replace(COSMOS, heads_per_stem=heads), room_cm) == shown


@pytest.mark.parametrize(
    ("style", "vessel", "across_cm", "high_cm", "like"),
    [
        ("posy", "jar", 20, 26, "posy"),
        ("grave tribute", "ring", 40, 40, "crown"),
        ("lapel", "wire", 6, 10, "buttonhole"),
        ("long table", "bowl", 90, 25, "table-centre"),
        ("foyer", "vase", 70, 120, "standing-piece"),
        ("market bunch", "hand", 30, 45, "bridal-hand-tie"),
        ("bedside", "jar", 14, 20, "posy"),
    ],
)
def test_a_studio_s_own_style_takes_a_fitting_outline(
    style: str, vessel: str, across_cm: float, high_cm: float, like: str
) -> None:
    arrangement = Arrangement("x", style, Vessel(vessel), across_cm, high_cm, (DAHLIA,))
    assert style_of(arrangement) is STYLES[like]


@pytest.mark.parametrize(
    ("name", "background", "expected"),
    [
        ("copper trough", "#f4efe6", "#b0704a"),
        ("Lead-grey urn", "#f4efe6", "#7d8486"),
        ("the big one", "#f4efe6", "#123456"),
        ("white jug", "#3a4140", "#e9e3d8"),
    ],
)
def test_a_vessel_is_drawn_in_the_material_of_its_name(
    name: str, background: str, expected: str
) -> None:
    assert material(name, "#123456", background) == expected


@pytest.mark.parametrize("background", ["#e9e3d8", "#ffffff", "#3b3836", "#000000"])
def test_a_vessel_is_never_lost_against_the_wall(background: str) -> None:
    for name in ("white bowl", "black bowl"):
        tone = material(name, "#888888", background)
        assert abs(lightness(tone) - lightness(background)) > 0.055


def test_a_cup_is_not_drawn_as_a_glass_jar() -> None:
    jar = Arrangement("x", "posy", Vessel("jar", "pint jar", 9, 12), 20, 26, (DAHLIA,))
    cup = dataclasses.replace(jar, vessel=Vessel("jar", "stoneware cup", 9, 12))
    assert kind_of(jar) is VESSELS["jar"]
    assert kind_of(cup) is not VESSELS["jar"]


@pytest.mark.parametrize(
    ("vessel", "expected"),
    [
        (Vessel("jar", "pint jar", 9, 12), (4.5, 12)),
        (Vessel("jar"), (4.5, 10.92)),
        (Vessel("jar", "giant", 90, 90), (12, 17.68)),
    ],
    ids=["as told", "left open", "larger than the arrangement"],
)
def test_a_vessel_has_the_recipe_s_size_or_a_fitting_one(
    vessel: Vessel, expected: tuple[float, float]
) -> None:
    arrangement = Arrangement("x", "posy", vessel, 20, 26, (DAHLIA,))
    assert size_cm(arrangement) == pytest.approx(expected)


def test_a_variant_changes_only_what_was_swapped() -> None:
    """The stems that stay keep their places, so that the eye finds the difference."""
    base = Arrangement("jar", "posy", Vessel("jar"), 24, 30, (DAHLIA, LARKSPUR, SMOKE_BUSH))
    swapped = dataclasses.replace(LARKSPUR, id="foxglove", colours=(("e9b892", 100.0),))
    later = dataclasses.replace(base, id="jar--later", stems=(DAHLIA, swapped, SMOKE_BUSH))
    before = [(bloom.stem.id, bloom.at) for bloom in laid_out(base).blooms]
    after = [(bloom.stem.id, bloom.at) for bloom in laid_out(later).blooms]
    assert [("larkspur-dusk" if i == "foxglove" else i, at) for i, at in after] == before
    assert draw(base) != draw(later)


def test_a_trough_with_focal_heads_enough_is_filled_from_end_to_end() -> None:
    many = dataclasses.replace(DAHLIA, count=18)
    trough = Arrangement("x", "table-centre", Vessel("trough", "", 50, 10), 60, 28,
                         (many, LACE, SMOKE_BUSH))  # fmt: skip
    heads = [bloom.reach for bloom in laid_out(trough).blooms if bloom.stem is many]
    assert min(head.left for head in heads) < -0.8 * 25
    assert max(head.right for head in heads) > 0.8 * 25


def test_short_plumes_of_a_standing_piece_stand_no_more_than_their_length_above_the_heads() -> None:
    plume = dataclasses.replace(GRASS, use="line")
    urn = Arrangement("x", "standing-piece", Vessel("urn", "", 30, 40), 90, 130,
                      (plume, dataclasses.replace(DAHLIA, count=20), SMOKE_BUSH))  # fmt: skip
    blooms = laid_out(urn).blooms
    highest = min(bloom.reach.top for bloom in blooms if bloom.stem.use == "focal")
    assert all(highest - bloom.at.y < 16 for bloom in blooms if bloom.stem is plume)


def test_small_heads_look_out_at_the_rim_of_a_posy_that_large_ones_fill() -> None:
    small = dataclasses.replace(COSMOS, count=6, head_cm=3.5, heads_per_stem=1)
    large = dataclasses.replace(DAHLIA, count=3, head_cm=8.0)
    posy = Arrangement("x", "posy", Vessel("jar", "cup", 8, 7), 14, 16, (large, small))
    blooms = laid_out(posy).blooms
    box = [bloom.reach for bloom in blooms if bloom.stem is large]
    hidden = [
        bloom
        for bloom in blooms
        if bloom.stem is small
        and any(
            head.left < bloom.reach.left
            and bloom.reach.right < head.right
            and head.top < bloom.reach.top
            and bloom.reach.bottom < head.bottom
            for head in box
        )
    ]
    assert [bloom for bloom in hidden if not bloom.lift] == []
