"""What `--help` teaches, and what the command says of itself."""

import importlib.metadata
from pathlib import Path

import click
import pytest

from corymb.cli import main
from tests.cli.conftest import Run


def commands() -> list[list[str]]:
    """Every command by the words that call it."""
    found = []
    for name, command in main.commands.items():
        found.append([name])
        if isinstance(command, click.Group):
            found += [[name, inner] for inner in command.commands]
    return found


@pytest.mark.parametrize("call", commands(), ids=" ".join)
def test_the_help_of_every_command_gives_an_example_and_explains_each_option(
    run: Run, call: list[str]
) -> None:
    told = run(*call, "--help").output
    if call != ["new"]:
        assert f"corymb {' '.join(call)}" in told.partition("Example")[2]
    command: click.Command = main
    for word in call:
        assert isinstance(command, click.Group)
        command = command.commands[word]
    options = [param for param in command.params if isinstance(param, click.Option)]
    assert [option.name for option in options if not option.help] == []


def test_the_version_is_that_of_the_package(run: Run) -> None:
    version = importlib.metadata.version("corymb")
    assert run("--version").output == f"corymb, version {version}\n"


def test_a_misspelt_command_is_answered_with_the_right_one(run: Run) -> None:
    assert "Did you mean" in run("biuld").output


def test_a_folder_that_can_t_be_written_is_no_crash(run: Run, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("in the way")
    result = run("schema", "--out", str(tmp_path / "file" / "schemas"))
    assert result.exit_code == 1
    assert result.output == f"Error: {tmp_path / 'file' / 'schemas'}: Not a directory.\n"
