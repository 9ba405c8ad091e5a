"""Much is to be drawn: who draws it? A hand for each of the machine's cores.

A hand is a Python of its own that draws into the folder of kept pictures, whole file by whole
file, and says when a piece of work is done; the bytes are read from there, and so are the same
however many hands there were. Whatever the hands leave undone, because one couldn't be started,
fell over or met a mistake, is drawn here afterwards, where a mistake is told as ever.

They are started by name and not by `multiprocessing`, which would run a script that builds a site
once more in each of them, unless its writer knew to guard it.
"""

from __future__ import annotations

import os
import pickle
import subprocess
import sys
from collections.abc import Callable, Generator, Sequence
from contextlib import closing
from queue import Empty, SimpleQueue
from threading import Thread

from corymb.language import spoken
from corymb.site.drawn.kept import Kept, NotKeptError
from corymb.site.drawn.to_draw import Drawn, ToDraw

STEMS_A_HAND = 300
"""So many drawn stems are worth another hand: about a second's work, and half of that to start."""
START = (
    "import pickle, sys; sys.path[:] = pickle.load(sys.stdin.buffer); "
    "from corymb.site.drawn.hand import work; work()"
)
Group = list[int]


def no_one(done: int, total: int) -> None:
    """Hears how far it has come, and needn't know."""


def all_drawn(
    kept: Kept, asked: Sequence[ToDraw], told: Callable[[int, int], None] = no_one
) -> list[Drawn]:
    """Everything that is asked for, in its order, as it was kept or drawn now.

    `told` hears how many are done, of how many.
    """
    found = dict[int, Drawn]()
    for index, one in enumerate(asked):
        try:
            with kept.only_looking():
                found[index] = one.drawn(kept)
        except NotKeptError:
            continue
        told(len(found), len(asked))
    missing = [index for index in range(len(asked)) if index not in found]
    with closing(drawn_by_hands(kept, asked, missing)) as by_hands:
        for group in by_hands:
            found.update((index, asked[index].drawn(kept)) for index in group)
            told(len(found), len(asked))
    for index in missing:
        if index not in found:
            found[index] = asked[index].drawn(kept)
            told(len(found), len(asked))
    return [found[index] for index in range(len(asked))]


def cores() -> int:
    """How many of the machine's cores this program may use."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1


def drawn_by_hands(
    kept: Kept, asked: Sequence[ToDraw], missing: Group
) -> Generator[Group, None, None]:
    """Which of them have been drawn, group by group as they come; none where it isn't worth it."""
    many = min(cores(), sum(asked[index].work for index in missing) // STEMS_A_HAND)
    if many < 2:
        return
    waiting, finished = SimpleQueue[Group](), SimpleQueue[Group | None]()
    for group in _groups(asked, missing):
        waiting.put(group)
    first = pickle.dumps(sys.path) + pickle.dumps((kept.folder, kept.drawn_by, spoken()))
    hands = [hand for hand in (_started() for _ in range(many)) if hand]
    threads = [
        Thread(target=_keep_busy, args=(hand, first, asked, waiting, finished)) for hand in hands
    ]
    try:
        for thread in threads:
            thread.start()
        working = len(threads)
        while working:
            done = finished.get()
            if done is None:
                working -= 1
            else:
                yield done
    finally:
        _sent_home(hands, [thread for thread in threads if thread.ident])


def _groups(asked: Sequence[ToDraw], missing: Group) -> list[Group]:
    """What shares its heads is drawn by the same hand, and the longest work begun first."""
    by_word: dict[str, Group] = {}
    for index in missing:
        by_word.setdefault(asked[index].together, []).append(index)
    return sorted(by_word.values(), key=lambda group: -sum(asked[n].work for n in group))


def _started() -> subprocess.Popen[bytes] | None:
    if getattr(sys, "frozen", False) or not sys.executable:
        return None  # a program in one file is no Python that could be started again
    try:
        return subprocess.Popen(
            [sys.executable, "-P", "-c", START],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
        )
    except OSError:
        return None


def _keep_busy(
    hand: subprocess.Popen[bytes],
    first: bytes,
    asked: Sequence[ToDraw],
    waiting: SimpleQueue[Group],
    finished: SimpleQueue[Group | None],
) -> None:
    """Give a hand one group after another, for as long as it answers."""
    assert hand.stdin and hand.stdout
    try:
        hand.stdin.write(first)
        while True:
            group = waiting.get_nowait()
            hand.stdin.write(pickle.dumps([asked[index] for index in group]))
            hand.stdin.flush()
            if not hand.stdout.read(1):
                break
            finished.put(group)
    except (Empty, OSError, ValueError):
        pass
    finally:
        finished.put(None)


def _sent_home(hands: Sequence[subprocess.Popen[bytes]], threads: Sequence[Thread]) -> None:
    """At once: what a hand was writing stays unfinished, and the folder's next tidying takes it."""
    for hand in hands:
        hand.kill()
    for thread in threads:
        thread.join()
    for hand in hands:
        hand.communicate()
