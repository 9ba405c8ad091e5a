"""All that is wrong is told in one run: no slip hides another, and none has an echo."""

from __future__ import annotations

from pathlib import Path
from typing import Literal
from unicodedata import normalize

import pytest

from corymb.checks import read_and_check
from corymb.studio.load import read_folder, read_studio
from tests.broken.bench import (
    ANNUALS,
    DAHLIAS,
    HOUSE,
    JAR,
    LESSON,
    LINK,
    MADE,
    ORDER,
    PHOTO,
    STANDING,
    URN,
    WALK,
    WINDOW,
    Case,
    at,
    break_it,
    case,
    good_studio,
)

Form = Literal["NFC", "NFD"]

TEN_SLIPS = [
    case("", HOUSE, "  currency: EUR", "  currency: euro", at(16, 13, "three letters")),
    case("", DAHLIAS, "    head: 9 cm", "    head: 9", at(13, 11, "has no unit")),
    case("", ANNUALS, "    form: spike", "\tform: spike", at(26, 1, "tab")),
    case("", JAR, "- 5 cosmos-white", "- 5 cosmos-wite", at(17, 7, "‘cosmos-white’")),
    case("", JAR, "builds on: later", "builds on: latter", at(51, 16, "‘later’")),
    case("", WINDOW, "time: 15 min", "tim: 15 min", at(4, 1, "`time`")),
    case("", MADE, PHOTO, "photos/hedgrow-jar.jpg", at(7, 12, "‘photos/hedgerow-jar.jpg’")),
    case("", ORDER, "date: 2026-09-19", "date: 2026-09-31", at(3, 7, "30 days")),
    case("", LINK, "- hedgerow-jar, later", "- hedgerow-jar, latter", at(8, 19, "‘later’")),
    case("", LESSON, "minutes: 20\n", "", at(2, 1, "`minutes` is missing")),
]

ONE_RECIPE = [
    case("", JAR, "summary: A pint", "sumary: A pint", at(3, 1, "`summary`")),
    case("", JAR, "time: 20 min", "time: twenty", at(6, 7, "write it like")),
    case("", JAR, "  kind: jar", "  kind: jug", at(10, 9, "It is one of")),
    case("", JAR, "- 5 cosmos-white, light", "- 5 cosmos-white", at(17, 5, "its role")),
    case("", JAR, "stem: dahlia-plum", "stem: dahlia-pum", at(18, 11, "‘dahlia-plum’")),
    case("", JAR, "    count: 2", "    count: two", at(19, 12, "in figures: 2")),
    case("", JAR, "large: 1.5", "large: big", at(24, 10, "‘120 %’")),
    case("", JAR, "    alt: A jar of cosmos and dahlias\n", "", at(36, 5, "`alt` is missing")),
    case("", JAR, "-> 4 dahlia-plum", "-> 4 dahlia-plumb", at(45, 27, "‘dahlia-plum’")),
    case("", JAR, "    price: from 30", "    price: from x", at(46, 12, "‘1.20’")),
]

NO_ECHO = [
    case("", HOUSE, "styles:\n", "styles: []\nbouquets:\n", at(29, 1, ""), at(30, 1, "")),
    case("", DAHLIAS, "group: Dahlias\nstems:\n", "group: Dahlias\nstem:\n", at(3, 1, "`stems`")),
    case("", JAR, "stems:\n", "stemz:\n", at(15, 1, "`stems`")),
    case("", WINDOW, "based on:", "based-on:", at(3, 1, "`based on`")),
    case("", JAR, "variants:\n", "variant:\n", at(41, 1, "`variants`")),
    case("", JAR, "    swap:\n", "    swop:\n", at(45, 5, "`swap`")),
    case("", STANDING, "from: 2026-01-06", "form: 2026-01-06", at(4, 1, "`from`")),
]
"""One slip each, on which many other files lean."""


def broken(folder: Path, cases: list[Case]) -> tuple[Path, list[tuple[Path, int, int, str]]]:
    """A studio with all these slips, and what must be told of it, in order."""
    studio = good_studio(folder)
    for each in cases:
        break_it(studio, each)
    told = [(studio / c.file, t.line, t.column, t.says) for c in cases for t in c.told]
    return studio, sorted(told)


def assert_told(studio: Path, wanted: list[tuple[Path, int, int, str]]) -> None:
    problems = read_and_check(studio)[1]
    places = [(p.file, p.line, p.column) for p in problems]
    assert places == [each[:3] for each in wanted], "\n".join(map(str, problems))
    for problem, (*_, says) in zip(problems, wanted, strict=True):
        assert says in problem.message


