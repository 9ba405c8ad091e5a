"""What does a new build make of a studio, in a process that knows nothing of what was before?"""

from __future__ import annotations

import traceback
from dataclasses import dataclass, field
from datetime import date
from multiprocessing import get_context
from multiprocessing.connection import Connection
from pathlib import Path

from corymb.checks import read_and_check
from corymb.photos import PhotoCache
from corymb.site.build import BuildReport, make_images, no_progress, photos_made, site_of
from corymb.site.settings import read_settings
from corymb.site.site import AddressTakenError, Site
from corymb.studio.problems import Problem, in_order
from corymb.views.pieces import AUDIENCES, Audience

DAY = date(2026, 9, 16)

Told = list[Problem]
Sites = dict[Audience, Site]

CLEAN = get_context("forkserver")
CLEAN.set_forkserver_preload([__name__])


@dataclass
class Made:
    """What was told of a studio, and its sites, or why there can't be any."""

    told: Told
    sites: Sites = field(default_factory=dict)
    refused: str = ""


def made_anew(settings_file: Path, whole: bool) -> Made:
    """All of it read anew, and made too where `whole` is wanted and nothing is wrong."""
    settings = read_settings(settings_file)
    studio, told = read_and_check(settings.studio_folder)
    if studio is None or is_wrong(told):
        return Made(told)
    with PhotoCache(settings.cache_folder / "photos") as cache:
        report = BuildReport()
        photos_made(studio, cache, report, no_progress)
        cache.save()
        told = in_order((*told, *report.problems))
        if not whole or report.errors:
            return Made(told)
        try:
            images = make_images(studio, settings, cache, BuildReport())
            sites = {who: site_of(studio, who, settings, DAY, images) for who in AUDIENCES}
        except AddressTakenError as error:
            return Made(told, refused=str(error))
    return Made(told, sites)


class Anew:
    """A new process, that makes everything anew while the workshop does its part."""

    def __init__(self, settings_file: Path, whole: bool) -> None:
        self._answer, there = CLEAN.Pipe(duplex=False)
        self._process = CLEAN.Process(target=_answer, args=(there, settings_file, whole))
        self._process.start()
        there.close()

    def made(self) -> Made:
        """What came of it. Raises RuntimeError where it stumbled."""
        try:
            answer = self._answer.recv()
        except EOFError:
            answer = f"ended by itself: {self._process.exitcode}"
        self._process.join()
        if isinstance(answer, Made):
            return answer
        raise RuntimeError(f"made anew, it stumbled: {answer}")


def _answer(to: Connection, settings_file: Path, whole: bool) -> None:
    try:
        to.send(made_anew(settings_file, whole))
    except Exception:
        to.send(traceback.format_exc(limit=-6))


def is_wrong(told: Told) -> bool:
    """Whether there is more than advice."""
    return any(not problem.advice for problem in told)
