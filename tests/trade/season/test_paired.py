"""Each window in the log speaks of one flush."""

from __future__ import annotations

import pytest

from corymb.studio.values.season_text import parse_season
from corymb.trade.season.circle import Span
from corymb.trade.season.paired import Spoken, paired

ROSE = "June - July, mid August - September"

# What one year says, and which of its windows are then the first flush's, the second's, and none's.
YEARS = {
    "one window each": ("5 June - 10 July, 20 August - 1 October", [0], [1], []),
    "in another order": ("20 August - 1 October, 5 June - 10 July", [1], [0], []),
    "only the first": ("5 June - 10 July", [0], [], []),
    "two parts of one flush": ("5 June - 20 June, 5 July - 20 July", [0, 1], [], []),
    "one window over both, more days of it in the first": ("June - late August", [0], [], []),
    "between them, nearer the second": ("6 August - 9 August", [], [0], []),
    "between them, the second being spoken of": (
        "6 August - 9 August, 20 August - 1 October", [0], [1], [],
    ),
    "between them, both being spoken of": (
        "1 June - 10 July, 6 August - 9 August, 20 August - 1 October", [0], [2], [1],
    ),
    "early, but within a quarter of a year": ("April", [0], [], []),
    "a time that neither could be": ("January", [], [], [0]),
}  # fmt: skip


def spans(text: str) -> list[Span]:
    return [Span.of(window) for window in parse_season(text).windows]


def said(flush: Spoken, windows: list[Span]) -> list[int]:
    return [windows.index(each) for year in flush.windows.values() for each in year]


@pytest.mark.parametrize("name", YEARS)
def test_a_logged_window_speaks_of_the_flush_it_is_nearest(name: str) -> None:
    written, *flushes, stray = YEARS[name]
    known, strays = paired(spans(ROSE), {"2025": parse_season(written)})
    windows = spans(written)
    assert [said(flush, windows) for flush in known] == flushes
    assert [said(flush, windows) for flush in strays] == ([stray] if stray else [])


def test_strays_that_share_days_are_one_flush_of_several_years() -> None:
    log = {
        "2023": parse_season("1 January - 20 January, 1 March - 10 March"),
        "2024": parse_season("15 January - 30 January"),
        "2025": parse_season("25 December - 5 January"),
    }
    _, strays = paired(spans("June"), log)
    assert [list(stray.windows) for stray in strays] == [["2023", "2024", "2025"], ["2023"]]
