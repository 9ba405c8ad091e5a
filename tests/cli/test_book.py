"""`corymb book`: printed by whatever browser there is, or written to be printed by hand."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from corymb.site.book import chromium, made
from tests.cli.conftest import Run

BY_HAND = "with --html book.html, and print that from any browser."


def program(folder: Path, script: str) -> str:
    """A program that stands for a browser."""
    file = folder / "browser"
    file.write_text(f"#!{sys.executable}\n{script}\n")
    file.chmod(0o755)
    return str(file)


def test_the_book_is_written_as_one_file_to_print_by_hand(studio: Path, run: Run) -> None:
    said = run("book", "--html", "book.html")
    assert said.exit_code == 0, said.output
    page = (studio / "book.html").read_text("utf-8")
    assert "Kitchen jug" in page and "Hazel Row" in page and "size: A4" in page
    assert 'src="assets' not in page and "<link" not in page
    assert "What it costs us" not in page
    assert "keep it in the house" not in said.output


def test_the_staffs_book_says_that_it_stays_in_the_house(studio: Path, run: Run) -> None:
    said = run("book", "--for", "staff", "--paper", "a5", "--style", "posy", "--html", "out/b.html")
    assert said.exit_code == 0, said.output
    assert "Costs and notes are in it: keep it in the house." in said.output
    page = (studio / "out" / "b.html").read_text("utf-8")
    assert "What it costs us" in page and "size: A5" in page


def test_a_book_too_large_for_one_file_says_how_to_part_it(
    studio: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(made, "MOST_BYTES", 1000)
    said = run("book", "--html", "book.html")
    assert said.exit_code == 1
    assert "too large for one file: write some chapters at a time, with --style." in said.output
    assert not (studio / "book.html").exists()


def test_without_a_browser_it_says_how_to_print_by_hand(
    studio: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(chromium, "NAMES", ())
    monkeypatch.setattr(chromium, "PLACES", ())
    said = run("book", "-o", "book.pdf")
    assert said.exit_code == 1
    assert "No Chromium or Chrome was found on this machine" in said.output
    assert BY_HAND in said.output
    assert not (studio / "book.pdf").exists()


@pytest.mark.parametrize(
    ("script", "says"),
    [
        ("import sys; sys.exit('No display.')", "printed nothing. The last that it said: No disp"),
        ("", "printed nothing. The last that it said: It said nothing."),
        ("import time; time.sleep(60)", "took longer than 1 seconds and was stopped. Try again"),
    ],
    ids=["it refuses", "it prints nothing", "it takes too long"],
)
def test_what_a_browser_does_wrong_is_said_and_nothing_is_written(
    studio: Path, run: Run, monkeypatch: pytest.MonkeyPatch, script: str, says: str
) -> None:
    monkeypatch.setattr(chromium, "PATIENCE", 1.0)
    said = run("book", "-o", "book.pdf", "--browser", program(studio, script))
    assert said.exit_code == 1
    assert says in said.output and BY_HAND in said.output
    assert not (studio / "book.pdf").exists()


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["--style", "posi", "--html", "b.html"], "no style called ‘posi’. Did you mean ‘posy’?"),
        (["--browser", "no-such-program"], "There is no program no-such-program to print with."),
    ],
    ids=["no such style", "no such program"],
)
def test_what_it_is_asked_wrongly_is_said(
    studio: Path, run: Run, words: list[str], says: str
) -> None:
    said = run("book", *words)
    assert said.exit_code == 1 and says in said.output
