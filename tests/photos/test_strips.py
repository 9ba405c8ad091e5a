"""A very large picture is brought down strip by strip to what it would be as a whole."""

import pytest
from PIL import Image

from corymb.photos import strips
from corymb.photos.modes import plain
from corymb.photos.strips import thinned

from .camera import petals

SIZE = (70, 1111)


def paletted() -> Image.Image:
    image = petals(SIZE).convert("P")
    image.info["transparency"] = 3
    return image


def transparent() -> Image.Image:
    image = petals(SIZE)
    image.putalpha(image.getchannel("G"))
    return image


PICTURES = {
    "colours": petals(SIZE),
    "black and white": petals(SIZE).convert("1"),
    "palette": paletted(),
    "transparent": transparent(),
    "sixteen-bit grey": petals(SIZE).convert("L").convert("I;16").point(lambda value: value * 257),
}


@pytest.mark.parametrize("factor", [1, 2, 3])
@pytest.mark.parametrize("name", PICTURES)
def test_strips_are_the_same_as_the_whole(
    name: str, factor: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(strips, "LARGE", 0)
    assert thinned(PICTURES[name], factor) == plain(PICTURES[name]).reduce(factor)
