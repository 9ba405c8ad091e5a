"""How well one colour can be read on another, by the standard's own formula.

Source: WCAG 2.2, definitions of relative luminance and of contrast ratio, success criteria 1.4.3,
1.4.6 and 1.4.11; the ratios in the table come from wcag-contrast-ratio as well. The formula is
written out here, so that what the product and its library say is seen from outside.
"""

from __future__ import annotations

import pytest
from coloraide import Color

from corymb.views.compose.tint import ENOUGH, readable


def luminance(hex_: str) -> float:
    channels = (int(hex_[at : at + 2], 16) / 255 for at in (1, 3, 5))
    red, green, blue = (
        c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    darker, lighter = sorted((luminance(one), luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


RATIOS = [
    ("#000000", "#ffffff", 21.0000),
    ("#777777", "#ffffff", 4.4781),
    ("#767676", "#ffffff", 4.5422),
    ("#ff0000", "#ffffff", 3.9985),
    ("#0000ff", "#ffffff", 8.5925),
    ("#595959", "#ffffff", 7.0047),
    ("#949494", "#ffffff", 3.0335),
    ("#c71585", "#fffff0", 5.3723),
    ("#228b22", "#ffffff", 4.3895),
    ("#ffd700", "#ffffff", 1.4026),
    ("#800080", "#e6e6fa", 7.6535),
    ("#757575", "#ffffff", 4.6075),
]


@pytest.mark.parametrize(("one", "other", "told"), RATIOS)
def test_a_ratio_is_the_standard_s_and_so_is_that_of_the_library_a_page_s_tint_is_found_with(
    one: str, other: str, told: float
) -> None:
    assert contrast(one, other) == contrast(other, one) == pytest.approx(told, abs=1e-3)
    assert Color(one).contrast(other, method="wcag21") == pytest.approx(told, abs=1e-3)


@pytest.mark.parametrize(("colour", "ground", "ratio"), RATIOS)
def test_a_tint_is_moved_where_the_standard_has_it_too_faint_and_no_further_than_needed(
    colour: str, ground: str, ratio: float
) -> None:
    moved = readable(colour, ground)
    assert (moved == colour) == (ratio >= ENOUGH)
    assert contrast(moved, ground) >= 4.5
    assert ratio >= ENOUGH or contrast(moved, ground) < 5.2


def test_a_ratio_is_not_rounded_before_it_is_judged() -> None:
    """It prints as 4.5, and is not enough."""
    assert f"{contrast('#777777', '#ffffff'):.1f}" == "4.5"
    assert readable("#777777", "#ffffff") != "#777777"
