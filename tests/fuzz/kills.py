"""Is the served site ever broken when builds are killed? Run as `python -m tests.fuzz.kills`.

Copies of the demo in two states are built over each other in turn, and each build is killed with
no warning: one in five at any moment of it, the others in its last second, when folders change.
Somebody reads the sites all the while. After each kill whole sites must stand there, and the build
after it must be right. A number asks for so many kills (200), a second one for another
course, and a folder for a studio that takes less time than the demo.
"""

from __future__ import annotations

import os
import random
import shutil
import signal
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from datetime import date
from functools import partial
from pathlib import Path
from unittest.mock import patch

from corymb.site import build as building
from corymb.site.build import build_sites
from corymb.site.publishing import Wanted, publish_together
from corymb.site.settings import SiteSettings, read_settings
from corymb.views.pieces import AUDIENCES

from .served import Site, difference, site_in, trouble_in_one_look, trouble_with_a_visit

ROOT = Path(__file__).parents[2]
KEPT = ROOT / ".cache" / "corymb"
DAY = date(2026, 9, 16)
ANYWHERE = 5
"""One in so many kills is at any moment of a whole build, the others in its last second."""
SETTINGS = """\
site_name: The studio
docs_dir: one/pages
site_url: https://teaselandrook.example/
theme: {name: corymb}
plugins:
  - corymb: {studio: one, cache: cache}
"""


@dataclass
class State:
    """One state of the studio: how it is built, what is published then, and what stands then."""

    build: Callable[[], None]
    published: Mapping[Path, Wanted] = field(default_factory=dict)
    sites: dict[Path, Site] = field(default_factory=dict)
    seconds: float = 0.0
    last_seconds: float = 0.0

    def publish(self) -> None:
        """Its last second alone."""
        publish_together(self.published)


@dataclass
class Course:
    """What came of it."""

    kills: int = 0
    in_time: int = 0
    new_stood: int = 0
    looks: int = 0
    troubles: list[str] = field(default_factory=list)


def prepared(folder: Path, studio: Path) -> list[State]:
    """The studio in two states, each built once; something of the host's lies with the sites."""
    for name in ("one", "other"):
        shutil.copytree(studio, folder / name)
    about = folder / "other" / "studio.yml"
    about.write_text(about.read_text("utf-8").replace("tagline: ", "tagline: Now "), "utf-8")
    recipe = sorted((folder / "other" / "recipes").rglob("*.yml"))[-1]
    (recipe.parent / "another-one.yml").write_text(recipe.read_text("utf-8"), "utf-8")
    file = folder / "mkdocs.yml"
    file.write_text(SETTINGS, "utf-8")
    settings = read_settings(file)
    for audience in AUDIENCES:
        settings.output(audience).mkdir()
        (settings.output(audience) / "CNAME").write_text("teaselandrook.example", "utf-8")
    states = [
        State(partial(_build, replace(settings, studio_folder=folder / name)))
        for name in ("one", "other")
    ]
    for state in (*states, *states):  # the second time with all pictures kept
        _build_once(state)
    return states


def _build(settings: SiteSettings) -> None:
    report = build_sites(settings, AUDIENCES, DAY)
    assert not report.errors, report.errors


def _build_once(state: State) -> None:
    """Note what is published, and how long it takes."""

    def recorded(sites: Mapping[Path, Wanted]) -> None:
        state.published = {
            folder: Wanted(dict(wanted.written), dict(wanted.copies))
            for folder, wanted in sites.items()
        }
        began = time.perf_counter()
        publish_together(sites)
        state.last_seconds = time.perf_counter() - began

    began = time.perf_counter()
    with patch.object(building, "publish_together", recorded):
        state.build()
    state.seconds = time.perf_counter() - began
    state.sites = {folder: site_in(folder) for folder in state.published}


