"""What of a stem there is room for in a piece."""

from __future__ import annotations

from math import pi
from typing import Any

import pytest

from corymb.picture.styles import style_of
from corymb.studio.models import Stem
from corymb.studio.words import LONG_FORMS
from corymb.trade.colour.areas import FILLED, visible_area
from corymb.trade.looks import looks_of
from corymb.trade.room import ALL, room_in
from tests.picture.demo import arrangement, demo, demo_looks
from tests.trade.making import recipe, stem

MINT = stem("mint", form="leaf-spray", head="9 cm", head_length="22 cm")
ROSE = stem("rose", head="8 cm")
PHLOX = stem("phlox", form="cluster", head="10 cm", heads_per_stem="4")


WORN = [look for look in demo_looks() if arrangement(look).vessel.kind in ("wire", "ring")]


def of(kind: str, wide: str, tall: str, **vessel: str) -> dict[str, Any]:
    return {"across": wide, "high": tall, "vessel": {"kind": kind, "name": kind, **vessel}}


@pytest.mark.parametrize(
    ("piece", "one", "expected"),
    [
        pytest.param(of("jar", "20 cm", "26 cm", high="12 cm"), MINT, (9, 0.84 * 14), id="a jar"),
        pytest.param(of("jar", "80 cm", "26 cm", high="12 cm"), MINT, (9, 22), id="at its sides"),
        pytest.param(of("hand", "20 cm", "20 cm"), MINT, (9, 0.84 * 14), id="tied a third up"),
        pytest.param(of("vase", "9 cm", "100 cm", high="90 cm"), MINT, (9, 22), id="never bare"),
        pytest.param(of("wire", "6 cm", "10 cm"), MINT, (2.52, 5.5), id="a sprig"),
        pytest.param(of("wire", "6 cm", "10 cm"), ROSE, (3.12, 3.12), id="a bud"),
        pytest.param(of("ring", "20 cm", "8 cm"), PHLOX, (4, 4), id="a part of a cluster"),
        pytest.param(of("ring", "40 cm", "40 cm"), ROSE, (8, 8), id="a head that is small enough"),
        pytest.param(of("hand", "20 cm", "40 cm"), ROSE, (8, 8), id="round heads are never cut"),
    ],
)
def test_no_more_of_a_stem_is_seen_than_the_piece_has_room_for(
    piece: dict[str, Any], one: Stem, expected: tuple[float, float]
) -> None:
    assert room_in(recipe(**piece)).size_of(one) == pytest.approx(expected)


def test_one_head_of_each_stem_goes_into_what_is_wired() -> None:
    assert ALL.heads_of(PHLOX) == 4
    assert room_in(recipe(**of("wire", "6 cm", "10 cm"))).heads_of(PHLOX) == 1
    assert room_in(recipe(**of("hand", "30 cm", "40 cm"))).heads_of(PHLOX) == 4


def test_every_line_of_a_look_knows_its_room_whatever_was_changed() -> None:
    for look in demo_looks().values():
        room = room_in(demo().recipes[look.recipe])
        assert {line.room for line in (*look.lines, *look.parent_lines)} == {room}, look.id
    plain = recipe(**of("jar", "20 cm", "26 cm", high="12 cm"))
    assert all(line.room == room_in(plain) for line in looks_of(plain, {})[""].lines)


@pytest.mark.parametrize("look_id", WORN)
def test_a_worn_piece_is_drawn_with_the_sprigs_that_its_areas_come_from(look_id: str) -> None:
    whole = arrangement(look_id)
    for line, drawn in zip(
        demo_looks()[look_id].lines, style_of(whole).as_used(whole).stems, strict=True
    ):
        one = demo().stems[line.stem]
        long = drawn.head_cm if one.form not in LONG_FORMS else drawn.head_length_cm or 0
        seen = pi / 4 * drawn.head_cm * long * drawn.heads_per_stem * FILLED[one.form]
        assert visible_area(one, line.room) == pytest.approx(seen), line.stem
