"""What may files be called? Photos anything at all; what has an address, what fits in one."""

from __future__ import annotations

import shutil
from collections.abc import Iterable
from pathlib import Path
from unicodedata import normalize

import pytest

from corymb.checks import read_and_check
from corymb.studio.problems import Problem
from tests.broken.bench import JAR, LINK, MADE, PHOTO, good, good_studio

ROSE = "photos/rosé.jpg"
NFC, NFD = normalize("NFC", ROSE), normalize("NFD", ROSE)


def with_photos(folder: Path, files: Iterable[str]) -> Path:
    """A studio with the same photo under each name, all shown in one piece of made work."""
    studio = good_studio(folder)
    lines = [good(MADE).partition("photos:")[0], "photos:\n"]
    for file in files:
        shutil.copy(studio / PHOTO, studio / file)
        lines.append(f"  - {{file: '{file}', alt: A jar, credit: Us, may be shown to: clients}}\n")
    (studio / MADE).write_text("".join(lines), "utf-8")
    return studio


def told(studio: Path) -> list[Problem]:
    return read_and_check(studio)[1]


@pytest.mark.parametrize(
    "pair",
    [("photos/barn.jpg", "photos/Barn.jpg"), (NFC, NFD), ("photos/ROSÉ.jpg", NFD)],
    ids=["capitals", "accents", "both"],
)
def test_two_photos_that_are_one_file_elsewhere_are_told(
    tmp_path: Path, pair: tuple[str, str]
) -> None:
    (problem,) = told(with_photos(tmp_path, pair))
    assert problem.advice
    assert problem.message == (
        f"‘{pair[1]}’ and ‘{pair[0]}’ are one file on many computers: rename one of the two, or "
        "write the same name in both places."
    )


@pytest.mark.parametrize(("written", "on_disk"), [(NFC, NFD), (NFD, NFC)], ids=["NFC", "NFD"])
def test_a_photo_is_found_however_a_computer_writes_its_accents(
    tmp_path: Path, written: str, on_disk: str
) -> None:
    studio = with_photos(tmp_path, [on_disk])
    file = studio / MADE
    file.write_text(file.read_text("utf-8").replace(on_disk, written), "utf-8")
    assert told(studio) == []


CANT = "This file's name can't be used."

RECIPES = {
    "Rose.yml": "Write ‘rose’.",
    "rosé.yml": "Write ‘rose’.",
    "τριαντάφυλλο.yml": "use small letters and figures, words joined by one hyphen.",
    "وردة.yml": "use small letters and figures",
    "गुलाब.yml": "use small letters and figures",
    "薔薇.yml": "joined by one hyphen. Letters are a to z here.",
    "🌹.yml": "joined by one hyphen. Letters are a to z here.",
    "two roses.yml": "Write ‘two-roses’.",
    "rose#1.yml": "Write ‘rose-1’.",
    "rose?.yml": "Write ‘rose’.",
    "rose%2f.yml": "Write ‘rose-2f’.",
    '"rose".yml': "Write ‘rose’.",
    "rose--red.yml": "Write ‘rose-red’.",
    f"{'r' * 200}.yml": "is too long: use at most 80 letters.",
    "con.yml": "no file can have this name on Windows.",
}


@pytest.fixture(scope="module")
def misnamed(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """What is told of recipes of these names, each for itself in one studio."""
    studio = good_studio(tmp_path_factory.mktemp("misnamed"))
    for number, name in enumerate(RECIPES):
        folder = studio / "recipes" / "posy" / f"of-{number}"
        folder.mkdir()
        (folder / name).write_text(good(JAR), "utf-8")
    first = [problem for problem in told(studio) if problem.message.startswith(CANT)]
    return {problem.file.name: problem.message for problem in first if not problem.advice}


@pytest.mark.parametrize(("name", "says"), RECIPES.items(), ids=[*map(ascii, RECIPES)])
def test_a_name_that_is_no_address_is_told_with_one_that_is(
    misnamed: dict[str, str], name: str, says: str
) -> None:
    assert says in misnamed[name]


@pytest.mark.parametrize(
    "names",
    [("rose.yml", "Rose.yml"), (normalize("NFC", "rosé.yml"), normalize("NFD", "rosé.yml"))],
    ids=["capitals", "accents"],
)
def test_two_recipes_that_would_be_one_file_elsewhere_are_both_told(
    tmp_path: Path, names: tuple[str, str]
) -> None:
    studio = good_studio(tmp_path)
    for name in names:
        (studio / "recipes" / "posy" / name).write_text(good(JAR), "utf-8")
    messages = [problem.message for problem in told(studio) if not problem.advice]
    assert any(message.startswith(CANT) for message in messages)
    assert any("There is another recipe called ‘rose’" in message for message in messages)


def test_two_links_whose_codes_differ_in_capitals_are_told(tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    (studio / "links" / "other.yml").write_text(good(LINK).replace("sr3nx", "SR3nX"), "utf-8")
    (problem,) = told(studio)
    assert problem.file == studio / "links" / "other.yml"
    assert "This is the code of the style link ‘barn-supper’" in problem.message
