"""Which stems do the same work: flowers, grasses and leaves, fruit, what hangs?"""

from __future__ import annotations

from typing import Any

import pytest

from corymb.studio.words import FORMS
from corymb.trade.swaps.families import FAMILIES, family_of
from tests.trade.making import stem

LONG = {"head_length": "12 cm"}


def conditioned(hours: int) -> dict[str, Any]:
    return {"conditioning": {"hours": str(hours), "do": "Stand in water."}}


OF: dict[str, tuple[dict[str, Any], str]] = {
    "a dahlia": ({"form": "rosette"}, "flowers"),
    "an iris": ({"form": "iris", "use": "line"}, "flowers"),
    "a foxglove": ({"form": "spike", "use": "line", **LONG}, "flowers"),
    "lilac": ({"form": "plume", "use": "focal", **LONG, **conditioned(10)}, "flowers"),
    "lady's mantle": ({"form": "plume", "use": "filler", **LONG, **conditioned(6)}, "flowers"),
    "quaking grass": (
        {"form": "plume", "use": "filler", **LONG, **conditioned(2)},
        "grasses and leaves",
    ),
    "a dried grass": (
        {"form": "plume", "use": "line", **LONG, **conditioned(0)},
        "grasses and leaves",
    ),
    "eucalyptus": ({"form": "leaf-spray", "use": "foliage", **LONG}, "grasses and leaves"),
    "fir": ({"form": "needle-spray", "use": "foliage", **LONG}, "grasses and leaves"),
    "rose hips": ({"form": "berry", "use": "filler"}, "fruit"),
    "a poppy head": ({"form": "pod", "use": "filler"}, "fruit"),
    "dogwood": ({"form": "twig", "use": "line", **LONG}, "bare wood"),
    "hazel catkins": ({"form": "tassel", "use": "line", **LONG}, "hanging"),
    "trailing ivy": ({"form": "trail", "use": "foliage", **LONG}, "hanging"),
}


@pytest.mark.parametrize(("keys", "family"), OF.values(), ids=OF)
def test_a_stem_is_of_the_family_whose_work_it_does(keys: dict[str, Any], family: str) -> None:
    assert family_of(stem(**keys)) == family


def test_every_form_is_of_one_family() -> None:
    assert sorted(form for forms in FAMILIES.values() for form in forms) == sorted(FORMS)
