"""What do the sites show now, a moment after a file was saved?

A workshop stays open while a studio's files are edited. It reads again what was saved, says what
is wrong with it, and makes any page of either site when it is asked for, from what it made before
wherever that still holds (`corymb.ledger`). The whole of a site, made that way, is byte for byte
the site that a new build would make.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

from corymb.checks import all_found
from corymb.language import in_language
from corymb.ledger import Followed, Ledger
from corymb.photos import PhotoCache, PreparedPhoto
from corymb.site.build import (
    BuildReport,
    Progress,
    dead_links_of,
    no_progress,
    photos_made,
)
from corymb.site.drawn.followed import FollowedPictures
from corymb.site.drawn.pictures import draw_all, kept_pictures
from corymb.site.link_check import Known
from corymb.site.pages import Planned
from corymb.site.settings import SiteSettings
from corymb.site.site import Site, SiteMaker, no_breath
from corymb.studio.followed import become, followed
from corymb.studio.load import FolderReader
from corymb.studio.models import Photo
from corymb.studio.photographs import photo_path, photos_of
from corymb.studio.problems import Problem, in_order
from corymb.studio.studio import Studio
from corymb.studio.today import today_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.pieces import Audience

Stamps = dict[str, tuple[int, ...] | None]


class Workshop:
    """Both sites of a studio that is being edited; for one thread at a time."""

    def __init__(
        self, settings: SiteSettings, audiences: Sequence[Audience], today: date | None = None
    ) -> None:
        self.settings = settings
        self.audiences = tuple(audiences)
        self._today = today
        self._reader = FolderReader(settings.studio_folder)
        self._bench: _Bench | None = None

    def look(self) -> list[Problem]:
        """Read what has been saved, and say all that is wrong with the studio now.

        While there are errors, pages can't be asked for.
        """
        read = self._reader.read()
        if read.mended is None:
            return read.problems
        bench = self._bench = self._bench_for(read.mended)
        problems = in_order((*read.problems, *all_found(bench.studio)))
        if all(problem.advice for problem in problems):
            bench = self._bench = self._made_ready(bench, read.mended)
            if of_photos := bench.take_photos():
                problems = in_order((*problems, *of_photos))
        return problems

    def _bench_for(self, read: Studio) -> _Bench:
        day, before = self._today or today_of(read), self._bench
        if before is not None and before.takes(read, day):
            return before
        return _Bench.of(read, self.settings, day, before)

    def _made_ready(self, bench: _Bench, read: Studio) -> _Bench:
        """Only where nothing is wrong: what isn't there might be just what all pages speak of."""
        if bench.makers and not bench.frames_hold():
            bench = _Bench.of(read, self.settings, bench.today, bench)
        if not bench.makers:
            bench.set_up(self.audiences)
        return bench

    def page(self, audience: Audience, address: str) -> bytes | None:
        """A page as it is now; none where the site, when it was last whole, had none there."""
        assert self._bench is not None
        with in_language(self._bench.studio.house.language):
            return self._bench.makers[audience].page(address)

    def drawing(self, address: str) -> str | None:
        """The drawing of a look as it is now, by its address."""
        assert self._bench is not None
        with in_language(self._bench.studio.house.language):
            return self._bench.pictures.at(address)

    def sites(
        self,
        report: BuildReport,
        progress: Progress = no_progress,
        breath: Callable[[], None] = no_breath,
    ) -> dict[Audience, Site]:
        """Both sites, whole, with what is wrong in them added to the report.

        `breath` is drawn before each page, and may end it all by raising. Raises AddressTakenError.
        """
        assert self._bench is not None
        with in_language(self._bench.studio.house.language):
            return self._bench.sites(report, progress, breath)


