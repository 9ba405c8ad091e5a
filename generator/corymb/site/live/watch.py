"""When did something change that the sites are made from?

Not when a file was only opened, not for what the build itself writes, and not for the traces
that editors leave beside a file.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path
from threading import Event

from watchfiles import Change, watch

from corymb.site.render import THEME
from corymb.site.settings import SiteSettings
from corymb.views.pieces import Audience

STEP_MS = 5  # a save comes as several events in a row: wait until it has been still so long
LONGEST_WAIT_MS = 400
LOOK_UP_MS = 400  # how often the settings, which lie outside the watched folders, are looked at

Stamp = tuple[int, int, int] | None
State = dict[Path, Stamp]

TRACES = (".swp", ".swx", ".tmp", ".part", ".pyc", "~", "#")
FOLDERS_OF_TOOLS = ("__pycache__", "node_modules")


@dataclass(frozen=True)
class Watched:
    """The folders that a site is made from, its settings file, and what a build writes."""

    folders: tuple[Path, ...]
    settings: Path
    written: tuple[Path, ...] = ()

    @classmethod
    def of(cls, settings: SiteSettings, audiences: Iterable[Audience]) -> Watched:
        """What the sites of these settings are made from."""
        written = (settings.cache_folder, *(settings.output(who) for who in audiences))
        return cls((settings.studio_folder, THEME), settings.config_file, written)

    def matters(self, file: Path) -> bool:
        """Whether a change of this file can change a page."""
        if any(file.is_relative_to(folder.resolve()) for folder in self.written):
            return False
        inside = next((f for f in self.folders if file.is_relative_to(f.resolve())), None)
        parts = file.relative_to(inside.resolve()).parts if inside else file.parts[-1:]
        hidden = any(p.startswith((".", "#")) or p in FOLDERS_OF_TOOLS for p in parts)
        # 4913 is the name by which one widespread editor tries whether it may write.
        return not hidden and not file.name.endswith(TRACES) and file.name != "4913"

    def state(self) -> State:
        """How all files that matter stand now, to compare with later."""
        inside = [file for folder in self.folders for file in folder.resolve().rglob("*")]
        files = [file for file in inside if file.is_file()]
        return {file: _state(file) for file in [*files, self.settings] if self.matters(file)}


def changes(
    watched: Watched, built: State, stop: Event, polling: bool | None = None
) -> Iterator[None]:
    """One item each time that something which matters has changed, until `stop` is set.

    `built` is the state that the first build was made from. What changes before the watching
    begins, or while the last item is worked on, is not lost: it comes as the next.
    `polling` looks at the files again and again, for folders whose system sends no word.
    """
    settings = built.get(watched.settings)
    first = True
    for batch in watch(
        *(folder for folder in watched.folders if folder.is_dir()),
        watch_filter=lambda change, path: _counts(watched, change, path),
        debounce=LONGEST_WAIT_MS,
        step=STEP_MS,
        stop_event=stop,
        rust_timeout=LOOK_UP_MS,
        yield_on_timeout=True,
        force_polling=polling,
        raise_interrupt=True,
    ):
        now = _state(watched.settings)
        late, first = first and watched.state() != built, False
        if batch or late or now != settings:
            settings = now
            yield


def _counts(watched: Watched, change: Change, path: str) -> bool:
    file = Path(path)
    return watched.matters(file) and (change is Change.deleted or not file.is_dir())


def _state(file: Path) -> Stamp:
    try:
        stat = file.stat()
    except OSError:
        return None
    return stat.st_mtime_ns, stat.st_size, stat.st_ino
