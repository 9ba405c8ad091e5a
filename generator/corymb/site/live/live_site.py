"""What does someone see who edits the studio's files with a page open beside them?

The last good site, refreshed as soon as a better one stands; and while something is wrong in
the files, what it is and where, shown over the pages that still stand.
"""

from __future__ import annotations

import time
from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path
from threading import Condition

from corymb.studio.problems import Problem


@dataclass(frozen=True)
class News:
    """Which build the pages come from, and what stood in the way of a newer one ('' if nothing)."""

    build: str
    trouble: str = ""


def nothing_made(name: str, address: str) -> bytes | Path | None:
    """All that there is stands in the folders."""
    return None


class LiveSite:
    """The sites as served now, by the first part of their address, and the news about them."""

    def __init__(self, folders: Mapping[str, Path]) -> None:
        self.folders = dict(folders)
        self.made_at: Callable[[str, str], bytes | Path | None] = nothing_made
        """What was made newer than the folders, by the site's name and the address in it."""
        self._open: Counter[tuple[str, str]] = Counter()
        self._changed = Condition()
        self._builds = 0
        # Begins anew with each start, so that pages left open from an earlier one refresh too.
        self._start = time.time_ns()
        self._news = News(self._name())

    @property
    def news(self) -> News:
        """How things stand."""
        with self._changed:
            return self._news

    @contextmanager
    def looked_at(self, name: str, address: str) -> Iterator[None]:
        """Within this block someone has a page open; one of no site here counts for nothing."""
        page = Counter([(name, address)] if name in self.folders else [])
        with self._changed:
            self._open += page
        try:
            yield
        finally:
            with self._changed:
                self._open -= page

    def open_pages(self) -> list[tuple[str, str]]:
        """The pages that someone has open: a site's name, and an address in it."""
        with self._changed:
            return list(self._open)

    def published(self) -> None:
        """Something newer is there: open pages refresh."""
        self._builds += 1
        self._tell(News(self._name()))

    def refused(self, problems: Sequence[Problem]) -> None:
        """The files hold errors: open pages stay as they are and show them."""
        errors = [problem for problem in problems if not problem.advice]
        self._tell(replace(self.news, trouble="\n\n".join(e.shown() for e in errors)))

    def wait(self, known: News, seconds: float) -> News:
        """The news as soon as it differs from what is `known`; as it stands after `seconds`."""
        with self._changed:
            self._changed.wait_for(lambda: self._news != known, seconds)
            return self._news

    def _tell(self, news: News) -> None:
        with self._changed:
            self._news = news
            self._changed.notify_all()

    def _name(self) -> str:
        return f"{self._start:x}-{self._builds}"
