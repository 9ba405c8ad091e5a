"""Who keeps the live sites up with the studio's files, page by page and then whole?

A save is answered in two steps. What someone has open is made at once, and their browser told;
then, while they look at it, the rest of both sites, their check, and their folders. Another save
meanwhile ends the second step, and the first begins again.
"""

from __future__ import annotations

import os
import time
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from threading import Event, Lock, Thread

from corymb.site.assets import ASSETS
from corymb.site.build import BuildReport, Progress, no_progress
from corymb.site.lasting import what_is_here_lasts
from corymb.site.live.live_site import LiveSite
from corymb.site.live.workshop import Workshop
from corymb.site.locked.publishing import refusal
from corymb.site.publishing import PublishError, ToldFolder, Wanted
from corymb.site.render import TEMPLATES
from corymb.site.settings import SiteSettings
from corymb.site.site import AddressTakenError, Site
from corymb.studio.problems import Problem
from corymb.views.pieces import Audience

Found = bytes | Path
"""What a browser is sent: made here, or a file as it lies."""

SHORT_SECONDS = 0.001
FETCHING_SECONDS = 0.05


class _InterruptedError(Exception):
    """There is a newer save; what is being made is of no use any more."""


@dataclass
class _Made:
    """What was last made of one audience's site: the whole, and what is newer than it."""

    whole: Site = field(default_factory=Site)
    newer: dict[str, bytes] = field(default_factory=dict)

    def at(self, address: str) -> Found | None:
        """What stands at an address, if anything does."""
        made = self.newer.get(address) or self.whole.pages.get(address)
        return made or self.whole.files.get(address) or self.whole.copies.get(address)


