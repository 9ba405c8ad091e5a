"""How shapes are counted out, placed and written down."""

import math

import pytest

from corymb.picture.geometry import Matrix, Point, moved, sized, turned
from corymb.picture.paths import Outline, bow, box_of, disc, polyline, smooth
from corymb.picture.seed import dice
from corymb.picture.shapes import filling, leaf, petal, round_petal, spiral
from corymb.picture.svg import element, fine, number, safe_id, text_element


@pytest.mark.parametrize(
    ("value", "written"),
    [
        (0, "0"),
        (-0.04, "0"),
        (0.5, ".5"),
        (-0.5, "-.5"),
        (3.0, "3"),
        (-12.06, "-12.1"),
        (10.0, "10"),
        (100.04, "100"),
        (20.25, "20.2"),
    ],
    ids=str,
)
def test_a_number_is_as_short_as_one_decimal_allows(value: float, written: str) -> None:
    assert number(value) == written


@pytest.mark.parametrize(
    ("value", "written"),
    [(0.0, "0"), (-0.0001, "0"), (1.0, "1"), (0.7071, "0.707"), (-2.5, "-2.5")],
)
def test_a_matrix_keeps_three_decimals(value: float, written: str) -> None:
    assert fine(value) == written


def test_words_and_values_are_escaped() -> None:
    assert element("g", id='a"<&>') == '<g id="a&quot;&lt;&amp;&gt;"/>'
    assert text_element("title", "R&D <b>\x07") == "<title>R&amp;D &lt;b&gt; </title>"
    assert safe_id("päon ie/1") == "p-on-ie-1"


@pytest.mark.parametrize(
    ("outline", "written"),
    [
        (polyline([Point(1, 2), Point(4, 6), Point(4, -1)]), "M1 2l3 4l0-7"),
        (polyline([Point(0, 0), Point(0.5, 0), Point(0.5, 0.5)], closed=True), "M0 0l.5 0l0 .5z"),
        (bow(Point(0, 0), Point(1, 0), Point(2, 1), Point(2, 2)), "M0 0c1 0 2 1 2 2"),
    ],
    ids=["open", "closed", "curve"],
)
def test_a_path_is_written_in_short_steps(outline: Outline, written: str) -> None:
    assert outline.written() == written


def test_rounding_does_not_add_up_along_a_path() -> None:
    steps = [Point(n * 0.14, 0) for n in range(101)]
    travelled = sum(float(part.split()[0]) for part in polyline(steps).written().split("l")[1:])
    assert travelled == pytest.approx(14.0, abs=0.06)


def test_a_disc_is_round() -> None:
    for point in disc(3, 4, 10).points():
        assert math.hypot(point.x - 3, point.y - 4) == pytest.approx(10, abs=0.01)


def test_a_smooth_cut_goes_through_its_points() -> None:
    corners = [Point(0, 0), Point(10, 0), Point(10, 10), Point(0, 10)]
    drawn = list(smooth(corners, closed=True).points())
    for corner in corners:
        assert min(corner.distance(point) for point in drawn) < 1e-9


@pytest.mark.parametrize("shape", [petal, round_petal, leaf])
def test_a_petal_stands_on_the_origin_as_long_and_as_wide_as_told(shape: object) -> None:
    assert callable(shape)
    box = box_of([shape(100.0, 40.0)])
    assert box.bottom == 0
    assert box.height == pytest.approx(100, rel=0.03)
    assert box.width == pytest.approx(40, rel=0.2)


def test_the_spiral_turns_by_the_golden_angle_and_fills_the_disc_evenly() -> None:
    """Vogel 1979: 137.508 degrees from floret to floret, radii as square roots."""
    points = spiral(200, 10)
    for n in (0, 7, 150):
        one, two = (math.degrees(math.atan2(p.y, p.x)) for p in points[n : n + 2])
        assert (two - one) % 360 == pytest.approx(137.508, abs=0.001)
    inner = sum(math.hypot(point.x, point.y) < 5 for point in points)
    assert inner == 50


def test_a_filling_reaches_both_sides() -> None:
    xs = [point.x for point in filling(7, 10)]
    assert min(xs) == pytest.approx(-10)
    assert max(xs) == pytest.approx(10)


@pytest.mark.parametrize(
    ("matrix", "expected"),
    [
        (moved(2, 3), (3, 3)),
        (turned(90), (0, 1)),
        (sized(-1, 1), (-1, 0)),
        (moved(2, 3).then(turned(90)), (2, 4)),
        (turned(90).then(moved(2, 3)), (-3, 3)),
    ],
    ids=["moved", "turned", "mirrored", "turned, then moved", "moved, then turned"],
)
def test_matrices_nest_as_svg_groups_do(matrix: Matrix, expected: tuple[float, float]) -> None:
    assert matrix.of(Point(1, 0)) == pytest.approx(expected)


@pytest.mark.parametrize(
    ("angle", "expected"), [(0, (0, -2)), (90, (2, 0)), (180, (0, 2)), (-90, (-2, 0))]
)
def test_angles_count_clockwise_from_straight_up(
    angle: float, expected: tuple[float, float]
) -> None:
    point = Point(0, 0).towards(angle, 2)
    assert point == pytest.approx(expected)
    assert Point(0, 0).angle_to(point) % 360 == pytest.approx(angle % 360)


def test_a_variant_keeps_the_dice_of_its_recipe() -> None:
    assert dice("hedgerow-jar--later", "places").random() == dice("hedgerow-jar", "places").random()
    assert dice("hedgerow-jar", "places").random() != dice("hedgerow-jar", "leaves").random()
    assert dice("hedgerow-jar", "places").random() != dice("font-bowl", "places").random()


def test_dice_fall_alike_on_every_machine() -> None:
    """Computed once and written down: a changed seed would redraw every studio's pictures."""
    assert dice("hedgerow-jar", "places").random() == pytest.approx(0.7283395638122929, abs=1e-12)