def test_ten_slips_in_nine_files_are_told_in_one_run_by_file_and_line(tmp_path: Path) -> None:
    assert_told(*broken(tmp_path, TEN_SLIPS))


def test_ten_slips_in_one_recipe_are_told_in_one_run(tmp_path: Path) -> None:
    assert_told(*broken(tmp_path, ONE_RECIPE))


@pytest.mark.parametrize("slip", NO_ECHO, ids=lambda slip: slip.new.split(":")[0].strip())
def test_a_slip_that_others_lean_on_is_told_once(slip: Case, tmp_path: Path) -> None:
    assert_told(*broken(tmp_path, [slip]))


@pytest.mark.parametrize("file", [HOUSE, DAHLIAS, JAR, URN, LESSON])
def test_a_file_that_can_t_be_read_has_no_echo_in_others(file: str, tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    (studio / file).write_bytes(b"\x00" * 100)
    (problem,) = read_and_check(studio)[1]
    assert problem.file == studio / file


def test_errors_in_other_files_are_told_though_the_studio_s_own_file_is_broken(
    tmp_path: Path,
) -> None:
    studio = good_studio(tmp_path)
    (studio / HOUSE).write_bytes(b"\x00" * 100)
    break_it(studio, case("", WALK, "cosmos-white", "cosmos-wite"))
    assert [p.file for p in read_and_check(studio)[1]] == [studio / HOUSE, studio / WALK]


def test_a_folder_almost_named_right_is_read_and_told_once(tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    (studio / "stems").rename(studio / "stem")
    (problem,) = read_and_check(studio)[1]
    assert str(problem) == (
        f"{studio / 'stem'}:1:1: This folder has the wrong name: rename it to ‘stems’."
    )


def test_a_folder_with_no_studio_is_told_what_makes_one(tmp_path: Path) -> None:
    for folder, why in ((tmp_path / "nowhere", "this folder doesn't exist"), (tmp_path, "missing")):
        studio, problems = read_and_check(folder)
        assert studio is None
        assert [why in p.message and "`corymb new studio`" in p.message for p in problems] == [True]


def test_nothing_is_built_from_what_was_only_guessed(tmp_path: Path) -> None:
    studio, _ = broken(tmp_path, [*TEN_SLIPS[1:2], *ONE_RECIPE])
    whole, problems = read_studio(studio)
    assert whole is not None and problems
    assert "hedgerow-jar" not in whole.recipes and "dahlia-shell" not in whole.stems
    mended = read_folder(studio).mended
    assert mended is not None
    assert "hedgerow-jar" in mended.recipes and "dahlia-shell" in mended.stems


@pytest.mark.parametrize(("on_disk", "written"), [("NFD", "NFC"), ("NFC", "NFD")])
def test_a_photo_s_accents_may_be_written_in_either_way(
    on_disk: Form, written: Form, tmp_path: Path
) -> None:
    studio = good_studio(tmp_path)
    (studio / PHOTO).rename(studio / "photos" / normalize(on_disk, "Pósaé.jpg"))
    for file in (JAR, MADE):
        text = (studio / file).read_text(encoding="utf-8")
        named = text.replace(PHOTO, "photos/" + normalize(written, "Pósaé.jpg"))
        assert named != text
        (studio / file).write_text(named, encoding="utf-8")
    assert read_and_check(studio)[1] == []


@pytest.mark.parametrize(
    ("lost", "last"),
    [
        pytest.param(100, "There is no stem called ‘lost-99’.", id="each is told"),
        pytest.param(101, "One more name leads nowhere in this file", id="one is too many"),
        pytest.param(
            2_500, "2,400 more names lead nowhere in this file", id="a whole list is lost"
        ),
    ],
)
def test_so_many_lost_names_of_one_file_are_told_and_then_how_many_more(
    tmp_path: Path, lost: int, last: str
) -> None:
    studio = good_studio(tmp_path)
    counts = "".join(f"  lost-{number}: 1\n" for number in range(lost))
    (studio / WALK).write_text(f"counts:\n{counts}notes: All of them.\n", "utf-8")
    problems = read_and_check(studio)[1]
    assert len(problems) == min(lost, 101)
    assert last in problems[-1].message
    assert problems[-1].line == min(lost, 101) + 1
