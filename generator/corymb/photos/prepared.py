"""What does a page need to know to show a photo?"""

from dataclasses import dataclass
from pathlib import Path
from typing import Literal

Format = Literal["avif", "jpeg"]


@dataclass(frozen=True)
class PhotoFile:
    """One finished file: `name` is what to publish it as, `path` where it lies in the cache."""

    name: str
    format: Format
    width: int
    height: int
    path: Path


@dataclass(frozen=True)
class PhotoColour:
    """`share` is of the whole that is looked at, from 0 to 1."""

    hex: str
    share: float


@dataclass(frozen=True)
class PreparedPhoto:
    """A photo ready to publish.

    `width` and `height` are the camera's, upright. `placeholder` is a data URI of a few dozen
    bytes that stands blurred until the photo is there; `average_hex` is its mean colour.
    `files` run from large to small, AVIF before JPEG. `share_card` is what a message
    shows beside a link. `palette` holds the colours of all of the photo, the largest share
    first; `flowers` those of what stands before the wall, cloth or table, as far as can be told.
    """

    width: int
    height: int
    placeholder: str
    average_hex: str
    files: tuple[PhotoFile, ...]
    share_card: PhotoFile
    palette: tuple[PhotoColour, ...] = ()
    flowers: tuple[PhotoColour, ...] = ()

    def of_format(self, wanted: Format) -> tuple[PhotoFile, ...]:
        return tuple(file for file in self.files if file.format == wanted)
