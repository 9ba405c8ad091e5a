"""Whatever happens to a file, there is a sentence about it and never a traceback."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from corymb.checks import read_and_check
from tests.broken.bench import GOOD, good_studio
from tests.broken.test_broken import assert_well_put

FILES = sorted(str(file.relative_to(GOOD)) for file in GOOD.rglob("*") if file.is_file())
Lines = list[str]

ACCIDENTS: dict[str, Callable[[Lines, int], Lines]] = {
    "a line taken out": lambda lines, at: [*lines[:at], *lines[at + 1 :]],
    "a line cut, and all that comes after it": lambda lines, at: [
        *lines[:at],
        lines[at][: len(lines[at]) * 2 // 3],
    ],
    "a line with another's value": lambda lines, at: [
        *lines[:at],
        lines[at].partition(":")[0] + ":" + lines[at // 2].partition(":")[2],
        *lines[at + 1 :],
    ],
    "a line moved in": lambda lines, at: [*lines[:at], f"  {lines[at]}", *lines[at + 1 :]],
}


@pytest.mark.parametrize("accident", ACCIDENTS.values(), ids=ACCIDENTS)
@pytest.mark.parametrize("file", FILES)
def test_an_accident_to_any_line_is_told_in_sentences(
    file: str, accident: Callable[[Lines, int], Lines], tmp_path: Path
) -> None:
    studio = good_studio(tmp_path)
    lines = (studio / file).read_text(encoding="utf-8").split("\n")
    first = list(ACCIDENTS.values()).index(accident)
    for at in range(first, len(lines) - 1, len(ACCIDENTS)):  # each line has one accident
        (studio / file).write_text("\n".join(accident(lines, at)), encoding="utf-8")
        for problem in read_and_check(studio)[1]:
            assert_well_put(problem, studio)
