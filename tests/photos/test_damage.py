"""Whatever happened to a file on its way, the answer is a photo or a sentence."""

import random
from pathlib import Path

import pytest

from corymb.photos import Finish, PhotoError, inspect
from corymb.photos.develop import develop

from .camera import marked, save, turned_exif

SMALL = Finish(widths=(32,), card_size=(12, 6))
TRIES = 60


def damaged(data: bytes, chance: random.Random) -> bytes:
    """A few bytes wrong, some missing, or some put in; mostly near the start, where they matter."""
    broken = bytearray(data)
    for _ in range(chance.randint(1, 6)):
        at = chance.randrange(min(len(broken), chance.choice([40, 400, 4000])))
        harm = chance.choice(["wrong", "missing", "extra"])
        if harm == "wrong":
            broken[at] = chance.randrange(256)
        elif harm == "missing":
            del broken[at : at + chance.randint(1, 20)]
        else:
            broken[at:at] = chance.randbytes(chance.randint(1, 20))
    return bytes(broken)


@pytest.mark.filterwarnings("ignore::UserWarning")
@pytest.mark.filterwarnings("ignore::RuntimeWarning")
@pytest.mark.parametrize("kind", ["jpg", "png", "tif", "webp", "avif", "gif", "bmp"])
def test_a_damaged_file_is_a_photo_or_a_sentence(photos: Path, kind: str) -> None:
    source = photos / f"jar.{kind}"
    whole = save(marked(), source, exif=turned_exif(6)).read_bytes()
    chance = random.Random(kind)
    refused = 0
    for _ in range(TRIES):
        source.write_bytes(damaged(whole, chance))
        for use in (inspect, lambda path: develop(path, SMALL)):
            try:
                use(source)
            except PhotoError as error:
                refused += 1
                assert str(error).startswith(f"jar.{kind} ")
    assert refused > 0
