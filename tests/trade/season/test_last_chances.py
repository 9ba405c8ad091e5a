"""Which recipes soon can't be made any more."""

from __future__ import annotations

import pytest

from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.best import best_of
from corymb.trade.season.last_chances import LastChance, last_chances
from corymb.trade.season.makeable import Makeable
from tests.trade.making import recipe, stem, variant
from tests.trade.season.studio import all_looks, small_studio


def asked(week: IsoWeek, rose: str, poppy: str) -> tuple[LastChance, ...]:
    """A jar of roses, or of poppies in a variant, each with its season."""
    studio = small_studio(
        stem("rose", in_season=rose),
        stem("poppy", in_season=poppy, colours=["red c02020 100 %"]),
        recipe(
            stems=["6 rose, light, essential"],
            variants={"poppies": variant(swap=["rose -> poppy"])},
        ),
    )
    makeable = Makeable.of(studio)
    bests = {known_as: best_of(looks, makeable) for known_as, looks in all_looks(studio).items()}
    return last_chances(bests, makeable, week)


# The week asked in, the seasons of both; the last week, what is lacking after it, when again.
TABLE = {
    "this week": ("2026-W30", "W20 - W30", "W24 - W26", "2026-W30", "rose", "2027-W20"),
    "the fourth week": ("2026-W27", "W20 - W30", "W24 - W26", "2026-W30", "rose", "2027-W20"),
    "a variant goes on": ("2026-W37", "W20 - W30", "W28 - W40", "2026-W40", "poppy", "2027-W20"),
    "a gap and then again": ("2026-W30", "W20 - W30", "W35 - W40", "2026-W30", "rose", "2026-W35"),
    "of two the later": ("2026-W30", "W20 - W30", "W32", "2026-W32", "poppy", "2027-W20"),
    "it comes first and then goes": ("2026-W18", "W20", "W20", "2026-W20", "rose", "2027-W20"),
    "to the end of a long year": ("2026-W51", "W40 - W52", "W45", "2026-W53", "rose", "2027-W40"),
}  # fmt: skip

NONE = {
    "the fifth week": ("2026-W26", "W20 - W30", "W24 - W26"),
    "a variant takes over": ("2026-W29", "W20 - W30", "W28 - W40"),
    "a gap of three weeks": ("2026-W30", "W20 - W30", "W34 - W40"),
    "it goes on all year": ("2026-W29", "all year", "W28 - W40"),
    "it is over": ("2026-W41", "W20 - W30", "W28 - W40"),
}


@pytest.mark.parametrize(
    ("week", "rose", "poppy", "last", "lacking", "again"), TABLE.values(), ids=TABLE
)
def test_a_recipe_has_a_last_chance_when_its_last_look_goes_within_four_weeks(
    week: str, rose: str, poppy: str, last: str, lacking: str, again: str
) -> None:
    (chance,) = asked(iso(week), rose, poppy)
    found = (str(chance.last), chance.after.blocks, str(chance.again))
    assert found == (last, (lacking,), again)
    assert chance.best.state != "none" and chance.after.state == "none"


@pytest.mark.parametrize(("week", "rose", "poppy"), NONE.values(), ids=NONE)
def test_a_recipe_that_goes_on_or_is_over_has_no_last_chance(
    week: str, rose: str, poppy: str
) -> None:
    assert asked(iso(week), rose, poppy) == ()


def iso(text: str) -> IsoWeek:
    return IsoWeek(int(text[:4]), int(text[6:]))
