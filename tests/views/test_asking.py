"""A mail about an arrangement says which one, where it is seen, and asks what must be known."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any, cast
from urllib.parse import parse_qs, urlsplit

import pytest

from corymb.studio.models import StudioFile
from corymb.views.compose.asking import asking
from tests.trade.making import recipe, variant

HOUSE = cast(StudioFile, SimpleNamespace(contact=SimpleNamespace(email="a@b.example")))
PAGE = "https://a.example/gate-jar.html"
LATER = {"later": variant(name="Later & last", swap=["rose -> peony"])}


@pytest.mark.parametrize(
    ("keys", "variant_id", "on_the_web", "subject", "lines"),
    [
        pytest.param(
            {"sizes": {"large": "1.5", "very-small": "0.4"}},
            "",
            PAGE,
            "About Gate jar",
            ["Gate jar", PAGE, "", "Date:", "Size (very small, regular or large):", "How many:"],
            id="with its sizes, the smallest first",
        ),
        pytest.param(
            {"variants": LATER},
            "later",
            "",
            "About Gate jar, Later & last",
            ["Gate jar, Later & last", "", "Date:", "Size:", "How many:"],
            id="a variant in one size, where the address isn't known",
        ),
    ],
)
def test_a_mail_begins_with_the_page_and_room_for_answers(
    keys: dict[str, Any], variant_id: str, on_the_web: str, subject: str, lines: list[str]
) -> None:
    one = recipe(**keys)
    href = asking(HOUSE, one, one.variants.get(variant_id), on_the_web)
    parts = urlsplit(href)
    told = parse_qs(parts.query, strict_parsing=True)
    assert (parts.scheme, parts.path, told["subject"]) == ("mailto", "a@b.example", [subject])
    assert told["body"] == ["\r\n".join([*lines, "", ""])]
