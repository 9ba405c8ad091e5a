"""What takes long is made once in a run, though several workers run its tests side by side."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from shutil import rmtree

import pytest
from filelock import FileLock


def made_once(factory: pytest.TempPathFactory, name: str, make: Callable[[Path], None]) -> Path:
    """A folder of this name, filled by `make` in whichever worker comes first; others wait."""
    run = _run_folder(factory)
    folder, unfinished = run / name, run / f"{name}-unfinished"
    with FileLock(run / f"{name}.lock"):
        if not folder.exists():
            rmtree(unfinished, ignore_errors=True)
            unfinished.mkdir()
            make(unfinished)
            unfinished.rename(folder)
    return folder


def _run_folder(factory: pytest.TempPathFactory) -> Path:
    """The folder that all workers of this run have in common, and no other run has."""
    own = factory.getbasetemp()
    return own.parent if "PYTEST_XDIST_WORKER" in os.environ else own
