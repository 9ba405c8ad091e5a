"""The day on which the broken studio is read: its style link still stands."""

from __future__ import annotations

from datetime import date

import pytest

from corymb.checks import style_links


class Then(date):
    """A clock that stands still."""

    @classmethod
    def today(cls) -> Then:
        return cls(2026, 9, 1)


@pytest.fixture(autouse=True)
def _stands_still(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(style_links, "date", Then)
