"""What is installed is the code and its data: every package, and nothing that is not one."""

from __future__ import annotations

import tomllib
from pathlib import Path

ROOT = Path(__file__).parents[1]
CODE = ROOT / "generator"
THEME = "corymb.theme"  # lies in themes/corymb
SETTINGS = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))


def test_every_folder_of_code_is_named_as_a_package_and_no_other_folder() -> None:
    folders = [file.parent.relative_to(CODE) for file in CODE.rglob("__init__.py")]
    there = [".".join(folder.parts) for folder in folders]
    assert SETTINGS["tool"]["setuptools"].get("packages") == sorted([*there, THEME])
