"""How an arrangement can be made, in words; and the year in spells of weeks with one answer."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from corymb.trade.looks import Look
from corymb.trade.season.best import Best
from corymb.views.compose.answers import answer_view, cell_words, names_of, spells_of, sure_words
from corymb.views.pieces import Audience
from corymb.views.season import SpellView
from tests.views.making import best, catalogue_of, demo, swap, year_of

CLIENTS = catalogue_of(demo())
JAR, LATER = (CLIENTS.looks["hedgerow-jar"][known_as] for known_as in ("", "later"))
ZINNIAS = [swap("cosmos-white", "zinnia-coral")]
NEVER = best(1, JAR, "none", 0.0, blocks=["scabious-plum"], nearest=30)


def spells(
    bests: list[Best], otherwise: Best = NEVER, week_of: str = "2026-01-01"
) -> list[SpellView]:
    catalogue = replace(CLIENTS, today=date.fromisoformat(week_of))
    return list(spells_of(catalogue, year_of(bests, otherwise)))


def pictured(first: int, last: int) -> list[Best]:
    return [best(week, JAR) for week in range(first, last + 1)]


@pytest.mark.parametrize(
    ("asked", "page", "words"),
    [
        (best(30, JAR), JAR, "As pictured"),
        (best(30, LATER, "variant"), JAR, "As ‘Later in the year’"),
        (best(30, JAR, "swaps", swaps=ZINNIAS), JAR, "With swaps"),
        (best(30, LATER, "swaps", swaps=ZINNIAS), JAR, "As ‘Later in the year’, with swaps"),
        (best(30, LATER, "swaps", swaps=ZINNIAS), None, "As ‘Later in the year’, with swaps"),
        (best(30, LATER, "swaps", swaps=ZINNIAS), LATER, "With swaps"),
        (best(30, LATER), LATER, "As pictured"),
        (NEVER, JAR, "Not then"),
    ],
    ids=["own", "variant", "swaps", "both", "elsewhere", "variants-page", "variant-own", "none"],
)
def test_an_answer_names_a_variant_except_on_its_own_page(
    asked: Best, page: Look | None, words: str
) -> None:
    assert answer_view(CLIENTS, asked, page).words == words


def test_a_swap_tells_how_many_for_how_many_and_why() -> None:
    (told,) = answer_view(CLIENTS, best(30, JAR, "swaps", swaps=ZINNIAS)).swaps
    assert told.words == "5 Zinnia, coral for 3 Cosmos, white"
    assert told.coming.href == "flowers/zinnia-coral.html"
    assert "nearly the same colour" in told.reasons


@pytest.mark.parametrize(
    ("in_", "audience", "words"),
    [
        ("cosmos-white", "clients", ()),
        (
            "dahlia-shell",
            "clients",
            ("Can make pets ill if chewed: keep Dahlia out of their reach.",),
        ),
        ("dahlia-shell", "staff", ("Dahlia: keep trimmings away from pets.",)),
    ],
    ids=["nothing-new", "clients", "staff"],
)
def test_a_swap_that_brings_a_hazard_says_what_to_be_careful_of(
    in_: str, audience: Audience, words: tuple[str, ...]
) -> None:
    asked = best(30, JAR, "swaps", swaps=[swap("scabious-plum", in_)])
    (told,) = answer_view(catalogue_of(demo(), audience), asked).swaps
    assert told.careful == words


def test_a_swap_for_a_stem_with_the_same_hazard_adds_no_caution() -> None:
    asked = best(30, JAR, "swaps", swaps=[swap("dahlia-garnet", "dahlia-shell")])
    assert [told.careful for told in answer_view(CLIENTS, asked).swaps] == [()]


def test_a_week_in_which_it_cant_be_made_has_no_look_and_says_what_blocks_it() -> None:
    told = answer_view(CLIENTS, NEVER)
    assert (told.look, told.image, told.swaps) == (None, None, ())
    assert told.blocks == "Nothing stands in for Scabious, plum."
    assert told.nearest == "The nearest is late July."


def test_swaps_that_change_too_much_together_are_told_from_a_stem_that_is_missing() -> None:
    blocked = best(30, JAR, "none", blocks=["cosmos-white", "scabious-plum"], too_much=True)
    words = "Too much would change without Cosmos, white and Scabious, plum."
    assert answer_view(CLIENTS, blocked).blocks == words
    assert answer_view(CLIENTS, blocked).nearest == ""


@pytest.mark.parametrize(
    ("asked", "words"),
    [
        (best(30, JAR), "as pictured"),
        (best(30, LATER, "variant"), "as ‘Later in the year’"),
        (best(30, JAR, "swaps", swaps=ZINNIAS), "with swaps: Zinnia, coral"),
        (NEVER, "not then"),
    ],
    ids=["own", "variant", "swaps", "none"],
)
def test_a_cell_of_the_strip_says_how_in_few_words(asked: Best, words: str) -> None:
    assert cell_words(CLIENTS, asked, JAR) == words


@pytest.mark.parametrize(
    ("count", "words"),
    [
        (0, ""),
        (1, "Dahlia, shell"),
        (2, "Dahlia, shell and Cosmos, white"),
        (4, "Dahlia, shell; Cosmos, white; Burnet, wine and Tall verbena, violet"),
        (5, "Dahlia, shell; Cosmos, white; Burnet, wine and 2 more"),
    ],
)
def test_stems_are_told_apart_though_their_names_hold_commas(count: int, words: str) -> None:
    stems = ["dahlia-shell", "cosmos-white", "burnet-wine", "tall-verbena", "zinnia-coral"]
    assert names_of(CLIENTS, stems[:count]) == words


@pytest.mark.parametrize(
    ("chances", "words"),
    [
        ([0.95, 1.0], "sure"),
        ([0.5, 0.7, 0.95, 0.7], "sure, touch and go at the ends"),
        ([0.7, 0.5], "likely, touch and go at the ends"),
        ([0.4], "touch and go"),
    ],
    ids=str,
)
def test_how_sure_a_spell_is_goes_by_its_best_week_and_its_worst(
    chances: list[float], words: str
) -> None:
    assert sure_words(best(week, JAR, "pictured", c) for week, c in enumerate(chances, 1)) == words


def test_a_year_with_one_answer_is_one_spell() -> None:
    (told,) = spells(pictured(1, 52))
    assert (told.when, told.weeks, told.answer.words) == (
        "All year",
        "weeks 1 to 52",
        "As pictured",
    )


@pytest.mark.parametrize(
    ("week_of", "first", "second"),
    [
        ("2026-07-20", "weeks 27 to 41", "weeks 42 to 26"),
        ("2026-12-10", "weeks 42 to 26", "weeks 27 to 41"),
        ("2026-02-10", "weeks 42 to 26", "weeks 27 to 41"),
    ],
    ids=["in-it", "after-it", "before-it"],
)
def test_the_year_begins_with_the_spell_of_now_and_runs_on_past_new_year(
    week_of: str, first: str, second: str
) -> None:
    assert [told.weeks for told in spells(pictured(27, 41), week_of=week_of)] == [first, second]


def test_a_spell_is_told_in_thirds_of_months() -> None:
    told = spells(pictured(27, 41), week_of="2026-07-20")
    assert [each.when for each in told] == ["Early July to mid October", "Mid October to late June"]


def test_other_swaps_or_another_look_begin_a_new_spell() -> None:
    bests = [
        *pictured(20, 21),
        best(22, LATER, "variant"),
        best(23, JAR, "swaps", swaps=ZINNIAS),
        best(24, JAR, "swaps", swaps=[swap("cosmos-white", "zinnia-coral", 3, 4)]),
    ]
    told = spells(bests)
    assert [each.weeks for each in told][1:] == ["weeks 20 to 21", "week 22", "week 23", "week 24"]
    assert told[0].weeks == "weeks 25 to 19"


def test_weeks_out_of_season_are_one_spell_and_name_what_is_missing_all_the_time() -> None:
    bests = [
        *pictured(20, 30),
        best(31, JAR, "none", blocks=["cosmos-white", "scabious-plum"], nearest=30),
        best(32, JAR, "none", blocks=["scabious-plum", "burnet-wine"], nearest=20),
    ]
    (not_then,) = [each for each in spells(bests) if each.answer.state == "none"]
    assert not_then.weeks == "weeks 31 to 19"
    assert not_then.answer.blocks == "Nothing stands in for Scabious, plum."
    assert not_then.answer.nearest == "The nearest is late July (week 30) or mid May (week 20)."


def test_where_nothing_is_missing_all_the_time_the_most_missed_is_named_first() -> None:
    blocked = [["cosmos-white"], ["scabious-plum"], ["scabious-plum"]]
    bests = [*pictured(4, 52)] + [
        best(week, JAR, "none", blocks=stems) for week, stems in enumerate(blocked, 1)
    ]
    (not_then,) = [each for each in spells(bests) if each.answer.state == "none"]
    assert not_then.answer.blocks == "Nothing stands in for Scabious, plum and Cosmos, white."


@pytest.mark.parametrize("recipe", CLIENTS.looks)
def test_the_spells_of_a_recipe_are_its_whole_year(recipe: str) -> None:
    told = spells_of(CLIENTS, CLIENTS.best[recipe])
    lengths = []
    for each in told:
        weeks = [int(word) for word in each.weeks.split() if word.isdigit()]
        lengths.append((weeks[-1] - weeks[0]) % 52 + 1)
    assert sum(lengths) == 52
    assert all(bool(each.answer.look) != bool(each.answer.blocks) for each in told)
