"""A studio's photo folder and a cache, fresh for every test."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from corymb.photos import PhotoCache


@pytest.fixture
def photos(tmp_path: Path) -> Path:
    folder = tmp_path / "photos"
    folder.mkdir()
    return folder


@pytest.fixture
def cache(tmp_path: Path) -> Iterator[PhotoCache]:
    with PhotoCache(tmp_path / "cache") as opened:
        yield opened
