"""Which photos need no work at all, and which finished ones does nobody use any more?"""

from pathlib import Path
from threading import Lock
from types import TracebackType
from typing import Self

from corymb.files.sharing import SharedUse
from corymb.photos import errors
from corymb.photos.develop import develop
from corymb.photos.errors import PhotoError
from corymb.photos.finish import Finish
from corymb.photos.opening import check_file
from corymb.photos.prepared import PreparedPhoto
from corymb.photos.stat_index import StatIndex
from corymb.photos.store import Store


class PhotoCache:
    """The finished photos of a studio, kept in a folder between runs.

    Several programs may use one folder at once: a file appears whole or not at all, and
    nothing is evicted while another program has the cache open. So keep it open until
    the files it named are published.
    """

    def __init__(self, folder: Path) -> None:
        self._store = Store(folder / "finished")
        self._index = StatIndex(folder / "seen.json")
        self._use = SharedUse(folder / "in-use")
        self._used: set[str] = set()
        self._lock = Lock()

    def photo(self, source: Path, finish: Finish) -> PreparedPhoto:
        """The finished photo, made now if it has to be; PhotoError when it can't be."""
        key = finish.key(self._digest(source))
        photo = self._store.find(key) or self._make(source, finish, key)
        with self._lock:
            self._used.add(key)
        return photo

    def unchanged(self, source: Path, finish: Finish) -> PreparedPhoto | None:
        """The finished photo, if neither it nor its source has changed; no photo is read for it."""
        try:
            digest = self._index.remembered(source)
        except (OSError, ValueError):  # gone, or no name at all: `photo` says so
            return None
        key = finish.key(digest) if digest else ""
        photo = self._store.find(key) if key else None
        if photo:
            with self._lock:
                self._used.add(key)
        return photo

    def _digest(self, source: Path) -> str:
        check_file(source)
        try:
            return self._index.digest(source)
        except FileNotFoundError as gone:
            raise errors.missing(source) from gone
        except OSError as unreadable:  # a card that is breaking
            raise errors.damaged(source) from unreadable

    def _make(self, source: Path, finish: Finish, key: str) -> PreparedPhoto:
        """A photo replaced half-way through would be filed under its old name: refuse it.

        So would one be that is still being copied, and looks as if it were damaged.
        """
        try:
            developed = develop(source, finish)
        except PhotoError as fault:
            self._check_unchanged(source, fault)
            raise
        self._check_unchanged(source)
        return self._store.keep(key, developed)

    def _check_unchanged(self, source: Path, fault: PhotoError | None = None) -> None:
        if not self._index.unchanged(source):
            raise errors.changing(source) from fault

    def save(self) -> None:
        """Remember which files were seen, so that the next run need not read them."""
        self._index.save()
        self._store.save()

    def evict(self) -> int:
        """Remove what this cache object hasn't used since it was opened; say how many photos.

        Call it after a run over all the studio's photos, whoever may see them. Nothing is
        removed while another program uses the folder: the next run will do it.
        """
        if not self._use.try_alone():
            return 0
        try:
            self._index.forget_unseen()
            return self._store.remove_all_but(self._used)
        finally:
            self._use.share_again()

    def close(self) -> None:
        self._use.end()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()
