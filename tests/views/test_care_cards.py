"""What goes out with the flowers on a care card, and what doesn't?"""

from __future__ import annotations

from dataclasses import asdict

import pytest

from corymb.studio.words import HAZARDS
from corymb.trade.orders.due import Due
from corymb.views.compose.care_cards import ON_A_SHEET, order_cards, style_cards
from corymb.views.compose.hazards import not_known
from corymb.views.compose.orders.cuts import with_papers
from tests.views.making import catalogue_of, demo


def due_of(known_as: str) -> Due:
    return next(due for due in with_papers(catalogue_of(demo(), "staff")) if due.id == known_as)


def test_an_order_has_a_card_for_each_piece_four_to_a_sheet() -> None:
    due = due_of("barn-supper")
    view = order_cards(catalogue_of(demo(), "staff"), due)
    cards = [card for sheet in view.sheets for card in sheet.cards]
    assert len(cards) == sum(line.quantity for line in due.lines)
    assert all(len(sheet.cards) == ON_A_SHEET for sheet in view.sheets[:-1])
    assert {card.when for card in cards} == {"Saturday 19 September 2026"}


def test_a_style_has_a_sheet_of_alike_cards_for_each_look_it_can_be_asked_for() -> None:
    catalogue = catalogue_of(demo(), "staff")
    view = style_cards(catalogue, demo().styles["posy"])
    wanted = {
        look.id
        for recipe in catalogue.recipes()
        if recipe.style == "posy"
        for look in catalogue.looks[recipe.id].values()
    }
    assert {sheet.anchor for sheet in view.sheets} == wanted
    assert all(len(set(sheet.cards)) == 1 for sheet in view.sheets)


@pytest.mark.parametrize("style", demo().styles)
def test_every_card_says_what_is_in_it_how_it_is_kept_and_that_the_rest_is_not_known(
    style: str,
) -> None:
    for sheet in style_cards(catalogue_of(demo(), "staff"), demo().styles[style]).sheets:
        card = sheet.cards[0]
        assert card.holds and card.care, card.name
        assert "not known" in card.not_known
        assert not any("safe" in text.lower() for text in card.cautions), card.name


def test_a_plant_that_can_hurt_is_on_the_card_of_what_it_is_in() -> None:
    for style in demo().styles.values():
        for sheet in style_cards(catalogue_of(demo(), "staff"), style).sheets:
            recipe, _, variant = sheet.anchor.partition("--")
            look = catalogue_of(demo(), "staff").looks[recipe][variant]
            hurts = [s for line in look.lines if (s := demo().stems[line.stem]).hazards]
            told = " ".join(sheet.cards[0].cautions)
            assert all(stem.name.partition(",")[0] in told for stem in hurts), sheet.anchor
    assert HAZARDS


def test_silence_is_never_safety() -> None:
    for warned in (True, False):
        assert "not known" in not_known(warned) and "safe" not in not_known(warned)


def test_what_is_worn_is_promised_no_days_and_what_stands_is_by_what_fades_first() -> None:
    catalogue = catalogue_of(demo(), "staff")
    worn = style_cards(catalogue, demo().styles["buttonhole"]).sheets
    assert not any(sheet.cards[0].lasts for sheet in worn)
    jar = next(
        s
        for s in style_cards(catalogue, demo().styles["posy"]).sheets
        if s.anchor == "hedgerow-jar"
    )
    lives = [
        demo().stems[line.stem].vase_life for line in catalogue.looks["hedgerow-jar"][""].lines
    ]
    fewest = min(life.fewest for life in lives)
    assert f"after {fewest}" in jar.cards[0].lasts


def test_no_cost_and_no_note_is_on_a_card() -> None:
    due = due_of("barn-supper")
    said = str([asdict(sheet) for sheet in order_cards(catalogue_of(demo(), "staff"), due).sheets])
    assert "€" not in said
    assert due.order.notes and due.order.notes not in said
