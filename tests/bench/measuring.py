"""What does a piece of work take: by the clock, of the processors, and of memory at its most?"""

from __future__ import annotations

import os
import resource
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True)
class Took:
    """Seconds by the clock, and of all processors together: those of other programs don't count."""

    clock: float
    busy: float

    def __str__(self) -> str:
        return f"{self.busy:.3f} s busy, {self.clock:.3f} s"


def took(work: Callable[[], object]) -> Took:
    """What `work` takes, with whatever it has others do."""
    began, busy = time.perf_counter(), busy_seconds()
    work()
    return Took(time.perf_counter() - began, busy_seconds() - busy)


def busy_seconds() -> float:
    """What this process and those that it waited for have taken of the processors."""
    now = os.times()
    return now.user + now.system + now.children_user + now.children_system


def peak_mb() -> float:
    """The most memory that this process held, or one of its helpers if that held more."""
    each = (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    return max(resource.getrusage(who).ru_maxrss for who in each) / 1024


def size_of(*folders: Path) -> tuple[int, int]:
    """How many files lie in folders, and their bytes."""
    files = [file for folder in folders for file in folder.rglob("*") if file.is_file()]
    return len(files), sum(file.stat().st_size for file in files)
