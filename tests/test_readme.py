"""README.md: what it shows is right, and what it tells one to type works."""

import ast
import inspect
import re
import textwrap
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

import click
import pytest
from click.testing import CliRunner

from corymb.checks import read_and_check
from corymb.cli import main
from corymb.site.settings import CorymbSettings, own_options
from corymb.studio.load import MODELS, read_studio
from tests.cli.conftest import ANSWERS, change, words

ROOT = Path(__file__).parents[1]
README = (ROOT / "README.md").read_text(encoding="utf-8")

FILES = {
    "stems/dahlias.yml": "group: Dahlias",
    "recipes/posy/hedgerow-jar.yml": "name: Hedgerow jar",
    "made/2025/barn-supper.yml": "title: Long table in the barn",
    "orders/2026/barn-supper.yml": "name: Barn supper",
    "walks/2026-W38.yml": "counts:",
    "log/2025.yml": "cuts:",
    "links/barn-supper.yml": "title: For your barn supper",
    "techniques/conditioning.md": "---",
}


def examples() -> dict[str, str]:
    """Each example file by its path in the studio's folder."""
    blocks = re.findall(r"^```\w+\n(.*?)^```$", README, re.MULTILINE | re.DOTALL)
    assert len(blocks) == len(FILES)
    found = {
        path: block for path, head in FILES.items() for block in blocks if block.startswith(head)
    }
    assert len(found) == len(FILES)
    return found


@pytest.fixture
def new_studio(tmp_path: Path) -> Path:
    folder = tmp_path / "my-studio"
    result = CliRunner().invoke(main, ["new", "studio", str(folder), *words(ANSWERS)])
    assert result.exit_code == 0
    return folder / "content"


def test_every_example_is_read_as_what_it_is(new_studio: Path) -> None:
    for path, text in examples().items():
        file = new_studio / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, encoding="utf-8")
    studio, problems = read_studio(new_studio)
    assert problems == []
    assert studio is not None
    assert "dahlia-shell" in studio.stems
    assert "later" in studio.recipes["hedgerow-jar"].variants
    assert len(studio.made) == len(studio.orders) == len(studio.walks) == len(studio.logs) == 1
    assert len(studio.links) == 1


def test_every_kind_of_file_is_named() -> None:
    named = {
        "standing": "orders/standing/",
        "studio": "content/studio.yml",
        "page": "pages/care.md",
    }
    paths = " ".join([*FILES, *named.values()])
    folders = {"order": "orders/", "technique": "techniques/", "recipe": "recipes/", "log": "log/"}
    folders |= {"stems": "stems/", "made": "made/", "walk": "walks/", "link": "links/"}
    for kind in MODELS:
        assert (named | folders)[kind] in paths
        assert (named | folders)[kind] in README


def test_the_error_it_shows_is_the_one_that_comes(
    new_studio: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(new_studio.parent)
    change(new_studio / "recipes/posy/kitchen-jug.yml", "5 scabious-lilac", "5 scabius-lilac")
    _, (problem,) = read_and_check(Path("content"))
    shown = "".join(f"    {line}\n" for line in problem.shown().splitlines())
    assert shown in README


def settings_rows() -> Iterator[str]:
    """The rows of the settings' table, from where the settings are declared."""
    declared = ast.parse(textwrap.dedent(inspect.getsource(CorymbSettings))).body[0]
    assert isinstance(declared, ast.ClassDef)
    texts = {
        field.targets[0].id: ast.literal_eval(text.value)
        for field, text in pairwise(declared.body)
        if isinstance(field, ast.Assign)
        and isinstance(field.targets[0], ast.Name)
        and isinstance(text, ast.Expr)
    }
    for name, option in own_options().items():
        choices = getattr(option, "choices", ())
        among = f" One of: {', '.join(f'`{c}`' for c in choices)}." if choices else ""
        left_out = f"`{option.default}`" if option.default else "nothing"
        yield f"| `{name}` | {left_out} | {texts[name]}{among} |"


def test_every_setting_is_told_as_it_is_declared() -> None:
    head = "| Setting | If left out | What it says |\n| --- | --- | --- |\n"
    rows = list(settings_rows())
    assert len(rows) >= 3
    assert head + "\n".join(rows) + "\n\n" in README


def calls() -> Iterator[tuple[str, ...]]:
    """Every command that the README names."""
    for line in re.findall(r"corymb ((?:new )?[a-z]+)(?= |`|\n)", README):
        yield tuple(line.split())


@pytest.mark.parametrize("call", sorted(set(calls())), ids=" ".join)
def test_every_command_it_names_is_there(call: tuple[str, ...]) -> None:
    command: click.Command = main
    for word in call:
        assert isinstance(command, click.Group)
        command = command.commands[word]


def test_every_command_there_is_is_named() -> None:
    assert {call[0] for call in calls()} == set(main.commands)


def test_the_cut_it_tells_one_to_plan_is_planned() -> None:
    (call,) = re.findall(r"`corymb (cut --from [^`]*)`", README)
    demo = ROOT / "site_demo" / "mkdocs.yml"
    result = CliRunner().invoke(main, [*call.split(), "-f", str(demo)])
    assert result.exit_code == 0
    assert "Cut on Thursday 17 September 2026\nFor Barn supper, " in result.output


def test_the_photo_it_tells_one_to_begin_from_begins_a_recipe() -> None:
    (call,) = re.findall(r"`corymb (colours [^`]*)`", README)
    photo = ROOT / "content" / "photos" / "hedgerow-jar-on-linen.jpg"
    words = [str(photo) if word.endswith(".jpg") else word for word in call.split()]
    result = CliRunner().invoke(main, [*words, "-f", str(ROOT / "site_demo" / "mkdocs.yml")])
    assert result.exit_code == 0
    counts = re.findall(r"^  - (\d+) [a-z-]+, [a-z]+$", result.output, re.MULTILINE)
    assert sum(map(int, counts)) == int(words[-1])


def test_continuous_integration_runs_what_the_reader_is_told_to_run() -> None:
    assert "\n    bash tests/run\n" in README
    assert "tests/run" in (ROOT / ".ci" / "run").read_text(encoding="utf-8")


def test_the_picture_it_shows_is_there() -> None:
    (path,) = re.findall(r"!\[[^\]]+\]\(([^)]+)\)", README)
    assert (ROOT / path).is_file()
