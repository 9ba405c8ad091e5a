"""The year of an arrangement in spells of weeks with one answer, from the present on."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.best import Best
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.spells import runs_from, spells_of, sure_words
from corymb.views.pieces import Audience
from corymb.views.season import SpellView
from tests.trade.making import recipe, stem
from tests.trade.season.studio import small_studio
from tests.views.making import best, catalogue_of, demo, swap, year_of

CLIENTS = catalogue_of(demo())
JAR, LATER = (CLIENTS.looks["hedgerow-jar"][known_as] for known_as in ("", "later"))
ZINNIAS = [swap("cosmos-white", "zinnia-coral")]
NEVER = best(1, JAR, "none", 0.0, blocks=["scabious-plum"])


def spells(
    bests: list[Best],
    otherwise: Best = NEVER,
    week_of: str = "2026-01-01",
    audience: Audience = "staff",
) -> list[SpellView]:
    catalogue = catalogue_of(demo(), audience, date.fromisoformat(week_of))
    return list(spells_of(catalogue, year_of(bests, otherwise)))


def pictured(first: int, last: int) -> list[Best]:
    return [best(week, JAR) for week in range(first, last + 1)]


SURE = {
    "alike": ([0.95, 1.0], "sure"),
    "from one end to the other": ([0.7, 0.5], "likely, touch and go at the end"),
    "at the start": ([0.5, 0.95, 1.0], "sure, touch and go at the start"),
    "at the start, less so at the end": (
        [0.5, 0.7, 0.95, 0.7], "sure, touch and go at the start",
    ),
    "at both ends": ([0.5, 0.95, 0.5], "sure, touch and go at both ends"),
    "a dip in the middle": ([0.95, 0.5, 1.0], "sure, touch and go in part"),
    "one week": ([0.4], "touch and go"),
}  # fmt: skip


@pytest.mark.parametrize(("chances", "words"), SURE.values(), ids=SURE)
def test_how_sure_a_spell_is_goes_by_its_best_week_and_where_it_is_less(
    chances: list[float], words: str
) -> None:
    of_run = [best(week, JAR, "pictured", chance) for week, chance in enumerate(chances, 1)]
    assert sure_words(of_run) == words


def test_a_year_with_one_answer_is_one_spell() -> None:
    (told,) = spells([*pictured(1, 51), best(52, JAR, chance=0.7)])
    assert (told.when, told.weeks, told.answer.words) == ("All year", "every week", "As pictured")
    assert told.sure == "sure, likely in part"


# By the calendar: week 27 of 2026 is 29 June to 5 July, week 41 5 to 11 October; in 2027 it is
# 5 July to 11 July and 11 to 17 October.
SUMMER = "weeks 27 to 41, 29 June to 11 October 2026"
WINTER = "weeks 42 to 26, 12 October 2026 to 4 July 2027"


@pytest.mark.parametrize(
    ("week_of", "first", "second"),
    [
        ("2026-07-20", SUMMER, WINTER),
        ("2026-12-10", WINTER, "weeks 27 to 41, 5 July to 17 October 2027"),
        ("2027-02-10", WINTER, "weeks 27 to 41, 5 July to 17 October 2027"),
    ],
    ids=["in-it", "after-it", "in-the-next-year"],
)
def test_the_year_begins_with_the_spell_of_now_from_its_own_beginning(
    week_of: str, first: str, second: str
) -> None:
    assert [told.weeks for told in spells(pictured(27, 41), week_of=week_of)] == [first, second]


def test_a_spell_is_told_in_thirds_of_the_months_of_its_year() -> None:
    # The Thursday of week 27 is 2 July, that of week 41 8 October and of week 42 15 October 2026;
    # that of week 26 of 2027 is 1 July.
    told = spells(pictured(27, 41), week_of="2026-07-20")
    assert [each.when for each in told] == [
        "Early July to early October",
        "Mid October to early July",
    ]


def test_other_swaps_or_another_look_begin_a_new_spell() -> None:
    bests = [
        *pictured(20, 21),
        best(22, LATER, "variant"),
        best(23, JAR, "swaps", swaps=ZINNIAS),
        best(24, JAR, "swaps", swaps=[swap("cosmos-white", "zinnia-coral", 3, 4)]),
    ]
    told = [each.weeks.partition(",")[0] for each in spells(bests)]
    assert told == ["weeks 25 to 19", "weeks 20 to 21", "week 22", "week 23", "week 24"]


@pytest.mark.parametrize(
    ("audience", "blocks"),
    [
        ("staff", "Nothing stands in for plum scabious and, for part of it, others."),
        ("clients", "Not out then: plum scabious and, for part of it, others."),
    ],
)
def test_weeks_out_of_season_are_one_spell_and_name_what_is_missing_all_the_time(
    audience: Audience, blocks: str
) -> None:
    bests = [
        *pictured(20, 30),
        best(31, JAR, "none", blocks=["cosmos-white", "scabious-plum"]),
        best(32, JAR, "none", blocks=["scabious-plum", "burnet-wine"]),
    ]
    not_then = spells(bests, audience=audience)[0]
    assert not_then.weeks == "weeks 31 to 19, 28 July 2025 to 10 May 2026"
    assert not_then.answer.blocks == blocks
    assert not_then.answer.nearest == "Again from week 20, 11 to 17 May 2026."


@pytest.mark.parametrize(
    ("audience", "blocks"),
    [
        (
            "staff",
            "At one time or another nothing stands in for plum scabious and white cosmos.",
        ),
        ("clients", "Not out at one time or another: plum scabious and white cosmos."),
    ],
)
def test_where_nothing_is_missing_all_the_time_the_most_missed_is_named_first(
    audience: Audience, blocks: str
) -> None:
    blocked = [["cosmos-white"], ["scabious-plum"], ["scabious-plum"]]
    bests = [*pictured(4, 52)] + [
        best(week, JAR, "none", blocks=stems) for week, stems in enumerate(blocked, 1)
    ]
    assert spells(bests, audience=audience)[0].answer.blocks == blocks


def test_what_is_missing_is_that_of_the_look_that_comes_next() -> None:
    never = best(1, JAR, "none", 0.0, blocks=["crocosmia-ember"])
    told = spells([best(20, LATER, "variant")], never, week_of="2026-01-08")[0].answer.blocks
    assert told and "crocosmia" not in told


def test_a_recipe_that_can_never_be_made_names_two_that_are_never_out_together() -> None:
    tulip = stem("tulip", name="Tulip, apricot", in_season="W15 - W20")
    daisy = stem("daisy", name="Michaelmas daisy", in_season="W35 - W42")
    jar = recipe(stems=["6 tulip, light, essential", "3 daisy, depth, essential"])
    catalogue = catalogue_of(small_studio(tulip, daisy, jar))
    (told,) = spells_of(catalogue, catalogue.best["gate-jar"])
    assert (told.when, told.weeks) == ("All year", "every week")
    assert told.answer.blocks == (
        "In no week of the year: apricot tulip stands mid April to mid May, "
        "Michaelmas daisy stands late August to mid October."
    )


@pytest.mark.parametrize("recipe_id", CLIENTS.looks)
@pytest.mark.parametrize("day", [date(2026, 9, 16), date(2027, 1, 1)], ids=str)
def test_the_runs_of_a_year_follow_each_other_week_by_week(recipe_id: str, day: date) -> None:
    catalogue: Catalogue = replace(CLIENTS, today=day)
    states = [best.state for best in CLIENTS.best[recipe_id]]
    runs = runs_from(IsoWeek.of(day), lambda week: states[min(week.week, 52) - 1])
    weeks = [week for run in runs for week in run]
    assert IsoWeek.of(day) in runs[0]
    assert weeks == list(weeks[0].until(weeks[-1]))
    told = spells_of(catalogue, CLIENTS.best[recipe_id])
    assert all(bool(each.answer.look) != bool(each.answer.blocks) for each in told)