def run(states: Sequence[State], kills: int, chance: random.Random) -> Course:
    """Kill so many builds; all that went wrong on the way."""
    course = Course(kills)
    folders = list(states[0].sites)
    with reader(states, course):
        for number in range(kills):
            state, whole = states[number % 2], number % ANYWHERE == 0
            work, seconds = (
                (state.build, state.seconds) if whole else (state.publish, state.last_seconds)
            )
            course.in_time += killed(work, chance.uniform(0, seconds))
            for folder in folders:
                wrong = trouble_in_one_look(folder, [each.sites[folder] for each in states])
                course.troubles += [f"after kill {number}: {wrong}"] if wrong else []
            course.new_stood += site_in(folders[-1]) == state.sites[folders[-1]]
            sys.stderr.write(f"\r{number + 1}/{kills}, broken {len(course.troubles)} times ")
            if whole or number % ANYWHERE == 1:
                following = state if number % 3 else states[1 - number % 2]
                in_child(following.build if number % 16 == 0 else following.publish)
                course.troubles += _not_right(following, number)
    return course


def _not_right(state: State, number: int) -> list[str]:
    wrong = []
    for folder, site in state.sites.items():
        if told := difference(site_in(folder), [site]):
            wrong.append(f"the build after kill {number}: {told}")
        room = folder.parent / f".{folder.name}.corymb"
        left = {each.name for each in room.iterdir()} & {"new", "aside", "spare"}
        wrong += [f"the build after kill {number} left {left}"] if left else []
    return wrong


@contextmanager
def reader(states: Sequence[State], course: Course) -> Iterator[None]:
    """Someone who reads the sites all the while, in a program of their own."""
    asked, told = os.pipe(), os.pipe()
    child = os.fork()
    if child == 0:
        os.set_blocking(asked[0], False)
        os.close(asked[1])  # so that it hears when the other end is gone
        os._exit(_read_on(states, asked[0], told[1]))
    try:
        yield
    finally:
        os.write(asked[1], b".")
        os.close(told[1])
        with os.fdopen(told[0]) as report:
            looks, *troubles = report.read().split("\n")
        os.waitpid(child, 0)
        course.looks = int(looks)
        course.troubles += [line for line in troubles if line]


def _read_on(states: Sequence[State], asked: int, told: int) -> int:
    looks, troubles = 0, []
    while True:
        for folder in states[0].sites:
            sites = [each.sites[folder] for each in states]
            for wrong in (
                trouble_in_one_look(folder, sites),
                trouble_with_a_visit(folder, sites, looks),
            ):
                troubles += [f"look {looks}: {wrong}"] if wrong else []
            looks += 1
        try:
            os.read(asked, 1)
            break
        except BlockingIOError:
            pass
    os.write(told, "\n".join([str(looks), *troubles[:20]]).encode())
    return 0


def in_child(work: Callable[[], None]) -> None:
    """To its end, in a program of its own, as every build is."""
    _, status = os.waitpid(_begun(work), 0)
    assert status == 0, "the build failed"


def killed(work: Callable[[], None], after_s: float) -> bool:
    """Killed with all that it started; False when it had ended by then."""
    child = _begun(work)
    time.sleep(after_s)
    in_time = os.waitpid(child, os.WNOHANG)[0] == 0
    if in_time:
        os.killpg(child, signal.SIGKILL)
        os.waitpid(child, 0)
    return in_time


def _begun(work: Callable[[], None]) -> int:
    child = os.fork()
    if child == 0:
        os.setpgid(0, 0)
        failed = 1
        try:
            work()
            failed = 0
        finally:
            os._exit(failed)
    with_group = time.monotonic() + 5
    while os.getpgid(child) != child and time.monotonic() < with_group:
        time.sleep(0.0005)
    return child


def main(words: Sequence[str]) -> int:
    """Prints what came of it; fails if anything was ever wrong."""
    numbers = [int(word) for word in words if word.isdigit()]
    kills, seed = (*numbers, *(200, 1)[len(numbers) :])
    studio = next((Path(word) for word in words if not word.isdigit()), ROOT / "content")
    with tempfile.TemporaryDirectory() as folder:
        if KEPT.is_dir():  # saves minutes of drawing
            shutil.copytree(KEPT, Path(folder) / "cache")
        states = prepared(Path(folder), studio)
        course = run(states, kills, random.Random(seed))
    seconds = statistics.mean(state.seconds for state in states)
    sys.stdout.write(
        f"{course.kills} kills of builds of {seconds:.1f} s, {course.in_time} before their end; "
        f"the new site stood after {course.new_stood}. {course.looks} looks at a site meanwhile. "
        f"{len(course.troubles)} times it was broken.\n"
    )
    sys.stdout.writelines(f"{trouble}\n" for trouble in course.troubles)
    return int(bool(course.troubles))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
