"""The strip of a year: each week as it can best be made, and the same in sentences."""

from __future__ import annotations

from corymb.trade.season.best import Best
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.recipes import recipe_view
from corymb.views.compose.seasons import season_of_look, season_of_stem
from corymb.views.season import CellState
from tests.views.making import best, catalogue_of, demo, swap, year_of

CLIENTS = catalogue_of(demo())
LOOKS = CLIENTS.looks["hedgerow-jar"]
JAR, LATER = LOOKS[""], LOOKS["later"]


def with_year(bests: list[Best]) -> Catalogue:
    """The demo's catalogue with a made-up year for the jar."""
    catalogue = catalogue_of(demo())
    never = best(1, JAR, "none", 0.0, blocks=["scabious-plum"], nearest=30)
    catalogue.__dict__["best"] = {"hedgerow-jar": tuple(year_of(bests, never))}
    return catalogue


YEAR = with_year(
    [
        best(20, JAR, "swaps", swaps=[swap("cosmos-white", "zinnia-coral")]),
        *(best(week, JAR) for week in range(27, 36)),
        best(36, LATER, "variant"),
    ]
)


def test_a_week_has_one_of_four_states_and_says_which() -> None:
    cells = season_of_look(YEAR, JAR).cells
    assert len(cells) == 52
    assert [cell.state for cell in cells if cell.week in (19, 20, 27, 36)] == [
        "none",
        "swaps",
        "pictured",
        "variant",
    ]
    assert cells[19].says == "Week 20, mid May: with swaps: coral zinnia"
    assert cells[35].says == "Week 36, early September: with the variant ‘Later in the year’"


def test_the_sentences_say_all_that_the_strip_shows() -> None:
    told = season_of_look(YEAR, JAR)
    assert told.sentence == "Early July to late August."
    assert told.variant_sentence == "With a variant: early September."
    assert told.swaps_sentence == "With swaps: mid May."


def test_a_state_that_never_comes_has_no_sentence() -> None:
    told = season_of_look(with_year([best(30, JAR)]), JAR)
    assert (told.variant_sentence, told.swaps_sentence) == ("", "")


def test_the_months_of_the_filters_count_weeks_with_a_variant_and_with_swaps() -> None:
    assert season_of_look(YEAR, JAR).months == ("May", "July", "August", "September")


def test_a_variants_own_strip_knows_no_other_variant() -> None:
    for look in LOOKS.values():
        if look.variant:
            states: set[CellState] = {cell.state for cell in season_of_look(CLIENTS, look).cells}
            assert "pictured" in states and "variant" not in states


def test_a_variants_own_page_does_not_name_it_again() -> None:
    for look in LOOKS.values():
        if look.variant:
            view = recipe_view(CLIENTS, look)
            said = [*(spell.answer.words for spell in view.spells)]
            said += [cell.says for cell in view.season.cells]
            assert not [words for words in said if view.variant_name in words]


def test_a_flower_stands_or_does_not() -> None:
    told = season_of_stem(CLIENTS, "dahlia-shell")
    assert {cell.state for cell in told.cells} == {"pictured", "none"}
    assert told.cells[30].says == "Week 31, early August: stands"
    assert told.cells[0].says == "Week 1, early January: not then"


def test_a_line_and_the_page_of_its_stem_tell_the_same_weeks() -> None:
    for line, of_look in zip(recipe_view(CLIENTS, JAR).lines, JAR.lines, strict=True):
        told = season_of_stem(CLIENTS, of_look.stem).sentence
        assert told.removesuffix(".").casefold() == line.season.casefold()
