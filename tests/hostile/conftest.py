"""The hostile studio, built once for a whole run."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from corymb.views.pieces import AUDIENCES, Audience
from tests.hostile.studio import build_hostile
from tests.once import made_once
from tests.serving import served


@pytest.fixture(scope="session")
def hostile(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the hostile studio in `content` and its sites beside it."""
    return made_once(tmp_path_factory, "hostile", build_hostile)


@pytest.fixture(scope="session")
def hostile_addresses(hostile: Path) -> Iterator[dict[Audience, str]]:
    """Where each of its sites can be visited; they end with a slash."""
    with served(hostile / "clients") as clients, served(hostile / "staff") as staff:
        yield dict(zip(AUDIENCES, (clients, staff), strict=True))
