"""What stands around every page: the studio's name, the menu, the path back, the share tags."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Audience, Link


@dataclass(frozen=True)
class MenuItem:
    """A word of the menu; `section` is the first part of the addresses it stands for."""

    label: str
    href: str
    section: str


@dataclass(frozen=True)
class SiteFrame:
    """The same on every page of a site."""

    name: str
    tagline: str
    language: str  # BCP 47, such as en-IE
    audience: Audience
    menu: tuple[MenuItem, ...]
    foot: tuple[Link, ...]
    email: str
    phone: str
    place: str
    base_path: str  # where the site begins on its host: '/' or a folder of it
    locked: bool = False  # published behind a passphrase

    @property
    def staff(self) -> bool:
        """Whether this is the site of the people who make the flowers."""
        return self.audience == "staff"


@dataclass(frozen=True)
class Tint:
    """The page's own colour on paper, in light and in dark mode, as hex, contrast 4.5:1 or more."""

    light: str
    dark: str


@dataclass(frozen=True)
class PageFrame:
    """What is said about one page in its head and above its content."""

    path: str  # 'arrangements/hedgerow-jar.html'
    template: str  # 'recipe.html'
    section: str  # the menu item it belongs to
    title: str  # of the page alone; the template adds the studio's name
    description: str
    crumbs: tuple[Link, ...] = ()  # from home to the parent
    canonical: str = ""  # absolute, or ''
    share_image: str = ""  # absolute, or ''; 1200 x 630 pixels
    share_alt: str = ""
    tint: Tint | None = None
    structured_data: str = ""  # JSON-LD, already safe inside <script>
    indexed: bool = True
