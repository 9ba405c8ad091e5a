"""`corymb check`: what it finds, how it says so, and how it ends."""

from pathlib import Path

import pytest

from tests.cli.conftest import Run, change

JUG = Path("content/recipes/posy/kitchen-jug.yml")
MISSPELT = f"{JUG}:15:7: There is no stem called ‘scabius-lilac’. Did you mean ‘scabious-lilac’?"


def test_a_new_studio_has_nothing_to_put_right(studio: Path, run: Run) -> None:
    result = run("check", "--strict")
    assert (result.exit_code, result.output) == (
        0,
        "Nothing to put right in 8 stems and 2 recipes.\n",
    )


@pytest.mark.parametrize(
    ("arguments", "folder"),
    [
        pytest.param([], ".", id="here, by mkdocs.yml"),
        pytest.param([], "content", id="here, in the folder of studio.yml"),
        pytest.param(["content"], ".", id="the folder of studio.yml"),
        pytest.param([".."], "content", id="the folder of mkdocs.yml"),
        pytest.param(["-f", "mkdocs.yml"], ".", id="mkdocs.yml by name"),
        pytest.param(["-f", "."], ".", id="the folder of mkdocs.yml by -f"),
    ],
)
def test_a_studio_is_found_from(
    studio: Path,
    run: Run,
    monkeypatch: pytest.MonkeyPatch,
    arguments: list[str],
    folder: str,
) -> None:
    monkeypatch.chdir(studio / folder)
    assert "8 stems and 2 recipes" in run("check", *arguments).output


def test_an_error_names_its_file_from_here_with_line_and_column(studio: Path, run: Run) -> None:
    change(studio / JUG, "5 scabious-lilac", "5 scabius-lilac")
    result = run("check")
    assert result.exit_code == 1
    assert result.output.splitlines() == [MISSPELT, "1 error in 8 stems and 2 recipes."]


def test_advice_is_told_apart_and_stops_only_the_strict(studio: Path, run: Run) -> None:
    change(studio / "content/stems/flowers.yml", "weight: 6 g", "weight: 45 g")
    assert run("check").output == (
        f"{JUG}:15:7: advice: ‘scabious-lilac’ weighs 45 g; posies take stems of up to 30 g.\n"
        "1 piece of advice in 8 stems and 2 recipes.\n"
    )
    assert run("check").exit_code == 0
    assert run("check", "--strict").exit_code == 1


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        pytest.param(
            [],
            "Error: There is no studio here: neither a mkdocs.yml nor a studio.yml. Go into your "
            "studio's folder, or name it. To begin one: corymb new studio my-studio\n",
            id="none here",
        ),
        pytest.param(
            ["elsewhere"],
            "Error: There is no studio in elsewhere: a studio's folder holds a studio.yml. "
            "To begin one: corymb new studio my-studio\n",
            id="none there",
        ),
    ],
)
def test_where_there_is_no_studio_it_says_what_to_do(
    tmp_path: Path, run: Run, monkeypatch: pytest.MonkeyPatch, arguments: list[str], told: str
) -> None:
    monkeypatch.chdir(tmp_path)
    result = run("check", *arguments)
    assert (result.exit_code, result.output) == (1, told)
