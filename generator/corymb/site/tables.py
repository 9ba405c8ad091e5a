"""How is a table written so that a spreadsheet opens it as it is meant?

As CSV (RFC 4180: fields in quotes where they need them, lines ending in CR LF), in UTF-8 with a
byte order mark, without which one widespread spreadsheet reads é as two letters. Where the
studio's language writes a decimal comma, numbers get one and cells are parted by semicolons, as
spreadsheets of those countries expect.

A text that begins like a formula (= + - @, or a tab or line end before one) would be worked out
on opening: an apostrophe before it keeps it a text (OWASP, CSV Injection). The same goes for what
would begin a cell where a spreadsheet parts cells by another sign than ours. Numbers are left
alone, those below nothing too.
"""

from __future__ import annotations

import csv
import re
from io import StringIO

from babel import Locale

from corymb.views.table import Cell, Table

BYTE_ORDER_MARK = "\N{ZERO WIDTH NO-BREAK SPACE}"
FORMULA = re.compile(r"\s*+[=+@＝＋＠－-]")  # noqa: RUF001 (East Asian spreadsheets take the wide ones)
WITHIN = re.compile(r"(?<=[;,|])(?=[=+@＝＋＠－-])")  # noqa: RUF001


def csv_file(table: Table, language: str) -> bytes:
    """The table as a file, for spreadsheets of the studio's language (`en-IE`)."""
    symbols = Locale.parse(language, sep="-").number_symbols
    point = symbols.get("latn", symbols)["decimal"]
    out = StringIO()
    writer = csv.writer(out, delimiter=";" if point == "," else ",")
    writer.writerow([harmless(head) for head in table.head])
    writer.writerows([_written(cell, point) for cell in row] for row in table.rows)
    return (BYTE_ORDER_MARK + out.getvalue()).encode()


def harmless(text: str) -> str:
    """The text, unable to be taken for a formula."""
    inside = WITHIN.sub("'", text)
    return f"'{inside}" if FORMULA.match(inside) else inside


def _written(cell: Cell, point: str) -> str:
    if cell is None:
        return ""
    return harmless(cell) if isinstance(cell, str) else f"{cell}".replace(".", point)
