"""`corymb build`: both sites whole, or what is wrong and the old ones as they were."""

import os
import re
from errno import ENOSPC
from pathlib import Path

import pytest
from PIL import Image

from tests.cli.conftest import Run, change


def test_both_sites_are_built_beside_mkdocs_yml_and_summed_up(studio: Path, run: Run) -> None:
    result = run("build")
    assert result.exit_code == 0
    clients, staff, sums = result.output.splitlines()
    assert re.fullmatch(r"clients +\d+ pages  clients/index\.html", clients)
    assert re.fullmatch(r"staff +\d+ pages  staff/index\.html", staff)
    assert re.fullmatch(r"0 photos and \d+ pictures, \d+\.\d s\.", sums)
    for site in ("clients", "staff"):
        assert "Hazel Row" in (studio / site / "index.html").read_text(encoding="utf-8")


def test_one_site_alone_can_be_built_from_anywhere(
    studio: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(studio.parent)
    result = run("build", "--for", "clients", "-f", "studio/mkdocs.yml")
    assert result.output.startswith("clients ")
    assert "studio/clients/index.html" in result.output
    assert not (studio / "staff").exists()


def test_a_site_is_built_as_on_any_day(studio: Path, run: Run) -> None:
    def home(day: str) -> str:
        assert run("build", "--for", "clients", "--on", day).exit_code == 0
        return (studio / "clients" / "index.html").read_text(encoding="utf-8")

    assert "Market bunch" in home("1 August 2026")
    assert home("2026-08-01") != home("2026-01-10")


def test_with_an_error_it_shows_the_line_and_the_old_sites_stay(studio: Path, run: Run) -> None:
    assert run("build").exit_code == 0
    before = {file: file.read_bytes() for file in (studio / "clients").rglob("*.html")}
    change(studio / "content/studio.yml", "tagline:", "tag line:")
    result = run("build")
    assert result.exit_code == 1
    assert result.output == (
        "content/studio.yml:7:1: `tag line` is not a key here. Did you mean `tagline`?\n"
        "    7 | tag line: Flowers grown and made by hand\n"
        "        ^\n"
        "Error: 1 error; nothing was built.\n"
    )
    assert {file: file.read_bytes() for file in (studio / "clients").rglob("*.html")} == before


def test_a_folder_that_can_t_be_written_is_told(
    studio: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object) -> None:
        raise OSError(ENOSPC, os.strerror(ENOSPC))

    monkeypatch.setattr("corymb.site.publishing.placing.put_together", full)
    result = run("build", "--for", "clients")
    assert result.exit_code == 1
    assert f"clients: the site can't be written here: {os.strerror(ENOSPC)}. Make room" in (
        result.output
    )


def test_a_cache_that_can_t_be_written_is_told(
    studio: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object) -> None:
        raise OSError(ENOSPC, os.strerror(ENOSPC))

    monkeypatch.setattr("corymb.site.build.PhotoCache", full)
    result = run("build", "--for", "clients")
    assert result.exit_code == 1
    told = f"what is kept between builds can't be written here: {os.strerror(ENOSPC)}. Make room"
    assert f".cache/corymb: {told}" in result.output
    assert not (studio / "clients").exists()


def test_strict_takes_advice_for_errors(studio: Path, run: Run) -> None:
    change(studio / "content/stems/flowers.yml", "weight: 6 g", "weight: 45 g")
    strict = run("build", "--strict")
    assert strict.exit_code == 1
    assert "Error: 1 piece of advice; nothing was built.\n" in strict.output
    assert not (studio / "clients").exists()
    assert run("build").output.endswith("1 piece of advice: `corymb check` shows it.\n")


def test_a_hazard_that_a_style_leaves_out_is_named_at_every_build(studio: Path, run: Run) -> None:
    change(studio / "content/stems/flowers.yml", "weight: 6 g", "weight: 45 g")
    change(
        studio / "content/stems/flowers.yml",
        "  cornflower-blue:\n",
        "  cornflower-blue:\n    hazards: [heart poison]\n",
    )
    first, *_, last = run("build").output.splitlines()
    assert first == (
        "content/recipes/posy/kitchen-jug.yml:16:7: advice: ‘cornflower-blue’ has a hazard that "
        "posies leave out: heart poison."
    )
    assert last.endswith("pieces of advice: `corymb check` shows them.")


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        pytest.param(
            ["build"],
            "Error: There is no mkdocs.yml in this folder. Go into your studio's folder, or name "
            "the file: -f my-studio/mkdocs.yml. To begin a studio: corymb new studio my-studio\n",
            id="no mkdocs.yml here",
        ),
        pytest.param(
            ["build", "-f", "other.yml"],
            "Error: There is no other.yml: name your mkdocs.yml with -f, or make a studio with "
            "`corymb new studio DIR`.\n",
            id="no such file",
        ),
        pytest.param(
            ["build", "--on", "soon"],
            "Error: Invalid value for '--on': ‘soon’ is not a date: write it like ‘2026-09-19’ "
            "or ‘19 September 2026’.\n",
            id="not a date",
        ),
    ],
)
def test_what_can_t_be_done_is_said_with_the_next_step(
    tmp_path: Path, run: Run, monkeypatch: pytest.MonkeyPatch, arguments: list[str], told: str
) -> None:
    monkeypatch.chdir(tmp_path)
    result = run(*arguments)
    assert result.exit_code != 0
    assert result.output.endswith(told)


def test_a_folder_that_holds_something_else_is_left_alone(studio: Path, run: Run) -> None:
    (studio / "clients").mkdir()
    (studio / "clients" / "letters.txt").write_text("Dear ...")
    result = run("build")
    assert result.exit_code == 1
    assert "holds files that Corymb did not put there" in result.output
    assert [file.name for file in (studio / "clients").iterdir()] == ["letters.txt"]


def test_a_photo_that_shows_something_else_is_told_by_a_build(studio: Path, run: Run) -> None:
    """`corymb check` opens no photo for its colours, so it says nothing of it."""
    photo = studio / "content/photos/blue.png"
    photo.parent.mkdir(exist_ok=True)
    Image.new("RGB", (600, 400), "#2a52be").save(photo)
    recipe = studio / "content/recipes/posy/kitchen-jug.yml"
    change(
        recipe,
        "\nmethod:",
        "\nphotos:\n  - {file: photos/blue.png, alt: Blue, credit: Us, may be shown to: clients}\n"
        "method:",
    )
    told = (
        r"kitchen-jug\.yml:\d+:\d+: .*This photo doesn't show much of what ‘Kitchen jug’ says: no "
    )
    assert run("check", "--strict").exit_code == 0
    result = run("build", "--for", "clients")
    assert re.search(told, result.output)
    assert "corymb check" not in result.output
    (studio / "clients/index.html").unlink()
    strict = run("build", "--strict")
    assert strict.exit_code == 1
    assert re.search(told, strict.output)
    assert "Error: 1 piece of advice; nothing was built.\n" in strict.output
    assert not (studio / "clients/index.html").exists()
