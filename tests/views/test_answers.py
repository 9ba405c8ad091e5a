"""How an arrangement can be made in a week, or what keeps it from that, in words."""

from __future__ import annotations

from datetime import date

import pytest

from corymb.studio.values.dates import IsoWeek
from corymb.trade.looks import Look
from corymb.trade.season.best import Best
from corymb.views.compose.answers import answer_view, cell_words, nearest_words, not_then, year_of
from corymb.views.pieces import Audience
from tests.views.making import best, catalogue_of, demo, swap
from tests.views.making import year_of as made_up_year

CLIENTS = catalogue_of(demo())
JAR, LATER = (CLIENTS.looks["hedgerow-jar"][known_as] for known_as in ("", "later"))
ZINNIAS = [swap("cosmos-white", "zinnia-coral")]
NEVER = best(1, JAR, "none", 0.0, blocks=["scabious-plum"], nearest=30)


@pytest.mark.parametrize(
    ("asked", "page", "words"),
    [
        (best(30, JAR), JAR, "As pictured"),
        (best(30, LATER, "variant"), JAR, "With the variant ‘Later in the year’"),
        (best(30, JAR, "swaps", swaps=ZINNIAS), JAR, "With swaps"),
        (
            best(30, LATER, "swaps", swaps=ZINNIAS),
            JAR,
            "With the variant ‘Later in the year’ and swaps",
        ),
        (
            best(30, LATER, "swaps", swaps=ZINNIAS),
            None,
            "With the variant ‘Later in the year’ and swaps",
        ),
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


@pytest.mark.parametrize(
    ("audience", "words", "many"),
    [
        ("clients", "coral zinnia in place of white cosmos", False),
        ("staff", "5 coral zinnia in place of 3 white cosmos", True),
    ],
)
def test_clients_read_what_comes_in_and_how_its_colour_differs_and_staff_all_of_it(
    audience: Audience, words: str, many: bool
) -> None:
    asked = best(30, JAR, "swaps", swaps=ZINNIAS)
    (told,) = answer_view(catalogue_of(demo(), audience), asked).swaps
    assert told.words == words
    assert told.coming.href == "flowers/zinnia-coral.html"
    assert told.reasons[0] == "nearly the same colour"
    assert (len(told.reasons) > 1) == many


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


def test_a_caution_written_for_the_maker_is_not_told_to_clients_with_a_swap() -> None:
    prickly = next(s for s in demo().stems.values() if s.caution and "thorns" in s.hazards)
    asked = best(30, JAR, "swaps", swaps=[swap("cosmos-white", prickly.id)])
    told = {}
    for audience in ("clients", "staff"):
        (view,) = answer_view(catalogue_of(demo(), audience), asked).swaps
        told[audience] = " ".join(view.careful)
    assert "Has thorns" in told["clients"] and prickly.caution not in told["clients"]
    assert prickly.caution in told["staff"]


@pytest.mark.parametrize(
    ("audience", "words"),
    [
        ("clients", "Not out then: plum scabious."),
        ("staff", "Nothing stands in for plum scabious."),
    ],
)
def test_a_week_in_which_it_cant_be_made_has_no_look_and_says_what_blocks_it(
    audience: Audience, words: str
) -> None:
    told = answer_view(catalogue_of(demo(), audience), NEVER)
    assert (told.look, told.image, told.swaps) == (None, None, ())
    assert told.blocks == words


def test_swaps_that_change_too_much_together_are_told_from_a_stem_that_is_missing() -> None:
    blocked = best(30, JAR, "none", blocks=["cosmos-white", "scabious-plum"], too_much=True)
    words = "Too much would change without white cosmos and plum scabious."
    assert answer_view(CLIENTS, blocked).blocks == words


def test_with_the_week_of_the_calendar_it_is_told_when_it_can_be_made_on_either_side() -> None:
    can = {each.week for each in year_of(CLIENTS, JAR) if each.state != "none"}
    first, last = min(can), max(can)
    week = IsoWeek(2026, last).plus(1)
    told = answer_view(CLIENTS, best(last + 1, JAR, "none", 0.0), JAR, week).nearest
    assert told.startswith(f"It can be made until week {last}, ")
    assert f", and again from week {first}, " in told and told.endswith(" 2027.")


@pytest.mark.parametrize(
    ("today", "told"),
    [
        pytest.param("2026-10-18", "It can be made until week 42", id="its last day"),
        pytest.param("2026-10-19", "It can be made again from 12 July 2027.", id="the day after"),
        pytest.param("2027-01-17", "It can be made again from 12 July 2027.", id="the week itself"),
        pytest.param("2027-01-18", "It can be made until week 42", id="a week gone by"),
    ],
)
def test_until_when_it_could_be_made_is_not_told_once_that_is_past(today: str, told: str) -> None:
    bests = made_up_year([best(28, JAR), best(42, JAR)], best(1, JAR, "none", 0.0))
    words = nearest_words(bests, IsoWeek(2027, 2), date.fromisoformat(today))
    assert words.startswith(told)


def test_what_is_lacking_is_that_of_the_look_that_can_be_made_next() -> None:
    lacks = [best(week, JAR, "none", 0.0, blocks=["crocosmia-ember"]) for week in range(1, 53)]
    bests = made_up_year([best(20, LATER, "variant")], lacks[0])
    of_later = CLIENTS.makeable.answers(LATER)[2]
    assert of_later.state == "none"
    told = not_then(CLIENTS, bests, IsoWeek(2026, 3))
    assert "crocosmia" not in told
    assert told.endswith(
        "It can be made until week 20, 12 to 18 May 2025, and again from week 20, "
        "11 to 17 May 2026."
    )


@pytest.mark.parametrize(
    ("asked", "words"),
    [
        (best(30, JAR), "as pictured"),
        (best(30, LATER, "variant"), "with the variant ‘Later in the year’"),
        (best(30, JAR, "swaps", swaps=ZINNIAS), "with swaps: coral zinnia"),
        (NEVER, "not then"),
    ],
    ids=["own", "variant", "swaps", "none"],
)
def test_a_cell_of_the_strip_says_how_in_few_words(asked: Best, words: str) -> None:
    assert cell_words(CLIENTS, asked, JAR) == words
