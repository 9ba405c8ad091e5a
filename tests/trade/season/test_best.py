"""When a recipe can't be made, which week is the nearest, by any of its looks?"""

from __future__ import annotations

import pytest

from corymb.trade.season.best import best_of
from corymb.trade.season.makeable import Makeable
from tests.trade.making import recipe, stem, variant
from tests.trade.season.studio import all_looks, small_studio

# The jar can be made in weeks 20 to 26, or with poppies in weeks 30 to 36.
NEAREST = {
    "before the recipe's own weeks": (15, 20),
    "between, nearer to the recipe's own": (27, 26),
    "halfway, the one to come": (28, 30),
    "after the variant's": (40, 36),
    "back over the new year": (1, 36),
}


@pytest.mark.parametrize(("week", "nearest"), NEAREST.values(), ids=NEAREST)
def test_the_nearest_week_is_one_in_which_any_of_the_looks_can_be_made(
    week: int, nearest: int
) -> None:
    studio = small_studio(
        stem("rose", in_season="W20 - W26"),
        stem("poppy", in_season="W30 - W36", colours=["red c02020 100 %"]),
        recipe(
            stems=["6 rose, light, essential"],
            variants={"poppies": variant(swap=["rose -> poppy"])},
        ),
    )
    best = best_of(all_looks(studio)["gate-jar"], Makeable.of(studio))[week - 1]
    assert (best.state, best.answer.nearest) == ("none", nearest)
