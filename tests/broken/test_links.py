"""Where a text may lead depends on who reads it, and on what else is known for certain."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.checks import read_and_check
from tests.broken.bench import FIRST_LESSON, HOUSE, JAR, PAGE, WINDOW, break_it, case, good_studio

TO_WINDOW = "[see](arrangements/window-jar.html)"
TO_LESSON = "[see](../techniques/conditioning.md)"


def told(studio: Path, *slips: tuple[str, str, str]) -> list[str]:
    for file, old, new in slips:
        break_it(studio, case("", file, old, new))
    return [
        problem.message for problem in read_and_check(studio)[1] if problem.file.suffix == ".md"
    ]


def test_a_draft_is_for_staff_alone(tmp_path: Path) -> None:
    link = (PAGE, "Fresh water every day.", TO_WINDOW)
    assert told(good_studio(tmp_path), link) == []
    (message,) = told(tmp_path / "studio", (WINDOW, "time: 15 min", "time: 15 min\ndraft: yes"))
    assert message.startswith("‘arrangements/window-jar.html’ is for staff alone, and clients")


def test_a_page_for_staff_may_lead_to_what_is_for_staff(tmp_path: Path) -> None:
    link = (PAGE, "Fresh water every day.", TO_LESSON)
    assert len(told(good_studio(tmp_path), link)) == 1
    assert told(tmp_path / "studio", (PAGE, "order: 3\n", "order: 3\nfor: staff\n")) == []


def test_a_lesson_for_everyone_may_be_led_to(tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    link = (PAGE, "Fresh water every day.", TO_LESSON)
    assert told(studio, link, (FIRST_LESSON, "level: easy", "level: easy\nfor: everyone")) == []


@pytest.mark.parametrize(
    ("file", "link"),
    [
        pytest.param(HOUSE, TO_WINDOW, id="a recipe, while studio.yml can't be read"),
        pytest.param(WINDOW, TO_WINDOW, id="a recipe that can't be read"),
        pytest.param(JAR, TO_WINDOW, id="a recipe based on one that can't be read"),
        pytest.param(FIRST_LESSON, TO_LESSON, id="a lesson that can't be read"),
    ],
)
def test_a_link_is_let_be_to(tmp_path: Path, file: str, link: str) -> None:
    studio = good_studio(tmp_path)
    break_it(studio, case("", PAGE, "Fresh water every day.", link))
    (studio / file).write_bytes(b"\x00" * 100)
    assert [problem.file for problem in read_and_check(studio)[1]] == [studio / file]
