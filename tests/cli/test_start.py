"""The command can be ended at any moment, from its first."""

from __future__ import annotations

import subprocess
import sys
import tomllib
from collections.abc import Sequence
from pathlib import Path
from types import ModuleType

import pytest

from corymb import __version__
from corymb.__main__ import main

ROOT = Path(__file__).parents[2]


class EndedWhileReading:
    """Someone presses Ctrl+C while Python reads the command's parts."""

    def find_spec(self, name: str, path: Sequence[str] | None, target: ModuleType | None) -> None:
        if name == "corymb.cli":
            raise KeyboardInterrupt


def test_ctrl_c_while_it_starts_ends_it_without_a_traceback(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.delitem(sys.modules, "corymb.cli")
    monkeypatch.setattr(sys, "meta_path", [EndedWhileReading(), *sys.meta_path])
    with pytest.raises(SystemExit) as ended:
        main()
    assert ended.value.code == "\nStopped."


def test_the_installed_command_and_python_m_begin_there() -> None:
    settings = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    assert settings["project"]["scripts"] == {"corymb": "corymb.__main__:main"}
    told = subprocess.run(
        [sys.executable, "-m", "corymb", "--version"], capture_output=True, text=True, check=True
    )
    assert told.stdout == f"corymb, version {__version__}\n"
