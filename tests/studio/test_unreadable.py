"""What is said where there is no studio, or its own file can't be read."""

import os
from collections.abc import Callable
from errno import EACCES
from pathlib import Path
from typing import Any

import pytest

from corymb.studio.load import read_studio

OWN_FILE_A_FOLDER = "This is a folder, and a file is wanted: give the folder another name."


def a_file(folder: Path) -> None:
    folder.write_text("not a folder", encoding="utf-8")


def folder_as_its_own_file(folder: Path) -> None:
    (folder / "studio.yml").mkdir(parents=True)


@pytest.mark.parametrize(
    ("make", "file", "told"),
    [
        pytest.param(
            lambda folder: None,
            "",
            "There is no studio here, since this folder doesn't exist: make one with "
            "`corymb new studio`.",
            id="no folder",
        ),
        pytest.param(
            a_file,
            "",
            "There is no studio here, since this is a file: make one with `corymb new studio`.",
            id="a file for a folder",
        ),
        pytest.param(
            Path.mkdir,
            "studio.yml",
            "The studio's own file is missing: make one with `corymb new studio`.",
            id="an empty folder",
        ),
        pytest.param(
            folder_as_its_own_file,
            "studio.yml",
            OWN_FILE_A_FOLDER,
            id="a folder for a file",
            marks=pytest.mark.skipif(os.name == "nt", reason="Windows says it in its own words"),
        ),
    ],
)
def test_what_is_no_studio_is_told_in_a_sentence(
    tmp_path: Path, make: Callable[[Path], None], file: str, told: str
) -> None:
    folder = tmp_path / "studio"
    make(folder)
    studio, problems = read_studio(folder)
    assert studio is None
    assert [(p.file, p.message) for p in problems] == [(folder / file, told)]


def test_a_folder_that_can_t_be_looked_into_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    closed = tmp_path / "recipes" / "posy"
    closed.mkdir(parents=True)
    scandir = os.scandir

    def refusing(folder: Any) -> Any:
        if Path(folder) == closed:
            raise PermissionError(EACCES, os.strerror(EACCES), str(closed))
        return scandir(folder)

    monkeypatch.setattr(os, "scandir", refusing)
    _, problems = read_studio(tmp_path)
    message = f"This folder can't be read ({os.strerror(EACCES)}): see who may open it."
    assert (closed, message, False) in [(p.file, p.message, p.advice) for p in problems]


def test_a_studio_that_can_t_be_looked_into_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refusing(folder: Any) -> Any:
        raise PermissionError(EACCES, os.strerror(EACCES), str(folder))

    monkeypatch.setattr(os, "listdir", refusing)
    monkeypatch.setattr(os, "scandir", refusing)
    studio, problems = read_studio(tmp_path)
    message = f"This folder can't be read ({os.strerror(EACCES)}): see who may open it."
    assert studio is None
    assert (tmp_path, message) in [(p.file, p.message) for p in problems]
