"""How names, headings and shares are set on a page."""

from __future__ import annotations

from time import process_time
from typing import Any

import pytest

from corymb.site.quick_templates import typeset
from corymb.site.render import environment, in_percent

SECONDS = 0.5

SHARES = {
    "nothing": (0.0, "0 %"),
    "a trace": (0.2, "under 1 %"),
    "half of one": (0.5, "under 1 %"),
    "rounded up": (0.6, "1 %"),
    "a third": (33.3, "33 %"),
}


@pytest.mark.parametrize(("share", "told"), SHARES.values(), ids=SHARES)
def test_what_is_there_is_never_told_as_nothing(share: float, told: str) -> None:
    assert in_percent(share) == told


HEADINGS = {
    "plain": ("Hedgerow jar", "Hedgerow jar"),
    "hyphened": (
        "Rook's-wing hand-tie",
        '<span class="whole">Rook’s-wing</span> <span class="whole">hand-tie</span>',
    ),
    "too long for a phone": ("Bed-of-sweet-peas jug", "Bed-of-sweet-peas jug"),
    "hostile": ("<b>-x</b>", '<span class="whole">&lt;b&gt;-x&lt;/b&gt;</span>'),
    "hostile and plain": ("<i> jar", "&lt;i&gt; jar"),
}


@pytest.mark.parametrize(("heading", "told"), HEADINGS.values(), ids=HEADINGS)
def test_a_short_word_of_a_heading_is_kept_whole_at_its_hyphen(heading: str, told: str) -> None:
    partial: Any = environment().get_template("partials/heading.html").module
    assert partial.unbroken(heading).strip() == told


LONG = "a'" * 10_000  # as long as a line of a file may be
APOSTROPHES = {
    "within a word": ("rook's wing", "rook’s wing"),
    "of many": ("the rooks' wing", "the rooks’ wing"),
    "in an address": ("write to o'neil@garden.example", "write to o'neil@garden.example"),
    "before one": ("rook's: a@b.example", "rook’s: a@b.example"),
    "of a text of nothing else": (LONG, LONG[:-1].replace("'", "’") + "'"),
}


@pytest.mark.parametrize(("written", "set_"), APOSTROPHES.values(), ids=APOSTROPHES)
def test_an_apostrophe_is_set_as_print_has_it_at_once(written: str, set_: str) -> None:
    start = process_time()
    assert typeset(written) == set_
    assert process_time() - start < SECONDS
