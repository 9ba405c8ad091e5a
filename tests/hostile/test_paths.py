"""What lies in a studio's folder, or is named from it, that is no file of the studio's?

Each is told in a sentence; nothing outside the folder is read, and nothing waits for ever.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from errno import EACCES, ELOOP
from pathlib import Path

import pytest

from corymb.checks import read_and_check
from corymb.studio.problems import Problem
from tests.broken.bench import MADE, PHOTO, good, good_studio

SECRET = "zq-outside-hush"
OUT = "This is a link that leads out of the studio's folder: put the file itself here."
LINKED = "This is a link to a folder, and such links are not followed: put the folder itself here."
NO_FILE = "This is no file that could be read, but a pipe or a device: take it out."
NAMED_LIKE = "This is a folder that is called like a file: give it another name."

posix = pytest.mark.skipif(os.name == "nt", reason="Windows has no pipes or devices in folders")


def replaced(file: str, target: str) -> Callable[[Path], None]:
    """A file of the studio that is a link to another place instead."""

    def make(studio: Path) -> None:
        (studio / file).unlink(missing_ok=True)
        (studio / file).symlink_to(studio / target)

    return make


def piped(file: str) -> Callable[[Path], None]:
    """A file of the studio that is a pipe, at whose other end nobody writes."""

    def make(studio: Path) -> None:
        (studio / file).unlink(missing_ok=True)
        os.mkfifo(studio / file)

    return make


def folder_for(file: str) -> Callable[[Path], None]:
    return lambda studio: (studio / file).mkdir()


def moved_out(folder: str) -> Callable[[Path], None]:
    """A folder of the studio that lies elsewhere, with a link in its place."""

    def make(studio: Path) -> None:
        (studio / folder).rename(studio.parent / "elsewhere")
        (studio / folder).symlink_to(studio.parent / "elsewhere")

    return make


ODD_FILES = {
    "a link to a file outside": (replaced("log/2024.yml", "../secret.yml"), "log/2024.yml", OUT),
    "a link to a device": (replaced("log/2024.yml", "/dev/zero"), "log/2024.yml", OUT),
    "the studio's own file is a link": (replaced("studio.yml", "../secret.yml"), "studio.yml", OUT),
    "a link to nothing": (
        replaced("log/2024.yml", "log/gone.yml"),
        "log/2024.yml",
        "This leads to a file that isn't there: take it out, or put the file here.",
    ),
    "a link to itself": (
        replaced("log/2024.yml", "log/2024.yml"),
        "log/2024.yml",
        f"This file can't be read ({os.strerror(ELOOP)}): see who may open it.",
    ),
    "a pipe": (piped("log/2024.yml"), "log/2024.yml", NO_FILE),
    "the studio's own file is a pipe": (piped("studio.yml"), "studio.yml", NO_FILE),
    "a folder that is a link outside": (moved_out("log"), "log", LINKED),
    "a folder within that leads up": (replaced("log/more", "log"), "log/more", LINKED),
    "a folder called like a file": (folder_for("log/2024.yml"), "log/2024.yml", NAMED_LIKE),
}


def told(studio: Path) -> list[Problem]:
    return read_and_check(studio)[1]


@posix
@pytest.mark.parametrize(("make", "file", "says"), ODD_FILES.values(), ids=ODD_FILES)
def test_what_is_no_file_of_the_studio_s_is_told_and_not_read(
    tmp_path: Path, make: Callable[[Path], None], file: str, says: str
) -> None:
    (tmp_path / "secret.yml").write_text(f"name: {SECRET}\n")
    studio = good_studio(tmp_path)
    make(studio)
    problems = told(studio)
    assert (studio / file, says, False) in [(p.file, p.message, p.advice) for p in problems]
    assert SECRET not in "\n".join(problem.shown() for problem in problems)


@posix
def test_a_link_within_the_studio_is_followed(tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    (studio / "kept").mkdir()
    (studio / "log" / "2025.yml").rename(studio / "kept" / "2025.yml")
    (studio / "log" / "2025.yml").symlink_to("../kept/2025.yml")
    assert not [problem for problem in told(studio) if not problem.advice]


OUTSIDE = "lies outside the studio's folder: copy the photo into photos/ and write ‘photos/"
NONE = "There is no photo"

NAMED_PHOTOS = {
    "up and out": ("../secret.jpg", OUTSIDE),
    "further up": ("photos/../../../../../../etc/passwd", OUTSIDE),
    "from the root": ("/etc/passwd", OUTSIDE),
    "a device": ("/dev/zero", OUTSIDE),
    "someone's home": ("~/secret.jpg", NONE),
    "of Windows": ("C:\\secret.jpg", NONE),
    "on another computer": ("\\\\elsewhere\\photos\\secret.jpg", NONE),
    "a device of Windows": ("NUL", NONE),
    "dots as a browser writes them": ("%2e%2e/secret.jpg", NONE),
    "on the web": ("https://elsewhere.example/secret.jpg", "is a web address"),
    "in this computer's words": ("file:///etc/passwd", "is a web address"),
    "very long": ("photos/" + "n" * 300 + ".jpg", "can't be the name of a photo"),
    "a folder": ("photos", "is a folder, not a photo: name one of the files in it."),
    "a link outside": ("photos/linked.jpg", OUTSIDE),
    "a link to itself": ("photos/round.jpg", "can't be the name of a photo"),
    "a pipe": ("photos/pipe.jpg", "is not a photo that can be read here"),
    "a file of the studio's": ("studio.yml", "is not a photo that can be read here"),
}


@pytest.fixture(scope="module")
def photos_told(tmp_path_factory: pytest.TempPathFactory) -> dict[int, str]:
    """What is told of each of these photos, by the line of a piece of made work that names it."""
    folder = tmp_path_factory.mktemp("photos")
    studio = good_studio(folder)
    (folder / "secret.jpg").write_bytes((studio / PHOTO).read_bytes())
    (studio / "photos" / "linked.jpg").symlink_to(folder / "secret.jpg")
    (studio / "photos" / "round.jpg").symlink_to("round.jpg")
    os.mkfifo(studio / "photos" / "pipe.jpg")
    shown = "alt: A jar, credit: Us, may be shown to: clients"
    lines = [f"  - {{file: '{written}', {shown}}}\n" for written, _ in NAMED_PHOTOS.values()]
    head = good(MADE).partition("  - ")[0]
    (studio / MADE).write_text(head + "".join(lines), "utf-8")
    errors = [problem for problem in told(studio) if not problem.advice]
    assert {problem.file for problem in errors} == {studio / MADE}
    return {problem.line - head.count("\n"): problem.message for problem in errors}


@posix
@pytest.mark.parametrize("what", NAMED_PHOTOS)
def test_a_photo_lies_in_the_studio_or_is_told(photos_told: dict[int, str], what: str) -> None:
    line = 1 + list(NAMED_PHOTOS).index(what)
    assert NAMED_PHOTOS[what][1] in photos_told[line]


@posix
def test_a_name_that_commands_a_terminal_is_told_without_its_commands(tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    for name in ("\x1b[2Jgone.yml", "two\nlines.yml", "txt.\u202elmy.yml"):
        (studio / "log" / name).write_text("cuts: {}\n")
    (studio / "log" / os.fsdecode(b"\xff\xfe.yml")).write_text("cuts: {}\n")
    lines = [str(problem) for problem in told(studio)]
    assert len(lines) == 4
    assert not [line for line in lines if "\x1b" in line or "\n" in line or "\u202e" in line]
    "".join(lines).encode()  # and so it can be printed


def test_a_file_that_nobody_may_read_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    studio = good_studio(tmp_path)
    really = os.open

    def refusing(path: object, *more: int, **named: int) -> int:
        if str(path).endswith("2025.yml"):
            raise PermissionError(EACCES, os.strerror(EACCES), str(path))
        return really(path, *more, **named)  # type: ignore[arg-type]

    monkeypatch.setattr(os, "open", refusing)
    (problem,) = told(studio)
    says = f"This file can't be read ({os.strerror(EACCES)}): see who may open it."
    assert (problem.file, problem.message) == (studio / "log" / "2025.yml", says)
