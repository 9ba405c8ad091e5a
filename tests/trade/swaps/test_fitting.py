"""May this stem go into this style?"""

from __future__ import annotations

from typing import Any

import pytest

from corymb.studio.words import HAZARDS
from corymb.trade.swaps.fitting import fits, misfits
from tests.trade.making import stem, style

MISFITS: dict[str, tuple[dict[str, Any], list[tuple[bool, str]]]] = {
    "nothing against it": ({}, []),
    "as heavy as may be": ({"weight": "30 g"}, []),
    "just long enough": ({"length": "8-12 cm"}, []),
    "a hazard that isn't left out": ({"hazards": ["heavy pollen"]}, []),
    "a hazard": (
        {"hazards": ["thorns", "heavy pollen"]},
        [(True, "has a hazard that posies leave out: thorns.")],
    ),
    "two hazards": (
        {"hazards": ["poisonous if eaten", "thorns"]},
        [(True, "has a hazard that posies leave out: poisonous if eaten or thorns.")],
    ),
    "too heavy": ({"weight": "31 g"}, [(False, "weighs 31 g; posies take stems of up to 30 g.")]),
    "too short": ({"length": "6-10 cm"}, [(False, "is cut at 6-10 cm; posies need 12-30 cm.")]),
    "all of it": (
        {"hazards": ["thorns"], "weight": "90 g", "length": "6 cm"},
        [
            (True, "has a hazard that posies leave out: thorns."),
            (False, "weighs 90 g; posies take stems of up to 30 g."),
            (False, "is cut at 6 cm; posies need 12-30 cm."),
        ],
    ),
}


@pytest.mark.parametrize(("keys", "told"), MISFITS.values(), ids=MISFITS)
def test_what_speaks_against_a_stem_in_a_style_is_told(
    keys: dict[str, Any], told: list[tuple[bool, str]]
) -> None:
    one = stem(**keys)
    assert list(misfits(one, style())) == told
    assert fits(one, style()) is (not told)


@pytest.mark.parametrize("hazard", HAZARDS)
def test_no_hazard_that_a_style_leaves_out_fits(hazard: str) -> None:
    assert not fits(stem(hazards=[hazard]), style(excludes=[hazard]))
    assert fits(stem(hazards=[hazard]), style(excludes=[]))
