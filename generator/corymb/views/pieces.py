"""The small parts that pages are put together from: a link, a photo, a picture, a patch of colour.

Every `href` is an address inside the site, from its root and without a leading slash
(`arrangements/hedgerow-jar.html`); the template's `url()` makes it relative to the page.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Audience = Literal["clients", "staff"]
AUDIENCES: tuple[Audience, ...] = ("clients", "staff")


@dataclass(frozen=True)
class Link:
    """Words that lead to another page."""

    label: str
    href: str


@dataclass(frozen=True)
class PhotoSource:
    """One file of a photo: a modern or a fallback format at one width."""

    href: str
    width_px: int
    media_type: str  # image/avif or image/jpeg


@dataclass(frozen=True)
class PhotoView:
    """A published photo: who made it, what it shows, and its files, smallest first."""

    alt: str
    credit: str
    width_px: int
    height_px: int
    placeholder: str  # a colour or tiny data URI shown while the photo loads
    sources: tuple[PhotoSource, ...]
    share_card: str  # href of the 1200 x 630 card

    @property
    def portrait(self) -> bool:
        """Whether it is taller than wide."""
        return self.height_px > self.width_px


@dataclass(frozen=True)
class PictureView:
    """The drawn picture of an arrangement (SVG), standing in where there is no photo."""

    href: str
    alt: str
    width: float
    height: float
    share_card: str = ""  # href of the 1200 x 630 card; '' where clients see a photo
    small: str = ""  # href of its pixels for a phone's lists, in a high frame; or ''
    small_wide: str = ""  # and in a wide one


@dataclass(frozen=True)
class SizesPicture(PictureView):
    """A recipe's sizes side by side, with a line to compare them with."""

    line: str = ""  # what the line is as long as: 'a half-litre jug, 16 cm high'; '' for no line


@dataclass(frozen=True)
class ImagePair:
    """What shows an arrangement: its photo where there is one, its picture always."""

    picture: PictureView
    photo: PhotoView | None


@dataclass(frozen=True)
class Patch:
    """A colour and how much of the arrangement's visible area it takes, in percent."""

    name: str
    hex: str
    percent: float


@dataclass(frozen=True)
class RoleShare:
    """One colour role's part of the band: its patches, and their sum in percent."""

    role: str
    percent: float
    patches: tuple[Patch, ...]


@dataclass(frozen=True)
class Fact:
    """A large value over a small label: '56' over 'stems'."""

    value: str
    label: str
