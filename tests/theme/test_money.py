"""Prices and quotes on a page: what is folded away, and what a client's part never holds."""

from __future__ import annotations

from dataclasses import fields

from bs4 import BeautifulSoup

from corymb.site.render import environment
from corymb.views.money import MoneyView, QuoteView
from corymb.views.reality import RealityView
from corymb.views.recipe import ClientRecipe, StaffRecipe
from tests.theme.filling import filled
from tests.theme.pages import rendered


def part(text: str, **views: object) -> BeautifulSoup:
    """A few words of a template, printed with these views."""
    html = environment().from_string(text).render(url=lambda href: href, **views)
    return BeautifulSoup(html, "html5lib")


def test_how_a_price_is_put_together_is_folded_away() -> None:
    page = BeautifulSoup(rendered("recipe.html", "staff", StaffRecipe, "Jar"), "html5lib")
    costs = page.select_one(".costs")
    assert costs
    (fold,) = costs.select("details")
    assert not fold.has_attr("open")
    assert len(fold.select("table")) == 2
    shown = [table for table in costs.select("table") if not table.find_parent("details")]
    assert len(shown) == 1
    assert costs.select_one('a[href$="costs.csv"]')


def test_a_clients_page_knows_no_price_but_the_guide() -> None:
    own = {field.name for field in fields(ClientRecipe)}
    assert "price" in own and "bench" not in own
    page = rendered("recipe.html", "clients", ClientRecipe, "Jar")
    assert "costs" not in page and "Works out" not in page


def test_a_quote_has_a_row_for_each_line_and_one_to_pay() -> None:
    quote = filled(QuoteView, "€12.00")
    table = part("{% from 'partials/order/quote.html' import quote_of %}{{ quote_of(q) }}", q=quote)
    assert len(table.select("tbody tr")) == len(quote.lines)
    assert table.select("tfoot th")[-1].get_text() == "To pay"
    assert "osts" not in table.get_text()


def test_an_orders_money_is_whole_without_a_cut() -> None:
    text = "{% from 'partials/order/money.html' import money_of %}{{ money_of(m) }}"
    bare = part(text, m=filled(MoneyView, "", empty=True))
    assert "None" not in bare.get_text()
    full = part(text, m=filled(MoneyView, "€12.00"))
    assert len(full.select("table")) == 3


def test_every_stem_that_was_counted_leads_to_its_page() -> None:
    text = "{% from 'partials/order/reality.html' import reality_of with context %}"
    view = filled(RealityView, "flowers/rose.html")
    page = part(text + "{{ reality_of(r) }}", r=view)
    assert len(page.select("tbody tr a")) == len(view.rows)
    assert "corymb learn" in page.get_text()
