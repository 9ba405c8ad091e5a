"""A studio to try commands on, and a way to run them as in a terminal."""

import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from corymb.cli import main

Run = Callable[..., Result]

ANSWERS = {
    "--name": "Hazel Row",
    "--village": "Dunmallow",
    "--latitude": "52.3",
    "--longitude": "-7.1",
    "--time-zone": "Europe/Dublin",
    "--language": "en-IE",
    "--currency": "EUR",
    "--email": "hello@hazelrow.example",
}


def words(answers: dict[str, str]) -> list[str]:
    """Options with their values, one after the other."""
    return [word for pair in answers.items() for word in pair]


@pytest.fixture
def run() -> Run:
    """Run `corymb` with these words and this typed in; a crash fails the test."""

    def invoke(*arguments: str, typed: str = "") -> Result:
        result = CliRunner().invoke(main, arguments, input=typed)
        assert result.exception is None or isinstance(result.exception, SystemExit), result.output
        return result

    return invoke


@pytest.fixture(scope="session")
def drawn_before(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Pictures that a studio's builds keep: what every new studio shows is drawn once."""
    return tmp_path_factory.mktemp("pictures")


@pytest.fixture(scope="session")
def new_studio(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What `corymb new studio` writes; `test_new.py` looks at what that is."""
    folder = tmp_path_factory.mktemp("new") / "studio"
    result = CliRunner().invoke(main, ["new", "studio", str(folder), *words(ANSWERS)])
    assert result.exit_code == 0, result.output
    return folder


@pytest.fixture
def studio(
    tmp_path: Path, new_studio: Path, drawn_before: Path, monkeypatch: pytest.MonkeyPatch
) -> Path:
    """A new studio, with its folder as the current one."""
    folder = shutil.copytree(new_studio, tmp_path / "studio")
    (folder / ".cache" / "corymb").mkdir(parents=True)
    (folder / ".cache" / "corymb" / "pictures").symlink_to(drawn_before)
    monkeypatch.chdir(folder)
    return folder


def change(file: Path, before: str, after: str) -> None:
    """Edit a file; what is to be replaced has to be there."""
    text = file.read_text(encoding="utf-8")
    assert before in text
    file.write_text(text.replace(before, after, 1), encoding="utf-8")
