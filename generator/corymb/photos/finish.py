"""How are photos finished for the web, and when must a finished one be made again?

The settings were measured on 12-megapixel photos: AVIF at speed 9 is smaller than WebP and
faster; slower speeds cost three to fifty times the time for nearly nothing; a progressive
JPEG stands by for readers whose browser is older.
"""

import hashlib
import json
from dataclasses import asdict, dataclass
from functools import cache
from pathlib import Path

import PIL
from PIL import features

from corymb.code_digest import code_digest

STEPS = Path(__file__).parent


@dataclass(frozen=True)
class Finish:
    """Everything that decides what a finished photo looks like; qualities run from 0 to 100."""

    widths: tuple[int, ...] = (480, 960, 1600)
    avif_quality: int = 62
    avif_speed: int = 9
    jpeg_quality: int = 76
    card_size: tuple[int, int] = (1200, 630)
    # What shows through where a picture is transparent: the paper of the pages.
    paper: str = "#f7f2e8"

    def key(self, content_digest: str) -> str:
        """A name that changes when the photo, a setting, an encoder or our code does.

        Twenty hexadecimal digits: no two of a studio's photos will ever share one, and
        a file so named can be kept by browsers for good.
        """
        parts = (content_digest, _written(self), code_digest(STEPS), *encoders())
        return hashlib.sha256("\n".join(parts).encode()).hexdigest()[:20]


HOUSE_FINISH = Finish()


@cache
def _written(finish: Finish) -> str:
    return json.dumps(asdict(finish), sort_keys=True)


@cache
def encoders() -> tuple[str, ...]:
    """The versions of all that touches the pixels, so that an upgrade remakes the photos."""
    parts = ("avif", "jpg", "libjpeg_turbo", "littlecms2", "webp")
    return (PIL.__version__, *(f"{part} {features.version(part)}" for part in parts))
