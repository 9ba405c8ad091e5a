"""Make the photos a site needs, as many at a time as there are cores.

Threads do, because Pillow lets go of Python's lock while it decodes, resizes and encodes
AVIF: two threads on two cores measured within a twentieth of two processes, and start at once.
"""

import os
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import Future, ThreadPoolExecutor, as_completed
from contextlib import contextmanager
from pathlib import Path

from corymb.photos.cache import PhotoCache
from corymb.photos.errors import PhotoError
from corymb.photos.finish import HOUSE_FINISH, Finish
from corymb.photos.prepared import PreparedPhoto

Progress = Callable[[int, int], None]


def prepare(source: Path, cache: PhotoCache, finish: Finish = HOUSE_FINISH) -> PreparedPhoto:
    """One photo, made or found; raises PhotoError with a sentence for its owner."""
    photo = cache.photo(source, finish)
    cache.save()
    return photo


def prepare_many(
    sources: Iterable[Path],
    cache: PhotoCache,
    progress: Progress | None = None,
    finish: Finish = HOUSE_FINISH,
) -> dict[Path, PreparedPhoto | PhotoError]:
    """All of them, in the order given; a photo that can't be used doesn't stop the others.

    `progress` is told how many are done, of how many, after each.
    """
    prepared: dict[Path, PreparedPhoto | PhotoError | None] = {
        each: cache.unchanged(each, finish) for each in dict.fromkeys(sources)
    }
    left = [source for source, photo in prepared.items() if photo is None]
    _count(len(prepared) - len(left), len(prepared), progress)
    with _workers() as workers:
        jobs = [workers.submit(_prepare_or_say_why, each, cache, finish) for each in left]
        _follow(jobs, len(prepared), progress)
    cache.save()
    prepared |= {source: job.result() for source, job in zip(left, jobs, strict=True)}
    return {source: photo for source, photo in prepared.items() if photo is not None}


def _prepare_or_say_why(
    source: Path, cache: PhotoCache, finish: Finish
) -> PreparedPhoto | PhotoError:
    try:
        return cache.photo(source, finish)
    except PhotoError as error:
        return error


@contextmanager
def _workers() -> Iterator[ThreadPoolExecutor]:
    """One a core. When the run is interrupted, photos not yet begun are left."""
    workers = ThreadPoolExecutor(max_workers=os.cpu_count() or 1)
    try:
        yield workers
    finally:
        workers.shutdown(wait=True, cancel_futures=True)


def _count(done: int, total: int, progress: Progress | None) -> None:
    """Tell of all that needed no work."""
    if progress:
        for number in range(1, done + 1):
            progress(number, total)


def _follow(
    jobs: list[Future[PreparedPhoto | PhotoError]], total: int, progress: Progress | None
) -> None:
    before = total - len(jobs)
    for done, job in enumerate(as_completed(jobs), start=before + 1):
        job.result()  # a full disk, say, ends the run at once
        if progress:
            progress(done, total)
