"""What is said of a stem that is lacking, and of what would mend that."""

from __future__ import annotations

from dataclasses import replace

import pytest

from corymb.trade.season.uncovered import Lack
from corymb.trade.swaps.beyond import Nearest
from corymb.trade.swaps.standing_in import StandIn
from corymb.views.compose.mending import lack_view
from tests.views.making import catalogue_of, demo, swap

CATALOGUE = catalogue_of(demo(), "staff")
SWAP = "5 coral zinnia in place of 3 shell dahlia (nearly the same colour; "


def near(*against: str, weeks: int = 8) -> Nearest:
    return Nearest(swap("dahlia-shell", "zinnia-coral"), weeks, against)


MENDS = {
    "nothing": (
        Lack("dahlia-shell", True, None),
        "Nothing near it stands then.",
        "Grow or buy something like it.",
    ),
    "essential": (
        Lack("dahlia-shell", True, near()),
        f"It is essential, so only a variant can change it. One with {SWAP}",
        ") would do.",
    ),
    "only together too much": (
        Lack("dahlia-shell", False, near(weeks=5)),
        f"A variant with {SWAP}",
        ") would do in 5 of the 8 weeks.",
    ),
    "outside the limits": (
        Lack("dahlia-shell", False, near("further off in colour", "too short")),
        f"The nearest is {SWAP}",
        "outside the limits: further off in colour and too short. Grow or buy something nearer, or "
        "write a variant with it.",
    ),
    "outside the limits and not all the time": (
        Lack("dahlia-shell", False, near("too heavy", weeks=7)),
        f"The nearest in 7 of the 8 weeks is {SWAP}",
        "outside the limits: too heavy. Grow or buy something nearer, or write a variant with it.",
    ),
}


@pytest.mark.parametrize(("lack", "begins", "ends"), MENDS.values(), ids=MENDS)
def test_what_would_mend_a_lack_is_told_with_what_speaks_against_it(
    lack: Lack, begins: str, ends: str
) -> None:
    view = lack_view(CATALOGUE, lack, weeks=8)
    assert view.stem.label == "Dahlia, shell"
    assert view.careful == ()
    assert view.mend.startswith(begins) and view.mend.endswith(ends)


def test_what_can_hurt_where_the_lacking_stem_couldn_t_is_told() -> None:
    coming = next(s for s in demo().stems.values() if "skin allergy" in s.hazards)
    lack = Lack("dahlia-shell", False, Nearest(swap("dahlia-shell", coming.id), 8, ()))
    assert "can set off a skin allergy" in " ".join(lack_view(CATALOGUE, lack, weeks=8).careful)


FAR = {
    "forty for eight": replace(swap("dahlia-shell", "zinnia-coral"), out_count=8, in_count=40),
    "one for five": replace(swap("dahlia-shell", "zinnia-coral"), out_count=5, in_count=1),
    "another colour": replace(swap("dahlia-shell", "zinnia-coral"), colour_distance=35.0),
}


@pytest.mark.parametrize("swap_", FAR.values(), ids=FAR)
def test_what_is_far_off_is_not_called_the_nearest(swap_: StandIn) -> None:
    lack = Lack("dahlia-shell", False, Nearest(swap_, 8, ()))
    assert lack_view(CATALOGUE, lack, weeks=8).mend.startswith("Nothing near it stands then.")


def test_what_breaks_three_limits_is_not_called_the_nearest() -> None:
    lack = Lack("dahlia-shell", False, near("too short", "too heavy", "further off in colour"))
    assert lack_view(CATALOGUE, lack, weeks=8).mend.startswith("Nothing near it stands then.")
