"""Photos as a camera leaves them, for measuring: 12 megapixels, soft shapes, edges and grain.

The same number always gives the same photo. `distinct` writes each picture many times, each
time under another comment, so that no two files hold the same.
"""

from __future__ import annotations

import io
import random
from collections.abc import Iterator
from pathlib import Path

from PIL import Image, ImageDraw

from tests.photos.camera import profile

SIZE = (4000, 3000)
QUALITY = 90
# How coarse each layer of blotches is, and how much of it shows: as out-of-focus ground,
# leaves, petals' veins and a sensor's grain would.
LAYERS = ((40, 0.35), (200, 0.2), (1000, 0.12), (4000, 0.08))
PETALS = 400
# What cameras write without a profile is sRGB; phones attach Display P3's (SMPTE EG 432-1,
# adapted to D50). From memory.
DISPLAY_P3 = profile(
    red=(0.51512, 0.2412, -0.00105),
    green=(0.29198, 0.69225, 0.04189),
    blue=(0.1571, 0.06657, 0.78407),
)


def picture(number: int) -> Image.Image:
    """One photo's pixels."""
    dice = random.Random(number)
    image = _blotches(dice, 8)
    for across, strength in LAYERS:
        image = Image.blend(image, _blotches(dice, across), strength)
    _petals(image, dice)
    return Image.blend(image, _blotches(dice, SIZE[0]), 0.08)


def soft_picture(number: int) -> Image.Image:
    """As large, and done in less than half the time: for counting photos, not their seconds."""
    return _blotches(random.Random(number), 40)


def jpeg(image: Image.Image, icc: bytes = b"") -> bytes:
    output = io.BytesIO()
    image.save(output, "JPEG", quality=QUALITY, icc_profile=icc)
    return output.getvalue()


def distinct(jpegs: list[bytes], folder: Path, count: int) -> Iterator[Path]:
    """So many photos of distinct content, the pictures taken in turn."""
    for number in range(count):
        comment = f"photo {number}".encode()
        segment = b"\xff\xfe" + (len(comment) + 2).to_bytes(2, "big") + comment
        data = jpegs[number % len(jpegs)]
        path = folder / f"{number:04}.jpg"
        path.write_bytes(data[:2] + segment + data[2:])
        yield path


def _blotches(dice: random.Random, across: int) -> Image.Image:
    size = (across, across * 3 // 4)
    noise = Image.frombytes("RGB", size, dice.randbytes(3 * size[0] * size[1]))
    return noise if size == SIZE else noise.resize(SIZE, Image.Resampling.BICUBIC)


def _petals(image: Image.Image, dice: random.Random) -> None:
    brush = ImageDraw.Draw(image)
    for _ in range(PETALS):
        x, y, long = dice.randrange(SIZE[0]), dice.randrange(SIZE[1]), dice.randrange(20, 260)
        wide = long * dice.uniform(0.3, 1)
        colour = (dice.randrange(256), dice.randrange(256), dice.randrange(256))
        brush.ellipse((x - long, y - wide, x + long, y + wide), fill=colour)
