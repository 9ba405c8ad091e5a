"""`corymb colours`: a photo's colours, the stems that are like them, and a recipe to begin with."""

import re
from pathlib import Path

import pytest
from PIL import Image

from corymb.checks import read_and_check
from tests.cli.conftest import Run

WALL, LILAC, SEA = "#7d8a90", "#a58fc0", "#00e0ff"


@pytest.fixture
def photo(studio: Path) -> Path:
    """Lilac, and a little of the bluest sea, before a wall."""
    image = Image.new("RGB", (400, 300), WALL)
    image.paste(LILAC, (120, 100, 240, 200))
    image.paste(SEA, (240, 100, 280, 200))
    image.save(studio / "lilac.png")
    return studio / "lilac.png"


def test_each_colour_comes_with_its_nearest_stems_and_their_season(photo: Path, run: Run) -> None:
    told = run("colours", photo.name).output
    assert told.startswith("Colours of lilac.png, ")
    assert f"\n\npurple  {LILAC}  75 %\n  Scabious, lilac " in told
    assert re.search(r"\n  Scabious, lilac +\d+  \d+ \w+ - \d+ \w+", told)
    assert f"{SEA}  25 %\n  nothing of yours comes near\n" in told
    assert WALL not in told


def test_its_lines_are_right_in_a_recipe_as_they_are(studio: Path, photo: Path, run: Run) -> None:
    told = run("colours", photo.name, "--stems", "9").output
    lines = told.partition("\nstems:\n")[2]
    counts = re.findall(r"^  - (\d+) [a-z-]+, (?:light|depth|accent)$", lines, re.MULTILINE)
    assert sum(map(int, counts)) == 9
    recipe = studio / "content/recipes/posy/kitchen-jug.yml"
    text = recipe.read_text(encoding="utf-8").partition("\nvariants:")[0] + "\n"
    block = re.compile(r"^stems:.*?(?=^\w)", re.MULTILINE | re.DOTALL)
    assert block.search(text)
    recipe.write_text(block.sub(f"stems:\n{lines}", text), encoding="utf-8")
    _, problems = read_and_check(studio / "content")
    assert [p for p in problems if p.file.name == recipe.name] == []


@pytest.mark.parametrize(
    ("name", "content", "expected"),
    [
        ("note.jpg", b"no photo", "note.jpg is not a photo that can be read here: save it as"),
        ("empty.jpg", b"", "empty.jpg is empty: copy it again from the camera or phone."),
        ("barn.cr2", b"raw", "barn.cr2 is a raw camera file: develop it in your photo program"),
    ],
    ids=["no photo", "empty", "raw"],
)
def test_a_photo_that_can_t_be_read_is_told_in_words(
    studio: Path, run: Run, name: str, content: bytes, expected: str
) -> None:
    (studio / name).write_bytes(content)
    result = run("colours", name)
    assert result.exit_code == 1
    assert result.output.startswith(f"Error: {expected}")


def test_a_misspelt_photo_is_answered_with_the_nearest(photo: Path, run: Run) -> None:
    result = run("colours", "lilacs.png")
    assert result.exit_code == 1
    assert "Did you mean lilac.png?" in result.output
