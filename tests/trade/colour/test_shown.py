"""Does a photo show what its recipe says, by its colours?"""

from __future__ import annotations

import pytest

from corymb.trade.colour.areas import ColourArea
from corymb.trade.colour.likeness import Palette
from corymb.trade.colour.shown import PhotoColours, shown
from corymb.trade.light.lights import WARM_LAMPS
from corymb.trade.light.seen import seen

PLUM, SHELL, WHITE, LEAF, MOSS = "#4b1f2e", "#e8c2b4", "#fbfaf6", "#5d7350", "#6d8354"

POSY = (
    ColourArea("smoke-bush", "depth", "plum", PLUM, 0.2),
    ColourArea("scabious", "depth", "plum", "#401022", 0.1),
    ColourArea("dahlia", "light", "shell", SHELL, 0.7),
)
AS_SAID: Palette = ((SHELL, 0.7), (PLUM, 0.2), ("#401022", 0.1))


def photo(*flowers: tuple[str, float], behind: str = "#7d8a90") -> PhotoColours:
    """Flowers that take half of the photo."""
    half = tuple((hex_, share / 2) for hex_, share in flowers)
    return PhotoColours(flowers, ((behind, 0.5), *half))


MISSING = {
    "all is there": (photo(*AS_SAID), {}),
    "no plum": (photo((SHELL, 1.0)), {"plum": (0.3, ("smoke-bush", "scabious"))}),
    "little plum is plum": (photo((SHELL, 0.97), (PLUM, 0.03)), {}),
    "shell lost before a wall of shell": (photo((PLUM, 1.0), behind=SHELL), {}),
    "nothing of it": (
        photo(("#2a52be", 1.0)),
        {"pink": (0.7, ("dahlia",)), "plum": (0.3, ("smoke-bush", "scabious"))},
    ),
    "by lamplight": (photo(*((seen(hex_, WARM_LAMPS), share) for hex_, share in AS_SAID)), {}),
}


@pytest.mark.parametrize(("taken", "expected"), MISSING.values(), ids=MISSING.keys())
def test_a_colour_is_missing_where_nothing_comes_near_it(
    taken: PhotoColours, expected: dict[str, tuple[float, tuple[str, ...]]]
) -> None:
    found = shown(taken, POSY)
    assert [part.word for part in found.missing] == list(expected)
    for part in found.missing:
        share, stems = expected[part.word]
        assert part.share == pytest.approx(share)
        assert part.stems == stems
    assert found.missing_share == pytest.approx(sum(share for share, _ in expected.values()))


APART = {
    "the same": (photo(*AS_SAID), 0.0),
    "with leaves that the recipe hasn't": (
        photo((LEAF, 0.3), (MOSS, 0.2), *((hex_, share / 2) for hex_, share in AS_SAID)),
        0.0,
    ),
    "by lamplight": (photo(*((seen(hex_, WARM_LAMPS), share) for hex_, share in AS_SAID)), 0.0),
}


@pytest.mark.parametrize(("taken", "expected"), APART.values(), ids=APART.keys())
def test_the_distance_is_of_the_flowers(taken: PhotoColours, expected: float) -> None:
    assert shown(taken, POSY).apart == pytest.approx(expected, abs=1e-6)


def test_more_of_another_colour_is_further() -> None:
    told = [
        shown(photo(*AS_SAID[:1], (WHITE, part), (PLUM, 0.3 - part)), POSY).apart
        for part in (0.17, 0.22, 0.29)
    ]
    assert told == sorted(told)
    assert told[0] > 0


def test_half_as_much_of_a_colour_as_is_written_is_near_enough() -> None:
    half = photo((SHELL, 0.85), (PLUM, 0.1), ("#401022", 0.05))
    assert shown(half, POSY).apart == pytest.approx(0, abs=1e-6)


def test_what_a_recipe_has_little_of_doesn_t_count_where_it_is_missing() -> None:
    few = (*POSY, ColourArea("forget-me-not", "accent", "blue", "#2a52be", 0.09))
    found = shown(photo(*AS_SAID), few)
    assert [part.word for part in found.missing] == ["blue"]
    assert found.missing_share == 0


def test_leaves_that_the_recipe_has_are_wanted() -> None:
    leafy = (*POSY[:1], ColourArea("mint", "depth", "leaf", LEAF, 0.8))
    assert shown(photo((PLUM, 0.2), (LEAF, 0.8)), leafy).apart == pytest.approx(0, abs=1e-6)
    assert shown(photo((PLUM, 0.8), (LEAF, 0.2)), leafy).apart > 5


def test_leaves_alone_are_compared_as_they_are() -> None:
    assert shown(photo((LEAF, 1.0)), POSY).apart > 20


@pytest.mark.parametrize("nothing", [(photo(), POSY), (photo(*AS_SAID), ())])
def test_nothing_is_not_compared(nothing: tuple[PhotoColours, tuple[ColourArea, ...]]) -> None:
    with pytest.raises(ValueError, match="no colours to compare with"):
        shown(*nothing)


def test_a_photo_of_nothing_but_leaves_is_far_from_its_recipe() -> None:
    """Its shares are rounded, and needn't add up to all of it."""
    assert shown(photo((LEAF, 0.4999), (MOSS, 0.4998)), POSY).apart > 20
