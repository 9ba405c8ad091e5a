"""A table is written so that spreadsheets open it as it is meant, and work nothing out."""

from __future__ import annotations

import csv
from decimal import Decimal
from io import StringIO
from pathlib import Path

import pytest

from corymb.site.tables import csv_file, harmless
from corymb.views.pieces import Audience
from corymb.views.table import Table

TABLE = Table(
    ("recipe", "count", "cost (EUR)"),
    (
        ("Café jar, small", 12, Decimal("1.20")),
        ('The "grand" one', 0, Decimal("-4.00")),
        ("two\nlines", 3, None),
    ),
)


def read_again(written: bytes, delimiter: str = ",") -> list[list[str]]:
    text = written.decode("utf-8-sig")
    return list(csv.reader(StringIO(text, newline=""), delimiter=delimiter))


def test_a_table_is_read_again_as_it_was_written() -> None:
    assert read_again(csv_file(TABLE, "en-IE")) == [
        ["recipe", "count", "cost (EUR)"],
        ["Café jar, small", "12", "1.20"],
        ['The "grand" one', "0", "-4.00"],
        ["two\nlines", "3", ""],
    ]


def test_a_table_says_that_it_is_utf_8_and_ends_its_lines_as_rfc_4180_asks() -> None:
    written = csv_file(TABLE, "en-IE")
    assert written.startswith(b"\xef\xbb\xbfrecipe,count,cost (EUR)\r\n")
    assert written.endswith(b"\r\n")


COMMAS = ("de", "de-AT", "fr-FR", "nl-NL", "pt-BR")


@pytest.mark.parametrize("language", COMMAS)
def test_where_a_comma_is_the_decimal_point_semicolons_part_the_cells(language: str) -> None:
    assert read_again(csv_file(TABLE, language), ";")[1] == ["Café jar, small", "12", "1,20"]


@pytest.mark.parametrize("language", ["en", "en-IE", "de-CH", "ar-EG", "ja"])
def test_elsewhere_commas_do(language: str) -> None:
    assert read_again(csv_file(TABLE, language))[1] == ["Café jar, small", "12", "1.20"]


FORMULAS = ("=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "＝1")  # noqa: RUF001


@pytest.mark.parametrize("text", FORMULAS)
def test_a_text_is_never_taken_for_a_formula(text: str) -> None:
    (_, row) = read_again(csv_file(Table(("name",), ((text,),)), "en-IE"))
    assert row == [f"'{text}"]


@pytest.mark.parametrize("sign", [";", ",", "|"])
def test_nor_is_a_part_of_it_where_cells_are_parted_by_another_sign(sign: str) -> None:
    assert harmless(f"dill{sign}=1+1") == f"dill{sign}'=1+1"
    assert harmless(f"{sign}=1+1") == f"{sign}'=1+1"


@pytest.mark.parametrize(
    "text", ["Jar", "white, - not cream", "1.20", "Rook's wing", "a=b", "½ @ a time", ""]
)
def test_any_other_text_stays_as_it_is(text: str) -> None:
    assert harmless(text) == text


def test_costs_are_on_the_staffs_site_alone(demo_sites: dict[Audience, Path]) -> None:
    rows = read_again((demo_sites["staff"] / "costs.csv").read_bytes())
    assert rows[0][:3] == ["style", "recipe", "variant"]
    assert len(rows) > 200
    assert not (demo_sites["clients"] / "costs.csv").exists()
