"""Whatever happened to a file on its way, the answer is a photo or a sentence."""

import random
from collections.abc import Callable
from pathlib import Path

import pytest

from corymb.photos import Finish, PhotoError, inspect
from corymb.photos.develop import develop

from .damage import HARMS, harmed, whole_photos

SMALL = Finish(widths=(32,), card_size=(12, 6))
TRIES = 16
PHOTOS = list(whole_photos())


def refused(source: Path) -> bool:
    """Whether a sentence came of it, which names the photo; a photo otherwise."""
    try:
        inspect(source)
        develop(source, SMALL)
    except PhotoError as error:
        assert str(error).startswith(f"{source.name} ")
        return True
    return False


@pytest.mark.filterwarnings("ignore::UserWarning")
@pytest.mark.filterwarnings("ignore::RuntimeWarning")
@pytest.mark.filterwarnings("ignore::PIL.Image.DecompressionBombWarning")
@pytest.mark.parametrize("number", range(len(PHOTOS)), ids=[kind for kind, _ in PHOTOS])
def test_a_damaged_file_is_a_photo_or_a_sentence(photos: Path, number: int) -> None:
    kind, whole = PHOTOS[number]
    source = photos / f"jar.{kind}"
    source.write_bytes(whole)
    assert not refused(source)
    chance = random.Random(number)
    outcomes = []
    for _ in range(TRIES):
        source.write_bytes(harmed(whole, chance))
        outcomes.append(refused(source))
    assert any(outcomes)


@pytest.mark.parametrize("harm", HARMS)
def test_every_harm_changes_the_file(harm: Callable[[bytes, random.Random], bytes]) -> None:
    kind, whole = PHOTOS[0]
    assert kind == "jpg"
    assert harm(whole, random.Random(1)) != whole