class LiveBuilding:
    """Builds what a `LiveSite` serves, again and again."""

    def __init__(
        self,
        live: LiveSite,
        audiences: Sequence[Audience],
        finished: Callable[[BuildReport], None],
        shown: Callable[[Problem], Problem] = lambda problem: problem,
    ) -> None:
        """`finished` is told, by another thread, when both sites are whole again after a save.

        `shown` gives a problem as browsers show it.
        """
        self.live = live
        self._shown = shown
        self.audiences = tuple(audiences)
        self._finished = finished
        self._workshop: Workshop | None = None
        self._theme: object = None
        self._made = {name: _Made() for name in self.audiences}
        self._ahead = False
        self._fresh: dict[tuple[str, str], bytes] = {}
        """What was made for someone since the last save."""
        self._lock = Lock()
        self._counting = Lock()
        self._asking = 0
        self._newer = Event()
        self._finishing: Thread | None = None
        self._folders: dict[Audience, ToldFolder] = {}
        live.made_at = self.at

    def begin(self, settings: SiteSettings, progress: Progress = no_progress) -> BuildReport:
        """Build both sites whole, before anyone looks. The report tells of what was wrong."""
        report = BuildReport(self._look(settings))
        if report.errors:
            self._refuse(report)
        else:
            self._finish(report, progress)
        return report

    def keep_up(self, settings: SiteSettings) -> BuildReport:
        """After a save: make what is open now, tell the browsers, and let the rest follow."""
        self.rest()
        report = BuildReport(self._look(settings))
        if report.errors:
            self._refuse(report)
            return report
        self._ahead = True
        for name, address in self.live.open_pages():
            self.at(name, address)
        self.live.published()
        self._finishing = Thread(target=self._follow, args=(report,), daemon=True)
        self._finishing.start()
        return report

    def rest(self) -> None:
        """Let go of what is being made."""
        if self._finishing is not None:
            self._newer.set()
            self._finishing.join()
            self._newer.clear()
            self._finishing = None

    def end(self) -> None:
        """Make nothing more, and clear up."""
        self.rest()
        for folder in self._folders.values():
            folder.close()

    def at(self, name: str, address: str) -> Found | None:
        """What stands at an address of a site now; none where nothing was made for it."""
        if (fresh := self._fresh.get((name, address))) is not None:
            return fresh
        with self._counting:
            self._asking += 1
        with self._lock:
            with self._counting:
                self._asking -= 1
            return self._made_now(name, address)  # type: ignore[arg-type]  # a site served here

    def _made_now(self, name: Audience, address: str) -> Found | None:
        """What a workshop that is ahead of the whole sites gives, or else what was made before."""
        made = self._made[name]
        if self._ahead and self._workshop is not None:
            page = self._workshop.page(name, address)
            if page is None and (drawing := self._workshop.drawing(address)) is not None:
                page = drawing.encode()
            if page is not None:
                made.newer[address] = self._fresh[name, address] = page
                return page
        return made.at(address)

    def _refuse(self, report: BuildReport) -> None:
        self.live.refused([self._shown(problem) for problem in report.errors])

    def _look(self, settings: SiteSettings) -> list[Problem]:
        theme = _theme_now()
        with self._lock:
            workshop = self._workshop
            if workshop is None or workshop.settings != settings or theme != self._theme:
                workshop = self._workshop = Workshop(settings, self.audiences)
                self._theme = theme
            self._ahead = False
            self._fresh = {}
            return workshop.look()

    def _follow(self, report: BuildReport) -> None:
        """Once the browsers have had time to fetch what they were told of."""
        if self._newer.wait(FETCHING_SECONDS):
            return
        if self._finish(report, no_progress):
            self._finished(report)

    def _finish(self, report: BuildReport, progress: Progress) -> bool:
        """Make both sites whole, or say why not; False where a newer save came in between."""
        try:
            with self._lock:
                self._make_whole(report, progress)
        except _InterruptedError:
            return False
        except AddressTakenError as error:
            assert self._workshop is not None
            folder = self._workshop.settings.studio_folder
            report.problems.append(Problem(folder, 1, 1, str(error)))
        except PublishError as error:
            report.problems.append(Problem(error.folder or Path(), 0, 0, str(error)))
        if report.errors:
            self._refuse(report)
        return True

    def _make_whole(self, report: BuildReport, progress: Progress) -> None:
        assert self._workshop is not None
        sites = self._workshop.sites(report, progress, self._breath)
        if report.errors:
            return
        stale = False
        for name, site in sites.items():
            made = self._made[name]
            stale |= any(
                made.at(address) != site.pages.get(address)
                for whose, address in self.live.open_pages()
                if whose == name
            )
            self._made[name] = _Made(site)
            report.pages[name] = len(site.pages)
            self._publish(name, site, made.whole)
        self._ahead = False
        self._fresh = {}
        what_is_here_lasts()  # so that no save has to wait for a look through all of it
        if stale:
            self.live.published()

    def _breath(self) -> None:
        """Between two pages: let a browser have its answer, and see if there is a newer save."""
        self._lock.release()
        while self._asking and not self._newer.is_set():
            time.sleep(SHORT_SECONDS)
        self._lock.acquire()
        if self._newer.is_set():
            raise _InterruptedError

    def _publish(self, name: Audience, site: Site, before: Site) -> None:
        """Into its folder; a staff's site that is to stand there locked is left to `build`."""
        assert self._workshop is not None
        settings = self._workshop.settings
        if refusal(settings, (name,), None) is not None:
            return
        folder = settings.output(name)
        told = self._folders.get(name)
        if told is None or told.room.folder != folder.absolute():
            told = self._folders[name] = ToldFolder(folder)
        told.publish(Wanted(site.written, site.copies), _changed(before, site))


def _changed(before: Site, after: Site) -> set[str]:
    """The addresses at which something else stands now."""
    shelves = ((before.written, after.written), (before.copies, after.copies))
    return {
        path
        for old, new in shelves
        for path in old.keys() | new.keys()
        if old.get(path) != new.get(path)
    }


def _theme_now() -> object:
    """How the theme's files stand: who works on the theme wants to see it."""
    return [*_stamps_in(TEMPLATES), *_stamps_in(ASSETS)]


def _stamps_in(folder: str | Path) -> Iterator[tuple[str, int, int]]:
    with os.scandir(folder) as entries:
        for entry in entries:
            if entry.is_dir():
                yield from _stamps_in(entry.path)
            else:
                stat = entry.stat()
                yield entry.path, stat.st_mtime_ns, stat.st_size
