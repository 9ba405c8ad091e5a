"""The day on which the broken studio is read: its style link still stands."""

from __future__ import annotations

from datetime import date

import pytest

from corymb.checks import style_links

DAY = date(2026, 9, 1)


@pytest.fixture(autouse=True)
def _stands_still(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(style_links, "today_of", lambda studio: DAY)
