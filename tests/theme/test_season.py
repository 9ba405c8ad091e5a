"""Are the four states of a week told apart by form, and is all that the strip shows said too?"""

from __future__ import annotations

import json
from dataclasses import replace
from functools import cache

import pytest
from bs4 import BeautifulSoup, Tag

from corymb.site.render import environment
from corymb.studio.words import MONTHS
from corymb.views.compose.states import STATE_WORDS
from corymb.views.pieces import Link
from corymb.views.recipe import ChangeView, ClientRecipe
from corymb.views.season import CellState, SeasonView, WeekCell, YourDateView
from tests.theme.filling import filled
from tests.theme.pages import rendered_view

STATES: tuple[CellState, ...] = ("pictured", "variant", "swaps", "none")
Year = dict[CellState, tuple[tuple[int, int], ...]]
ALL_WORDS = list(STATE_WORDS.values())
ALL_FOUR: Year = {"pictured": ((27, 35),), "variant": ((1, 2), (36, 38)), "swaps": ((52, 52),)}


def season(year: Year) -> SeasonView:
    """A strip by the first and last weeks of each state's runs; the rest is out of season."""
    found = {w: state for state, runs in year.items() for a, b in runs for w in range(a, b + 1)}
    cells = tuple(
        WeekCell(week, MONTHS[(week - 1) * 12 // 52], found.get(week, "none"), f"Week {week}")
        for week in range(1, 53)
    )
    return SeasonView(cells, "In summer.", "With a variant: in autumn.", "With swaps: late.")


def printed(partial: str, macro: str, *values: object, **named: object) -> Tag:
    module = environment().get_template(f"partials/{partial}.html").module
    return BeautifulSoup(str(getattr(module, macro)(*values, **named)), "lxml")


@cache
def strip() -> Tag:
    return printed("season-strip", "season_strip", season(ALL_FOUR))


def test_a_week_is_one_cell_with_its_words() -> None:
    titles = [title.get_text() for title in strip().select("svg title")]
    assert titles == [f"Week {week}" for week in range(1, 53)]


def test_the_four_states_differ_in_form_not_in_colour_alone() -> None:
    def height(state: CellState) -> str:
        cell = strip().select_one(f".is-{state}")
        assert cell is not None
        level = cell.select_one(".level")
        return str(level["d"]).split("v")[1].partition("h")[0] if level else ""

    assert [height(state) for state in ("variant", "swaps", "none")] == ["25", "10", ""]
    counts = [len(strip().select(f".is-{state}")) for state in STATES]
    assert counts == [9, 5, 1, 37]


def test_the_strip_is_hidden_from_readers_and_sentences_say_the_same() -> None:
    (drawn,) = strip().select("svg")
    assert drawn["aria-hidden"] == "true"
    said = strip().select_one(".season-says")
    assert said is not None
    assert said.get_text() == "In summer. With a variant: in autumn. With swaps: late."


def test_weeks_on_end_are_one_line_at_a_glance() -> None:
    drawn = printed("season-strip", "season_glance", season(ALL_FOUR))
    lines = {" ".join(path["class"]): path["d"] for path in drawn.select("path")}
    assert lines == {
        "glance-year": "M0 17h518",
        "glance-weeks": "M260 17H350",
        "glance-variant": "M0 21.5H20M350 21.5H380",
        "glance-swaps": "M510 29H520",
    }
    assert not drawn.get_text(strip=True)


def test_a_state_that_never_comes_leaves_no_mark_at_a_glance() -> None:
    drawn = printed("season-strip", "season_glance", season({"pictured": ((1, 52),)}))
    assert [path["d"] for path in drawn.select("path")] == ["M0 17h518", "M0 17H520"]


@pytest.mark.parametrize(
    ("years", "words"),
    [
        ([ALL_FOUR], ALL_WORDS),
        ([{"pictured": ((3, 9),)}], ["as pictured", "not then"]),
        (
            [{"pictured": ((3, 9),)}, {"swaps": ((3, 9),)}],
            ["as pictured", "with swaps", "not then"],
        ),
        ([{"pictured": ((1, 52),)}], []),
        ([], []),
    ],
    ids=["all-four", "two", "of-two-strips", "all-year", "none-shown"],
)
def test_the_key_explains_what_occurs_and_no_more(years: list[Year], words: list[str]) -> None:
    key = printed("season-key", "season_key", [season(year) for year in years])
    assert [item.get_text(strip=True) for item in key.select("li")] == words


VIEW = filled(ClientRecipe, "Hedgerow jar")
NOW, LATER = VIEW.spells


def page(view: ClientRecipe) -> Tag:
    return BeautifulSoup(rendered_view("recipe.html", "clients", view, "here"), "lxml")


def test_the_spell_of_now_is_open_and_the_rest_folds_away() -> None:
    said = replace(VIEW, spells=(replace(NOW, when="Early June"), replace(LATER, when="In July")))
    shown = page(said).select_one(".through")
    assert shown is not None
    folded = shown.select_one("details")
    assert folded is not None and not folded.has_attr("open")
    assert "In July" in folded.get_text() and "Early June" not in folded.get_text()
    assert "Early June" in shown.get_text()


def test_a_year_of_one_spell_folds_nothing_away() -> None:
    said = page(replace(VIEW, spells=(NOW,)))
    assert said.select(".through .spell") and not said.select(".through details")


@pytest.mark.parametrize(
    ("href", "led"),
    [("arrangements/here.html", []), ("arrangements/there.html", ["there.html"])],
    ids=["this-page", "another"],
)
def test_a_spell_leads_to_its_look_unless_that_is_shown_here(href: str, led: list[str]) -> None:
    answer = replace(NOW.answer, look=Link("The jar", href), swaps=())
    said = page(replace(VIEW, spells=(replace(NOW, answer=answer),)))
    assert [link["href"] for link in said.select(".through a")] == led


def test_a_spell_out_of_season_is_not_called_sure() -> None:
    answer = replace(NOW.answer, state="none", look=None, swaps=())
    said = page(replace(VIEW, spells=(replace(NOW, sure="quite sure", answer=answer),)))
    assert "quite sure" not in said.get_text()
    assert "quite sure" in page(replace(VIEW, spells=(replace(NOW, sure="quite sure"),))).get_text()


def test_a_page_without_kin_has_no_row_for_them() -> None:
    assert page(VIEW).find("h2", string="Goes with")
    assert not page(replace(VIEW, goes_with=())).find("h2", string="Goes with")


KINDS = ("added", "dropped", "more")


@pytest.mark.parametrize(("count", "lines"), [(6, 6), (7, 0)])
def test_what_a_variant_changes_is_a_list_while_short_and_then_one_sentence(
    count: int, lines: int
) -> None:
    changes = [
        ChangeView(KINDS[n % 3], f"Plant {n}", "light", f"Plant {n}: 3, not 2", 2, 3)
        for n in range(count)
    ]
    said = printed("variant-changes", "variant_changes", changes)
    assert len(said.select("li")) == lines
    if not lines:
        assert said.get_text(strip=True) == (
            "With 3 Plant 0; 3 Plant 3; 3 Plant 6. Without Plant 1; Plant 4. "
            "Plant 2: 3, not 2; Plant 5: 3, not 2."
        )


def test_script_gets_the_words_of_the_states_in_the_order_of_ways() -> None:
    view = filled(YourDateView, "Hedgerow jar")
    said = BeautifulSoup(rendered_view("your_date.html", "clients", view, "here"), "lxml")
    page_ = said.select_one("[data-words]")
    assert page_ is not None
    assert list(json.loads(str(page_["data-words"])).items()) == list(STATE_WORDS.items())
