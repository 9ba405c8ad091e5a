"""Warm days without a cold store: what is said, and from when."""

from datetime import time

import pytest

from corymb.trade.hours.heat import FLOWERS, PEOPLE, WORN_OR_DRY, Heat, heat_advice, heat_of

STEPS = {
    20.9: Heat.MILD,
    21: Heat.WARM,
    24.9: Heat.WARM,
    25: Heat.HOT,
    29.9: Heat.HOT,
    30: Heat.VERY_HOT,
    -5: Heat.MILD,
}


@pytest.mark.parametrize(("celsius", "heat"), STEPS.items())
def test_a_day_is_as_hot_as_its_warmest(celsius: float, heat: Heat) -> None:
    assert heat_of(celsius) == heat


# How many sentences: the flowers', one for many hours, and two on hot days for pieces without
# water and for people.
COUNTS = {
    "mild, however long": (20, 12, 0),
    "warm": (22, 0, 4),
    "warm and not long": (22, 2.9, 4),
    "warm and long": (22, 3, 5),
    "hot": (26, 0, 8),
    "hot and long": (26, 6, 9),
    "very hot and long": (31, 6, 10),
}


@pytest.mark.parametrize(("celsius", "hours", "count"), COUNTS.values(), ids=COUNTS)
def test_more_is_said_the_warmer_and_the_longer(celsius: float, hours: float, count: int) -> None:
    advice = heat_advice(celsius, hours)
    assert len(advice) == len(set(advice)) == count


def test_advice_keeps_the_order_of_the_work_and_ends_with_people() -> None:
    advice = heat_advice(31, 5.5)
    in_order = [words for _, words in FLOWERS]
    assert [*advice[:7]] == in_order
    assert advice[7].startswith("They stand 5.5 hours in the warmth: set out as late as you can")
    assert advice[8:] == (WORN_OR_DRY, PEOPLE)


@pytest.mark.parametrize(("celsius", "told"), [(24, False), (26, True)])
def test_the_hour_to_begin_the_cut_is_told_first_on_a_hot_day(celsius: float, told: bool) -> None:
    advice = heat_advice(celsius, 0, time(5, 15))
    assert advice[0].startswith("Begin the cut at 05:15,") is told
    assert len(advice) == len(heat_advice(celsius)) + told


def test_people_are_told_to_get_medical_help_and_to_follow_local_rules() -> None:
    for words in ("medical help", "your local rules", "a qualified person"):
        assert words in PEOPLE


def test_hours_below_nothing_are_refused() -> None:
    with pytest.raises(ValueError, match="0 or more"):
        heat_advice(30, -1)
