"""What a style link's page shows its client, and what staff see of all links."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Fact, ImagePair, Link, PhotoView, PictureView, RoleShare
from corymb.views.season import SwapView


@dataclass(frozen=True)
class ShownImage:
    """One way of seeing a look: a photo of it, its drawing, or the drawing in another light."""

    label: str  # 'Photo', 'Drawn', 'Candlelight'
    credit: str  # who took it, or that it is drawn
    picture: PictureView | None
    photo: PhotoView | None


@dataclass(frozen=True)
class LinkLine:
    """One line of a look as it will be: how many of which stem."""

    count: int
    name: str
    hex: str
    in_place_of: str  # the stem it stands in for, or ''


@dataclass(frozen=True)
class LinkLook:
    """A look that the client may choose, as it will be on the day."""

    id: str  # 'look-1'
    name: str
    variant: str  # '' for the recipe itself
    size: str  # '' for the regular one
    style: str
    summary: str
    chosen_words: str  # what the client's answer says of it
    href: str  # its page on the clients' site
    can: bool
    state: str  # 'On that day: as pictured'
    images: tuple[ShownImage, ...]
    facts: tuple[Fact, ...]
    band: tuple[RoleShare, ...]
    lines: tuple[LinkLine, ...]
    swaps: tuple[SwapView, ...]
    doubts: str  # what may still change, or ''
    why_not: str  # what keeps it from being made, and when it can be; '' where it can


@dataclass(frozen=True)
class KeptAlike:
    """How to keep some of the looks."""

    names: str  # '' where it goes for all of them
    care: str


@dataclass(frozen=True)
class AnswerMail:
    """The mail that answers: its parts, and the whole for a browser without script."""

    address: str
    subject: str
    begin: str
    end: str
    href: str  # mailto: with every look in it, to strike out what isn't wanted


@dataclass(frozen=True)
class StyleLinkView:
    """A page for one client."""

    href: str
    title: str
    share: ImagePair | None  # what a message shows of it: the first look that will be so
    day: str  # 'Saturday 19 September 2026'
    note: tuple[str, ...]  # its paragraphs
    place: str  # 'The old barn', or ''
    hours: str  # '17:30 to 23:00', or ''
    light: tuple[str, ...]  # '17:30 to 23:00: by candlelight', one for each light of the hours
    indicative: str  # that the light is a guide; '' where none is shown
    looks: tuple[LinkLook, ...]
    sure_means: tuple[Fact, ...]  # of the words used for what may change
    keeping: tuple[KeptAlike, ...]
    cautions: tuple[str, ...]
    not_known: str  # that nobody should take silence for safety; '' where nothing can be made
    answer: AnswerMail
    answer_within: str  # '2 days', or ''
    last_day: str  # '10 October 2026'
    expires: str  # the same as YYYY-MM-DD, for the page to go by
    asked_day: str  # the day of the flowers as YYYY-MM-DD

    @property
    def can(self) -> tuple[LinkLook, ...]:
        """The looks that can be chosen."""
        return tuple(look for look in self.looks if look.can)


@dataclass(frozen=True)
class ListedLook:
    """A look in the staff's list of links."""

    look: Link
    size: str
    state: str
    warns: bool


@dataclass(frozen=True)
class ListedLink:
    """A style link in the staff's list."""

    title: str
    client: str
    day: str
    last_day: str
    address: str  # where the client opens it: whole, or from the clients' site's root
    looks: tuple[ListedLook, ...]


@dataclass(frozen=True)
class LinksView:
    """For staff: the links that stand, and those that are over."""

    standing: tuple[ListedLink, ...]
    over: tuple[ListedLink, ...]
    sample: str  # a recipe that clients see, by its id; '' while there is none
    sample_day: str  # a day to come, as YYYY-MM-DD
    has_host: bool  # whether it is known where the clients' site is opened
