"""The plan from above: every stem numbered, in its place, and none lost under another."""

from __future__ import annotations

import dataclasses
import math
from itertools import combinations
from xml.etree import ElementTree

import pytest

from corymb.picture import Arrangement, Vessel
from corymb.picture.geometry import Point
from corymb.picture.plan import Plan, draw_plan, key_of, plan_of
from corymb.picture.plan.heads import Placed, crowding_of
from corymb.picture.plan.lettering import numbers_of
from corymb.picture.plan.outlines import Fan, Ground, Long, Round, Wreath
from corymb.picture.shapes import GOLDEN_ANGLE
from tests.picture.demo import arrangement as look
from tests.picture.demo import demo_looks
from tests.picture.samples import ARRANGEMENTS, COSMOS, DAHLIA, IVY, LARKSPUR

SVG = "{http://www.w3.org/2000/svg}"
every = pytest.mark.parametrize("arrangement", ARRANGEMENTS.values(), ids=ARRANGEMENTS)


def test_heads_of_one_size_with_room_stand_on_vogel_s_spiral() -> None:
    few = dataclasses.replace(DAHLIA, count=13, head_cm=1.0)
    plan = plan_of(Arrangement("x", "posy", Vessel("hand"), 60, 30, (few,)))
    for index, head in enumerate(plan.heads):
        turn = math.atan2(head.at.y, head.at.x) - (index + 1) * GOLDEN_ANGLE
        assert math.remainder(turn, math.tau) == pytest.approx(0, abs=1e-9)
        assert math.hypot(*head.at) == pytest.approx(30 * math.sqrt((index + 0.5) / 13))


def held_apart(plan: Plan) -> None:
    for one, other in combinations(plan.heads, 2):
        assert one.at.distance(other.at) >= plan.crowding * (one.radius + other.radius) - 1e-9
    for head in plan.heads:
        assert within(plan.ground, head.at, head.radius)


def within(ground: Ground, at: Point, r: float) -> bool:
    """Whether all of a head lies in the room, told by the room's own shape."""
    out = math.hypot(*at)
    match ground:
        case Round(half):
            return out + r <= half + 1e-9
        case Wreath(ring, half):
            return ring - half - 1e-9 <= out - r and out + r <= ring + half + 1e-9
        case Fan(half):
            return out + r <= half + 1e-9 and at.y - r >= -1e-9
        case Long(half, deep):
            straight = half - deep
            nearest = Point(max(-straight, min(straight, at.x)), 0)
            return at.distance(nearest) + r <= deep + 1e-9
    return False


@every
def test_heads_keep_their_distance_and_stay_within_the_outline(arrangement: Arrangement) -> None:
    held_apart(plan_of(arrangement))


def test_so_do_those_of_every_look_of_the_demo() -> None:
    for known_as in demo_looks():
        plan = plan_of(look(known_as))
        held_apart(plan)
        radii = [head.radius for head in plan.heads]
        assert plan.crowding >= 0.6 * crowding_of(plan.ground.area_cm2, radii), known_as


@every
def test_every_stem_has_one_head_on_the_plan(arrangement: Arrangement) -> None:
    plan = plan_of(arrangement)
    key = key_of(arrangement)
    counted = [sum(head.number == line.number for head in plan.heads) for line in key]
    assert counted == [line.count for line in key]
    assert sum(counted) == sum(stem.count for stem in arrangement.stems)


def test_a_head_is_drawn_true_to_size() -> None:
    plan = plan_of(ARRANGEMENTS["rooks-wing-hand-tie"])
    assert {head.stem.id: head.radius for head in plan.heads}["dahlia-shell"] == 4.5


def test_leaf_and_line_are_placed_first_and_accents_last() -> None:
    accent = dataclasses.replace(COSMOS, id="ember", role="accent", use="focal")
    stems = (accent, COSMOS, DAHLIA, LARKSPUR, IVY)
    key = key_of(Arrangement("x", "posy", Vessel("jar"), 24, 30, stems))
    order = ["ivy", "larkspur dusk", "dahlia shell", "cosmos white", "ember"]
    assert [line.name for line in key] == order
    assert [line.number for line in key] == [1, 2, 3, 4, 5]


@pytest.mark.parametrize(
    ("known_as", "ground"),
    [
        ("spring-posy", Round),
        ("rooks-wing-hand-tie", Round),
        ("christening-bowl", Round),
        ("barn-trough", Long),
        ("hotel-summer", Fan),
        ("meadow-crown", Wreath),
        ("winter-wreath", Wreath),
    ],
)
def test_each_style_has_its_own_outline_from_above(known_as: str, ground: type) -> None:
    assert isinstance(plan_of(ARRANGEMENTS[known_as]).ground, ground)


