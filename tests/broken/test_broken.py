"""Whatever is wrong with a studio is told once, in its place, with what would be right."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.checks import read_and_check
from tests.broken import (
    cases_colours,
    cases_files,
    cases_keys,
    cases_lines,
    cases_links,
    cases_measures,
    cases_money,
    cases_names,
    cases_orders,
    cases_places,
    cases_times,
    cases_types,
    cases_words,
    cases_yaml,
)
from tests.broken.bench import GOOD, JAR, Case, break_it, good_studio
from tests.broken.well_put import assert_well_put

CASES: list[Case] = [
    *cases_yaml.CASES,
    *cases_keys.CASES,
    *cases_types.CASES,
    *cases_measures.CASES,
    *cases_times.CASES,
    *cases_money.CASES,
    *cases_colours.CASES,
    *cases_words.CASES,
    *cases_places.CASES,
    *cases_lines.CASES,
    *cases_names.CASES,
    *cases_orders.CASES,
    *cases_links.CASES,
    *cases_files.CASES,
]


def test_the_good_studio_has_nothing_to_put_right(tmp_path: Path) -> None:
    assert read_and_check(good_studio(tmp_path))[1] == []


def test_each_slip_has_a_name_of_its_own() -> None:
    assert len({case.name for case in CASES}) == len(CASES) > 60


def test_every_file_of_the_studio_is_broken_somehow() -> None:
    files = {str(file.relative_to(GOOD)) for file in GOOD.rglob("*") if file.is_file()}
    assert files <= {case.file for case in CASES}


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_a_slip_is_told_in_its_place_and_nothing_else_is(case: Case, tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    break_it(studio, case)
    problems = read_and_check(studio)[1]
    assert [(p.file, p.line, p.column, p.advice) for p in problems] == sorted(
        (studio / (t.file or case.file), t.line, t.column, t.advice) for t in case.told
    ), "\n".join(map(str, problems))
    for problem in problems:
        assert any(told.says in problem.message for told in case.told), problem.message
        assert_well_put(problem, studio)


def test_marks_and_line_ends_of_other_machines_are_no_slips_and_move_no_place(
    tmp_path: Path,
) -> None:
    studio = good_studio(tmp_path)
    for file in (f for f in studio.rglob("*") if f.suffix in (".yml", ".md")):
        text = file.read_text(encoding="utf-8")
        file.write_bytes(text.replace("\n", "\r\n").encode("utf-8-sig"))
    assert read_and_check(studio)[1] == []
    jar = (studio / JAR).read_bytes()
    (studio / JAR).write_bytes(jar.replace(b"- 5 cosmos-white", b"- 5 cosmos-wite"))
    assert [(p.line, p.column) for p in read_and_check(studio)[1]] == [(17, 7)]
