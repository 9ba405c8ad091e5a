"""A single word in a line of an order is a variant or a size: the recipe decides."""

from __future__ import annotations

import pytest

from corymb.trade.order_lines import sizes_of, variant_and_size
from tests.trade.making import recipe, variant

JAR = recipe(
    sizes={"small": "0.6", "later": "1.2"},
    variants={"later": variant(add=["3 aster, accent"])},
)


def test_a_recipe_has_a_regular_size_and_its_own() -> None:
    assert sizes_of(JAR) == ("regular", "small", "later")


@pytest.mark.parametrize(
    ("words", "meant"),
    [
        pytest.param((None, None), ("", "regular"), id="nothing said"),
        pytest.param(("later", None), ("later", "regular"), id="both: the variant goes first"),
        pytest.param(("small", None), ("", "small"), id="a size alone"),
        pytest.param(("regular", None), ("", "regular"), id="the regular size"),
        pytest.param(("later", "small"), ("later", "small"), id="a variant in a size"),
        pytest.param((None, "small"), ("", "small"), id="a size under its own key"),
        pytest.param(("unheard-of", None), ("unheard-of", "regular"), id="neither"),
    ],
)
def test_a_word_is_a_variant_before_it_is_a_size(
    words: tuple[str | None, str | None], meant: tuple[str, str]
) -> None:
    assert variant_and_size(JAR, *words) == meant