def test_focal_heads_lie_further_in_than_leaf() -> None:
    plan = plan_of(ARRANGEMENTS["rooks-wing-hand-tie"])
    out = {use: [math.hypot(*h.at) for h in plan.heads if h.stem.use == use] for use in
           ("focal", "foliage")}  # fmt: skip
    means = {use: sum(found) / len(found) for use, found in out.items()}
    assert means["focal"] < 0.7 * means["foliage"]


@pytest.mark.parametrize(
    "known_as", [known for known in demo_looks() if known.startswith(("gleaners", "kitchen-g"))]
)
def test_a_kind_of_flower_stands_at_both_ends_of_a_trough(known_as: str) -> None:
    plan = plan_of(look(known_as))
    for number in {head.number for head in plan.heads if head.stem.count >= 3}:
        across = [head.at.x for head in plan.heads if head.number == number]
        assert min(across) < 0 < max(across)


def test_many_focal_heads_go_all_the_way_round_a_ring() -> None:
    plan = plan_of(look("meadow-crown"))
    focal = [head.at.y for head in plan.heads if head.stem.use == "focal"]
    assert min(focal) < 0 < max(focal)


@every
def test_a_plan_says_every_number_in_black_and_white_and_its_scale(
    arrangement: Arrangement,
) -> None:
    root = ElementTree.fromstring(draw_plan(plan_of(arrangement)))
    words = [part.text or "" for part in root.iter(f"{SVG}text")]
    assert {str(line.number) for line in key_of(arrangement)} <= set(words)
    assert any(word.endswith(" cm") for word in words) and "front" in words
    for circle in root.iter(f"{SVG}circle"):
        assert circle.get("stroke") == "#221d18"


LEAST_POINTS, PRINTED_CM = 7.0, 9.0  # legible in print; a plan on a helper's sheet


def numbers_on(plan: Plan) -> list[tuple[float, float, float, float]]:
    """Left, top, right, bottom of each number: a figure takes 0.56 of its size, 0.72 in height."""
    boxes = []
    for part in ElementTree.fromstring(draw_plan(plan)).iter(f"{SVG}text"):
        size = float(part.get("font-size", "0"))
        assert size / 1000 * PRINTED_CM / 2.54 * 72 >= LEAST_POINTS
        if (part.text or "").isdigit():
            x, y = float(part.get("x", "0")), float(part.get("y", "0"))
            half = 0.56 * size * len(part.text or "") / 2
            boxes.append((x - half, y - 0.72 * size, x + half, y))
    return boxes


@pytest.mark.parametrize("known_as", [known for known in demo_looks() if "--" not in known])
def test_no_number_runs_into_another_or_is_too_small_to_read_in_print(known_as: str) -> None:
    plan = plan_of(look(known_as))
    boxes = numbers_on(plan)
    assert len(boxes) == len(plan.heads)
    for one, other in combinations(boxes, 2):
        beside = one[2] <= other[0] or other[2] <= one[0]
        assert beside or one[3] <= other[1] or other[3] <= one[1], known_as


def test_a_number_stands_where_its_head_is_seen() -> None:
    """Two heads of 10 cm, half over each other: the lower one's number leaves the upper alone."""
    two = dataclasses.replace(DAHLIA, count=2, head_cm=10)
    over, under = (Placed(n, two, Point(x, 0), 5) for n, x in ((1, 3.0), (2, -3.0)))
    number = next(each for each in numbers_of([under, over], 50) if each.head is under)
    assert number.at.distance(Point(3 * 50, 0)) > 5 * 50 + number.size * 0.4
    assert number.at.distance(Point(-3 * 50, 0)) < 5 * 50 - number.size * 0.4


def test_the_scale_bar_is_true() -> None:
    """The outline of a posy of 18 cm is 928 units wide; so a bar of 2 cm takes 103."""
    svg = draw_plan(plan_of(ARRANGEMENTS["spring-posy"]))
    assert "m0-9H139.1m0-9v18" in svg and ">2 cm<" in svg


@every
def test_a_plan_is_told_in_words_too(arrangement: Arrangement) -> None:
    root = ElementTree.fromstring(draw_plan(plan_of(arrangement)))
    said = " ".join(root.findtext(f"{SVG}{part}") or "" for part in ("title", "desc"))
    assert "seen from above" in said
    for line in key_of(arrangement):
        assert f"{line.number}: {line.count} {line.name}" in said


@every
def test_the_same_values_give_the_same_plan(arrangement: Arrangement) -> None:
    assert draw_plan(plan_of(arrangement)) == draw_plan(plan_of(dataclasses.replace(arrangement)))


def test_without_stems_a_plan_is_an_empty_outline() -> None:
    empty = Arrangement("empty", "posy", Vessel("jar"), 20, 30, ())
    assert plan_of(empty).heads == ()
    assert "<circle" not in draw_plan(plan_of(empty))
