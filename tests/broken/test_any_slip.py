"""Whatever happens to a file, there is a sentence about it and never a traceback."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.checks import read_and_check
from tests.broken.bench import GOOD, good_studio
from tests.broken.well_put import assert_well_put
from tests.slips.lines import OF_LINES, OfLines

FILES = sorted(str(file.relative_to(GOOD)) for file in GOOD.rglob("*") if file.is_file())


@pytest.mark.parametrize("slip", OF_LINES.values(), ids=OF_LINES)
@pytest.mark.parametrize("file", FILES)
def test_a_slip_in_any_line_is_told_in_sentences(file: str, slip: OfLines, tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    lines = (studio / file).read_text(encoding="utf-8").split("\n")
    first = list(OF_LINES.values()).index(slip)
    for at in range(first, len(lines) - 1, len(OF_LINES)):  # each line has one slip
        (studio / file).write_text("\n".join(slip(lines, at, at // 2)), encoding="utf-8")
        for problem in read_and_check(studio)[1]:
            assert_well_put(problem, studio)
