"""What staff read of prices and margins, in words and amounts; and that clients read none of it."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest

from corymb.studio.studio import Studio
from corymb.studio.values.money import PriceGuide
from corymb.trade.money.guide import BesideGuide
from corymb.trade.orders.due import Due, Dues
from corymb.trade.orders.paid import Gathered
from corymb.trade.orders.pieces import words_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.costs_table import costs_table
from corymb.views.compose.money import money_view
from corymb.views.compose.price import beside_words, price_view
from corymb.views.compose.reality import reality_view
from corymb.views.money import MoneyView
from tests.views.making import catalogue_of, demo

STAFF = catalogue_of(demo(), "staff")
JAR = STAFF.looks["hedgerow-jar"][""]


def due(known_as: str, day: date, catalogue: Catalogue = STAFF) -> Due:
    found = Dues(catalogue.studio, catalogue.makeable).between(day, day)
    return next(each for each in found if each.id == known_as)


SUPPER = due("barn-supper", date(2026, 9, 19))
LUNCH = due("christening-lunch", date(2026, 5, 17))


def with_money(**changes: object) -> Studio:
    """The demo, with some of its money changed."""
    house = demo().house
    money = house.money.model_copy(update=changes)
    return replace(demo(), house=house.model_copy(update={"money": money}))


def test_a_price_is_put_together_step_by_step() -> None:
    steps = [(step.words, step.how, step.cost, step.times) for step in price_view(STAFF, JAR).steps]
    assert steps == [
        ("Stems of our own", "with 8 % waste", "€1.99", "× 4"),
        ("Sundries", "", "€1.25", "× 1.5"),
        ("Labour", "20 min at €24 an hour", "€8.00", ""),
        ("Overhead", "25 % of all above", "€2.81", ""),
        ("Together", "", "€14.05", ""),
        ("Tax", "13.5 %", "", ""),
        ("Rounded up", "to the next whole €1", "", ""),
        ("Works out at", "", "", ""),
    ]


def amount(text: str) -> Decimal:
    return Decimal(text.replace("€", "").replace(",", "").replace("−", "-"))


@pytest.mark.parametrize("recipe", sorted(STAFF.looks))
def test_what_stands_in_a_price_adds_up_as_it_is_read(recipe: str) -> None:
    for look in STAFF.looks[recipe].values():
        *parts, shown = price_view(STAFF, look).steps
        adding = [step for step in parts if not step.sum]
        assert sum(amount(step.amount) for step in adding) == amount(shown.amount)
        costs = [amount(step.cost) for step in adding if step.cost]
        (together,) = (step for step in parts if step.sum)
        assert sum(costs) == amount(together.cost)


def test_tax_on_top_is_told_beside_the_price_and_not_in_it() -> None:
    outside = catalogue_of(with_money(tax_in_prices=False), "staff")
    steps = price_view(outside, JAR).steps
    assert "Tax" not in [step.words for step in steps]
    assert steps[-1].how == "and 13.5 % tax on top"
    quote = money_view(outside, SUPPER).quote
    assert quote.tax_words == "tax on top, 13.5 %"
    assert amount(quote.to_pay) == amount(quote.net) + amount(quote.tax)


def test_every_size_has_its_price_and_the_guide_price_is_told_apart() -> None:
    price = price_view(STAFF, JAR)
    assert [size.name for size in price.sizes] == ["small", "regular", "large"]
    assert (price.guide, price.beside) == ("from €28", "€24, €4 under the guide price")
    assert amount(price.sizes[0].worked_out) < amount(price.sizes[2].worked_out)


def test_a_bought_piece_is_asked_the_same_and_leaves_less() -> None:
    price = price_view(STAFF, STAFF.looks["beekeepers-jug"][""])
    regular = price.sizes[1]
    assert price.bought
    assert price.bought.asked == regular.asked
    assert amount(price.bought.left) < amount(regular.left)
    assert price.not_bought == ""


def test_stems_that_nobody_sells_are_named() -> None:
    cup = price_view(STAFF, STAFF.looks["may-cup"][""])
    assert cup.not_bought == "Forget-me-not, blue and Viola, plum can’t be bought in."


BESIDE = {
    "as the guide price": ("28", "from 28"),
    "€4 over the guide price": ("32", "from 28"),
    "€0.50 under the guide price": ("27.50", "28"),
}


@pytest.mark.parametrize("words", BESIDE)
def test_a_difference_is_told_with_its_side(words: str) -> None:
    worked_out, guide = BESIDE[words]
    amount = Decimal(guide.removeprefix("from "))
    beside = BesideGuide(PriceGuide(amount, guide.startswith("from")), Decimal(worked_out))
    assert beside_words(beside, demo().house) == words
    assert beside_words(None, demo().house) == ""


def test_a_quote_names_what_is_wanted_and_what_it_comes_to() -> None:
    quote = money_view(STAFF, SUPPER).quote
    wanted = [(line.quantity, words_of(line.piece)) for line in SUPPER.lines]
    assert [(line.quantity, line.words) for line in quote.lines] == wanted
    assert sum(amount(line.total) for line in quote.lines) == amount(quote.to_pay)
    assert set(vars(quote)) == {"lines", "net", "tax", "tax_words", "to_pay"}


def told(view: MoneyView) -> list[tuple[str, str]]:
    return [(stage.words, stage.cost) for stage in view.stages]


def test_an_orders_costs_add_up_as_they_are_read() -> None:
    for view in (money_view(STAFF, SUPPER), money_view(STAFF, LUNCH)):
        assert sum(amount(row.amount) for row in view.costs) == amount(view.cost)
        assert amount(view.net) - amount(view.cost) == amount(view.left)


def test_with_the_cut_the_swaps_and_the_spare_are_told() -> None:
    pieces = {"dahlia-shell": 60}
    view = money_view(STAFF, SUPPER, Gathered(pieces, {"dahlia-shell": 75}, {"dahlia-shell": 10}))
    assert [words for words, _ in told(view)] == ["As written", "With swaps", "As cut"]
    assert view.cost == view.stages[-1].cost
    swaps, spare = view.told
    assert swaps.startswith("The swaps ") and spare.startswith("Spare and round bunches ")


def test_an_order_whose_cut_is_planned_tells_what_it_does_to_the_margin() -> None:
    view = money_view(STAFF, SUPPER)
    assert [words for words, _ in told(view)] == ["As written", "With swaps", "As cut"]
    costs = {words: amount(cost) for words, cost in told(view)}
    spare = costs["As cut"] - costs["With swaps"]
    assert view.told[1] == f"Spare and round bunches cost €{spare}."


def test_what_was_used_is_told_beside_what_was_written() -> None:
    view = money_view(STAFF, LUNCH)
    assert [words for words, _ in told(view)] == ["As written", "As made"]
    written, made = (amount(cost) for _, cost in told(view))
    assert view.told == (f"It took €{made - written} more than was written.",)


def test_reality_stands_beside_what_was_asked() -> None:
    view = reality_view(STAFF, LUNCH)
    assert view
    rows = {row.words: (row.asked, row.took, row.difference) for row in view.rows}
    assert rows["Tulip, plum"] == ("16", "15", "1 fewer")
    assert rows["Lilac, violet"] == ("15", "15", "as asked")
    assert rows["Making"] == ("4 h 30 min", "5 h 45 min", "1 h 15 min longer")
    assert view.not_counted.startswith("Ninebark, plum; Hornbeam, green; ")
    assert [(each.recipe.label, each.words) for each in view.proposals] == [
        ("Frost button", "15 min, not 12 min"),
        ("May cup", "32 min, not 25 min"),
        ("Font bowl", "51 min, not 40 min"),
    ]
    assert view.proposals[0].shared == "shared with Font bowl and May cup"


def test_an_order_that_tells_nothing_has_no_reality() -> None:
    assert reality_view(STAFF, SUPPER) is None


def test_the_table_of_costs_has_every_size_of_every_look() -> None:
    table = costs_table(STAFF)
    sizes = sum(
        (len(STAFF.studio.recipes[recipe].sizes) + 1) * len(looks)
        for recipe, looks in STAFF.looks.items()
    )
    assert len(table.rows) == sizes
    assert {len(row) for row in table.rows} == {len(table.head)}


def test_a_row_of_the_table_says_what_the_page_says() -> None:
    table = costs_table(STAFF)
    rows = [dict(zip(table.head, row, strict=True)) for row in table.rows]
    row = next(r for r in rows if (r["recipe"], r["variant"]) == ("Hedgerow jar", ""))
    (small, *_) = price_view(STAFF, JAR).sizes
    assert (row["size"], row["guide price (EUR)"]) == ("small", None)
    assert row["cost (EUR)"] == amount(small.cost)
    assert row["works out at (EUR)"] == amount(small.worked_out)
    assert row["left (EUR)"] == amount(small.left)
    assert row["margin (%)"] == Decimal(small.margin.removesuffix(" %"))
