"""`corymb share`: one file to attach, of a recipe or of a style link."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.cli.conftest import Run

HEAVIEST = 1_000_000


def written(run: Run, *words: str) -> str:
    said = run("share", *words)
    assert said.exit_code == 0, said.output
    file = re.search(r"Written: (\S+) \(\d+ kB\)", said.output)
    assert file, said.output
    data = Path(file[1]).read_bytes()
    assert len(data) <= HEAVIEST
    return data.decode()


def test_a_recipe_becomes_a_page_of_one_look_on_a_day(studio: Path, run: Run) -> None:
    page = written(run, "kitchen-jug, small", "--for", "2027-07-17", "-o", "jug.html")
    assert "Saturday 17 July 2027" in page
    assert "From Hazel Row" in page
    assert page.count('type="checkbox"') == 1
    assert "Kitchen jug, small" in page
    assert "data-until" not in page  # it is for nobody, and never over
    assert not (studio / "content" / "links").exists()


def test_without_a_day_it_is_one_on_which_it_can_be_made(studio: Path, run: Run) -> None:
    page = written(run, "Kitchen jug")
    assert page.count('type="checkbox"') == 1
    assert Path("kitchen-jug.html").exists()


def test_a_style_link_becomes_its_page_and_ends_on_its_last_day(studio: Path, run: Run) -> None:
    words = ("kitchen-jug", "market-bunch", "--for", "2027-07-24", "--id", "orla")
    assert run("link", *words, "--client", "Orla Quill", "--title", "For Orla").exit_code == 0
    page = written(run, "orla")
    assert page.count('type="checkbox"') == 2
    assert "For Orla" in page
    assert 'data-until="2027-08-14"' in page
    assert "Quill" not in page
    code = (studio / "content" / "links" / "orla.yml").read_text("utf-8").split("code: ")[1][:26]
    assert code not in page


def test_who_shares_a_link_that_is_over_is_told(studio: Path, run: Run) -> None:
    assert run("link", "kitchen-jug", "--for", "2027-07-24", "--id", "orla").exit_code == 0
    file = studio / "content" / "links" / "orla.yml"
    past = file.read_text("utf-8").replace("2027-", "2021-")
    file.write_text(past, "utf-8")
    told = run("share", "orla").output.splitlines()[1]
    assert told.startswith("Its last day, Saturday 14 August 2021, has gone by")


def test_who_shares_what_cannot_be_made_then_is_told_why_and_when_it_can_be(
    studio: Path, run: Run
) -> None:
    told = run("share", "kitchen-jug", "--for", "2027-01-16").output.splitlines()
    assert told[1].startswith("  Kitchen jug: Not then: nothing stands in for ")
    assert " again from " in told[1]
    assert told[2].startswith("Nothing of it can be made on Saturday 16 January 2027: give")
    assert "As it will be" not in "".join(told)


def test_the_same_file_comes_twice(studio: Path, run: Run) -> None:
    once = written(run, "kitchen-jug", "--for", "2027-07-17")
    assert written(run, "kitchen-jug", "--for", "2027-07-17") == once


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (
            ["kitchen-jog"],
            "There is no recipe and no style link called ‘kitchen-jog’. Did you mean",
        ),
        (["kitchen-jug, smal"], "has no variant or size called ‘smal’. Did you mean ‘small’?"),
        (["orla", "--for", "2027-07-17"], "‘orla’ is a style link, whose day is"),
    ],
    ids=["nothing of the name", "no such size", "a link has a day"],
)
def test_what_cannot_be_shared_is_said_with_what_would_be_right(
    studio: Path, run: Run, words: list[str], says: str
) -> None:
    assert run("link", "kitchen-jug", "--for", "2027-07-17", "--id", "orla").exit_code == 0
    said = run("share", *words)
    assert said.exit_code == 1
    assert says in said.output
    assert not list(studio.glob("*.html"))