@dataclass
class _Bench:
    """Everything that hangs together by one ledger: a studio, its images, and its sites."""

    studio: Studio
    settings: SiteSettings
    today: date
    pictures: FollowedPictures
    photos: Followed[str, PreparedPhoto]
    makers: dict[Audience, SiteMaker] = field(default_factory=dict)
    """None until there was nothing wrong with the studio."""
    planned_before: dict[Audience, dict[str, Planned]] = field(default_factory=dict)
    stamps: Stamps = field(default_factory=dict)
    told_of_photos: list[Problem] = field(default_factory=list)
    read_before: dict[Audience, Known] = field(default_factory=dict)
    drawn: bool = False

    @classmethod
    def of(
        cls, read: Studio, settings: SiteSettings, today: date, before: _Bench | None = None
    ) -> _Bench:
        """Until its sites are whole, the pages are taken to be those that the one before made."""
        studio = followed(read, Ledger(follows=True))
        with in_language(studio.house.language):
            pictures = FollowedPictures(studio, kept_pictures(settings.cache_folder / "pictures"))
        bench = cls(studio, settings, today, pictures, Followed(studio.ledger, "photos"))
        if before is not None:
            bench.planned_before = before.planned
        return bench

    @property
    def planned(self) -> dict[Audience, dict[str, Planned]]:
        """The pages of each site when it was last whole."""
        if not self.makers:
            return self.planned_before
        return {audience: dict(maker.planned) for audience, maker in self.makers.items()}

    def set_up(self, audiences: Sequence[Audience]) -> None:
        """Have everything at hand that the sites are made with."""
        for audience in audiences:
            catalogue = Catalogue(
                self.studio,
                audience,
                self.today,
                photos=self.photos,
                drawings=self.pictures.drawings,
                heads=self.pictures.heads,
                plans=self.pictures.plans,
                sizes=self.pictures.sizes,
                ledger=self.studio.ledger,
            )
            with in_language(self.studio.house.language):
                maker = self.makers[audience] = SiteMaker(catalogue, self.settings)
            maker.planned = dict(self.planned_before.get(audience, {}))

    def takes(self, read: Studio, today: date) -> bool:
        """Whether what was read anew fits on the bench; if not, all is to be cleared away."""
        return today == self.today and become(self.studio, read)

    def frames_hold(self) -> bool:
        """Whether what all pages have in common is as it was."""
        with in_language(self.studio.house.language):
            return all(maker.making.site == maker.frame() for maker in self.makers.values())

    def take_photos(self) -> list[Problem]:
        """Make the photos that are new or different; say which can't be used."""
        stamps = _stamps_of(self.studio)
        if stamps == self.stamps:
            return self.told_of_photos
        report = BuildReport()
        with PhotoCache(self.settings.cache_folder / "photos") as cache:
            self.photos.become(photos_made(self.studio, cache, report, no_progress))
        self.stamps, self.told_of_photos = stamps, report.problems
        return report.problems

    def sites(
        self, report: BuildReport, progress: Progress, breath: Callable[[], None]
    ) -> dict[Audience, Site]:
        if not self.drawn:  # the first time there is much to draw, and all hands help
            draw_all(self.studio, self.pictures.store.folder, progress)
            self.drawn = True
        pictures = self.pictures.all(breath)
        report.photos, report.pictures = len(self.photos), len(pictures.drawn)
        sites = {}
        for done, (audience, maker) in enumerate(self.makers.items(), 1):
            sites[audience] = maker.whole(pictures, breath)
            report.problems += dead_links_of(
                sites[audience], self.settings, audience, self.read_before.setdefault(audience, {})
            )
            progress("sites", done, len(self.makers))
        return sites


def _stamps_of(studio: Studio) -> Stamps:
    """How the files of all photos stand, to know when one has changed."""
    return {photo.file: _stamp_of(studio.folder, photo.file) for photo in _named(studio)}


def _named(studio: Studio) -> Iterator[Photo]:
    return (photo for photo, _, _ in photos_of(studio) if photo.may_be_shown_to != "nobody")


def _stamp_of(folder: Path, written: str) -> tuple[int, ...] | None:
    """Of a photo; where its name is written otherwise on the disk, it is looked for."""
    return _stamp(f"{folder}/{written}") or _stamp(photo_path(folder, written))


def _stamp(file: Path | str) -> tuple[int, ...] | None:
    try:
        stat = os.stat(file)  # noqa: PTH116 (for every photo at every save)
    except (OSError, ValueError):
        return None
    return stat.st_mtime_ns, stat.st_ctime_ns, stat.st_size, stat.st_ino
