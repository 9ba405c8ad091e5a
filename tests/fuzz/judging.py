"""What becomes of a studio with a slip in it: told in its place, or built whole?

Each is read and checked as every command does. Where no error is told, both sites are made with
all their pictures, page by page, and looked over for dead links; they are only not written out.
"""

from __future__ import annotations

import re
import signal
import time
import traceback
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, fields, replace
from datetime import date
from importlib import import_module
from pathlib import Path
from types import FrameType
from typing import Any

from corymb.checks import read_and_check
from corymb.photos import PhotoCache
from corymb.site.build import BuildReport, make_images, site_of
from corymb.site.live.workshop import Workshop
from corymb.site.settings import SettingsError, read_settings
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.views.frame import PageFrame, SiteFrame
from corymb.views.pieces import AUDIENCES
from tests.broken.well_put import assert_well_put

DAY = date(2026, 9, 16)
MOST_SECONDS = 2
"""What reading and checking a studio may take, of the processor's time."""
MOST_BUILDING = 30
"""After so long a build is given up as one that never ends."""
NAME = re.compile(r"[\w&'’.+-]+(?: [\w&'’.+-]+)*")


@dataclass(frozen=True)
class Verdict:
    """`told` an error, or `built` a site; any other `came` is a fault, and `why` tells it."""

    came: str
    why: str = ""
    reading: float = 0.0
    """Seconds that reading and checking took."""
    building: float = 0.0


class EndlessError(Exception):
    """It took longer than anything may."""


def judge(
    studio: Path,
    settings: Path,
    change: dict[str, bytes | None],
    was: str,
    good: Studio | None = None,
    makes: bool = True,
    workshop: Workshop | None = None,
) -> Verdict:
    """What becomes of the studio. `change` has happened to its files, which said `was`.

    `good` is the studio before that, where nothing but its files has changed: a slip in a comment
    makes no other site. Without `makes` none is made at all; by a `workshop` it is made from what
    still holds of the one before.
    """
    began = time.process_time()
    try:
        with _in_time(MOST_BUILDING):
            found, problems = read_and_check(studio)
            reading = time.process_time() - began
            if reading > MOST_SECONDS:
                return Verdict("slow", f"read and checked in {reading:.1f} s", reading)
            errors = [problem for problem in problems if not problem.advice]
            fault = _badly_told(problems, studio) or _misplaced(errors, studio, change, was)
            if fault or errors or found is None:
                return Verdict("badly told" if fault else "told", fault, reading)
            if not makes or (good is not None and same(found, good)):
                return Verdict("built", "not made", reading)
            fault = _made_by(workshop) if workshop else _made(found, settings)
            building = time.process_time() - began - reading
            return Verdict("half built" if fault else "built", fault, reading, building)
    except SettingsError as error:
        said = str(settings.parent) in str(error)
        return Verdict("told" if said else "badly told", str(error), time.process_time() - began)
    except EndlessError:
        return Verdict("slow", "never ends\n" + traceback.format_exc(limit=-6))
    except Exception:
        return Verdict("traceback", traceback.format_exc(limit=-8))


def same(one: Studio, other: Studio) -> bool:
    """Whether the two say the same, wherever it stands in their files."""
    parts = [part.name for part in fields(Studio) if part.name != "sources"]
    return all(repr(getattr(one, part)) == repr(getattr(other, part)) for part in parts)


@contextmanager
def _in_time(seconds: int) -> Iterator[None]:
    def stop(number: int, frame: FrameType | None) -> None:
        raise EndlessError

    signal.signal(signal.SIGVTALRM, stop)
    signal.setitimer(signal.ITIMER_VIRTUAL, seconds)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)


def _badly_told(problems: list[Problem], studio: Path) -> str:
    for problem in problems:
        try:
            assert_well_put(problem, studio)
        except AssertionError:
            return f"{problem}\n{traceback.format_exc(limit=1)}"
        except OSError:  # a file that isn't there, or a folder, has no line to show
            if problem.source or (problem.line, problem.column) != (1, 1):
                return f"{problem} shows a line of no file"
    return ""


def _misplaced(
    errors: list[Problem], studio: Path, change: dict[str, bytes | None], was: str
) -> str:
    """An error in a file that has nothing to do with what happened."""
    touched = [studio / path for path in change]
    text = was + " ".join((new or b"").decode("utf-8", "replace") for new in change.values())
    names = {*NAME.findall(text), *re.findall(r"[\w-]+", text), *(f.stem for f in touched)}
    for problem in errors:
        about = f"{problem.source} {problem.message}"
        words = {*NAME.findall(about), *re.findall(r"[\w-]+", about)}
        near = any(problem.file in (file, *file.parents) for file in touched)
        if not near and not any(len(word) > 3 for word in names & words):
            return f"{problem} lies in a file that says nothing of it"
    return ""


def _made_by(workshop: Workshop) -> str:
    """Both sites from what still holds, as the live server makes them, and what is wrong."""
    errors = [problem for problem in workshop.look() if not problem.advice]
    if errors:
        return _badly_told(errors, workshop.settings.studio_folder)
    report = BuildReport()
    sites = workshop.sites(report)
    if not all("index.html" in site.pages for site in sites.values()):
        return "no site at all"
    return str(report.errors[0]) if report.errors else ""


def _made(studio: Studio, config: Path) -> str:
    """Both sites made, and what is wrong with them."""
    settings = read_settings(config)
    if not settings.cache_folder.is_relative_to(config.parent.parent):  # led astray, or kept
        kept = config.parent.parent.joinpath(".cache", "corymb").resolve()
        settings = replace(settings, cache_folder=kept)
    report = BuildReport()
    with PhotoCache(settings.cache_folder / "photos") as cache, _pages_made_once():
        images = make_images(studio, settings, cache, report)
        if report.errors:
            return _badly_told(report.errors, studio.folder)
        for audience in AUDIENCES:
            site = site_of(studio, audience, settings, DAY, images)
            for link in site.dead_links(settings.base_path(audience)):
                return f"a dead link: {link}"
            if "index.html" not in site.pages:
                return "no site at all"
    return ""


_made_before: dict[tuple[SiteFrame, str], tuple[PageFrame, Any, bytes]] = {}


@contextmanager
def _pages_made_once() -> Iterator[None]:
    """A template is given frames and a view alone: where they are as before, so is its page."""
    site_module = import_module("corymb.site.site")
    really: Callable[[SiteFrame, PageFrame, Any], bytes] = site_module.render

    def render(site: SiteFrame, page: PageFrame, view: Any) -> bytes:
        before = _made_before.get((site, page.path))
        if before is None or before[0] != page or before[1] != view:
            before = page, view, really(site, page, view)
            _made_before[site, page.path] = before
        return before[2]

    vars(site_module)["render"] = render
    try:
        yield
    finally:
        vars(site_module)["render"] = really
