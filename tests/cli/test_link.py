"""`corymb link`: a page for one client in one line, and what it is told when it can't be."""

from __future__ import annotations

import re
import sys
from datetime import date, timedelta
from pathlib import Path

import pytest

from corymb.checks import read_and_check
from tests.cli.conftest import Run, change

TODAY = date(2026, 6, 1)


@pytest.fixture(autouse=True)
def _stands_still(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys.modules["corymb.cli.link"], "today_of", lambda studio: TODAY)


def only_link(studio: Path) -> Path:
    (file,) = (studio / "content" / "links").glob("*.yml")
    return file


def test_one_line_writes_a_link_that_reads_without_a_word(studio: Path, run: Run) -> None:
    said = run(
        "link", "kitchen-jug", "Market bunch", "--for", "2026-07-18", "--client", "Orla: Q#1"
    )
    assert said.exit_code == 0, said.output
    read, problems = read_and_check(studio / "content")
    assert read is not None
    assert [str(problem) for problem in problems] == []
    (link,) = read.links.values()
    assert link.for_ == "Orla: Q#1"
    assert [item.recipe for item in link.show] == ["kitchen-jug", "market-bunch"]
    assert link.date == date(2026, 7, 18)
    assert link.expires == link.date + timedelta(weeks=3)
    assert link.title == "Flowers for Saturday 18 July 2026"
    assert only_link(studio).name == "orla-q-1.yml"


def test_the_address_is_printed_whole_where_the_sites_own_is_known(studio: Path, run: Run) -> None:
    change(
        studio / "mkdocs.yml", "site_name:", "site_url: https://hazel.example/flowers/\nsite_name:"
    )
    said = run("link", "kitchen-jug", "--for", "2026-07-18").output
    code = re.search(r"^code: (\w+)$", only_link(studio).read_text("utf-8"), re.MULTILINE)
    assert code
    assert f"https://hazel.example/flowers/links/{code[1]}.html" in said


def test_without_the_sites_address_it_says_where_to_write_it(studio: Path, run: Run) -> None:
    said = run("link", "kitchen-jug", "--for", "2026-07-18").output
    assert "behind the address of your site" in said
    assert "site_url in mkdocs.yml" in said


def test_no_two_links_have_one_code_or_one_file(studio: Path, run: Run) -> None:
    for _ in range(3):
        assert run("link", "kitchen-jug", "--for", "2026-07-18").exit_code == 0
    files = sorted((studio / "content" / "links").iterdir())
    assert len(files) == 3
    assert len({re.search(r"code: (\w{26,})", f.read_text("utf-8"))[1] for f in files}) == 3  # type: ignore[index]


@pytest.mark.parametrize(
    "note",
    ["Which of these?", "yes", "# no comment: at all", "A line.\n\nAnd another: quite long, " * 9],
    ids=["plain", "a trap", "marks", "two paragraphs and more"],
)
def test_a_note_comes_out_as_it_went_in(studio: Path, run: Run, note: str) -> None:
    assert run("link", "kitchen-jug", "--for", "2026-07-18", "--note", note).exit_code == 0
    read, problems = read_and_check(studio / "content")
    assert read is not None, problems
    (link,) = read.links.values()
    assert link.note.split() == note.split()


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["kitchen-jog"], "There is no recipe called ‘kitchen-jog’. Did you mean ‘kitchen-jug’?"),
        (["kitchen-jug, smal"], "has no variant or size called ‘smal’. Did you mean ‘small’?"),
        (["kitchen-jug, , small"], "‘kitchen-jug, , small’: "),
        (["kitchen-jug small"], 'Put a comma behind the recipe: "kitchen-jug, small".'),
        (["Kitchen", "jug"], 'Put a name of several words in quotes: "Kitchen jug", or write'),
        (
            ["kitchen-jug", "--expires", "2026-07-01"],
            "It would expire before Saturday 18 July 2026",
        ),
    ],
    ids=["no such recipe", "no such size", "an empty word", "no comma", "no quotes", "too short"],
)
def test_what_cannot_be_made_a_link_is_said_with_what_would_be_right(
    studio: Path, run: Run, words: list[str], says: str
) -> None:
    said = run("link", *words, "--for", "2026-07-18")
    assert said.exit_code == 1
    assert says in said.output
    assert not (studio / "content" / "links").exists()


def test_a_link_that_nobody_would_see_is_not_made(studio: Path, run: Run) -> None:
    said = run("link", "kitchen-jug", "--for", "2025-07-18")
    assert "has gone by: nobody would see it" in said.output
    assert not (studio / "content" / "links").exists()


def test_what_cannot_be_made_then_is_told_at_once(studio: Path, run: Run) -> None:
    said = run("link", "kitchen-jug", "--for", "2027-01-16")
    (told,) = (line for line in said.output.splitlines() if line.startswith("  kitchen-jug: "))
    assert told.startswith("  kitchen-jug: Not then: nothing stands in for ")
    assert " again from " in told
    assert told.endswith(" The page says so.")


def test_a_link_of_drafts_alone_is_not_made(studio: Path, run: Run) -> None:
    recipe = studio / "content" / "recipes" / "posy" / "kitchen-jug.yml"
    recipe.write_text(f"{recipe.read_text('utf-8')}\ndraft: yes\n", "utf-8")
    said = run("link", "kitchen-jug", "--for", "2026-07-18")
    assert said.exit_code == 1
    assert "‘kitchen-jug’ is a draft, which no client sees, so the page would be" in said.output
    assert not (studio / "content" / "links").exists()
    said = run("link", "kitchen-jug", "market-bunch", "--for", "2026-07-18")
    assert "  kitchen-jug: a draft, so the client's page leaves it out\n" in said.output
    refused = run("share", "kitchen-jug")
    assert refused.exit_code == 1
    assert "is a draft, which no client sees" in refused.output


def test_a_file_that_is_there_is_never_written_over(studio: Path, run: Run) -> None:
    words = ("link", "kitchen-jug", "--for", "2026-07-18", "--id", "orla")
    assert run(*words).exit_code == 0
    before = only_link(studio).read_bytes()
    assert "is there already; nothing was written" in run(*words).output
    assert only_link(studio).read_bytes() == before
