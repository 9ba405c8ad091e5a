"""What a flower's page shows: to a client, and to the people who cut it."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Fact, Link, Patch
from corymb.views.season import SeasonView


@dataclass(frozen=True)
class StemCard:
    """A flower in a list."""

    name: str
    botanical: str
    href: str
    hex: str
    use: str
    season: SeasonView
    colour_words: tuple[str, ...]
    head_svg: str  # href of its drawn head


@dataclass(frozen=True)
class StemGroup:
    """The flowers of one group of plants."""

    name: str
    stems: tuple[StemCard, ...]


@dataclass(frozen=True)
class ClientStem:
    """A flower, leaf, grass, berry or pod as a client may see it."""

    id: str
    name: str
    botanical: str
    group: str
    about: str
    head_svg: str
    colours: tuple[Patch, ...]
    season: SeasonView
    at_best: str
    facts: tuple[Fact, ...]  # head, length, vase life
    use: str
    scent: str
    cautions: tuple[str, ...]
    used_in: tuple[Link, ...]


@dataclass(frozen=True)
class CuttingView:
    """How it is cut, kept and paid for: the part of a flower's page that only staff see."""

    cut_when: str
    conditioning: str
    facts: tuple[Fact, ...]  # conditioning hours, stems per bucket, cutting step, weight, costs
    bed: str
    dates: str  # 'The book says early July to mid October. Moved 4 days for Dunmallow; ...'
    source: str
    notes: str
    cautions: tuple[str, ...]


@dataclass(frozen=True)
class StaffStem(ClientStem):
    """A flower as the people who cut it see it."""

    cutting: CuttingView
