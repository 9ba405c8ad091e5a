"""The studio whose drawings are looked at: the one that `corymb new studio` makes."""

from __future__ import annotations

from pathlib import Path

import pytest

import corymb
from corymb.studio.load import read_studio
from corymb.studio.studio import Studio

STARTER = Path(corymb.__file__).parent / "starter" / "content"


@pytest.fixture(scope="module")
def studio() -> Studio:
    studio, _ = read_studio(STARTER)
    assert studio is not None
    return studio
