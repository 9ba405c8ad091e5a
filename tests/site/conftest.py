"""The planted studio, built once for a whole run."""

from __future__ import annotations

import pytest

from tests.once import made_once
from tests.site.planted_studio import Planted, plant, planted_in


@pytest.fixture(scope="session")
def planted(tmp_path_factory: pytest.TempPathFactory) -> Planted:
    """A small studio with a secret in every private place, and both its sites."""
    return planted_in(made_once(tmp_path_factory, "planted", plant))
