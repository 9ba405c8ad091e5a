"""A problem names its file, line and column, and shows the place."""

from pathlib import Path

import pytest

from corymb.studio.problems import WIDEST, Problem

FILE = Path("content/stems/dahlias.yml")


def shown(source: str, column: int) -> tuple[str, str]:
    """The source line and the caret line as they are shown, without the gutter."""
    _, text, caret = Problem(FILE, 7, column, "Wrong.", source).shown().split("\n")
    return text.removeprefix("    7 | "), caret[8:]


def test_a_problem_prints_file_line_column_and_message() -> None:
    problem = Problem(FILE, 3, 9, "‘dhalia’ is not known.")
    assert str(problem) == "content/stems/dahlias.yml:3:9: ‘dhalia’ is not known."


def test_advice_says_that_it_is_advice() -> None:
    problem = Problem(FILE, 3, 9, "Quote it.", advice=True)
    assert str(problem) == "content/stems/dahlias.yml:3:9: advice: Quote it."


def test_a_problem_without_a_source_line_is_shown_in_one_line() -> None:
    assert Problem(FILE, 1, 1, "Empty.").shown() == "content/stems/dahlias.yml:1:1: Empty."


@pytest.mark.parametrize(
    ("source", "column", "text", "caret"),
    [
        pytest.param("name: x", 7, "name: x", "      ^", id="at the value"),
        pytest.param("name:", 6, "name:", "     ^", id="behind the line"),
        pytest.param("\tname: x", 2, "    name: x", "    ^", id="a tab counts as spaces"),
        pytest.param("花: x", 4, "花: x", "    ^", id="a wide letter takes two cells"),
        pytest.param("e\u0301: x", 5, "e\u0301: x", "   ^", id="an accent takes no cell"),
        pytest.param("a\x00b", 3, "a\ufffdb", "  ^", id="an unseen character is made visible"),
    ],
)
def test_the_caret_stands_under_the_place(source: str, column: int, text: str, caret: str) -> None:
    assert shown(source, column) == (text, caret)


@pytest.mark.parametrize("column", [1, 50, 90, 120, 300, 500])
def test_a_long_line_is_cut_around_the_place(column: int) -> None:
    source = "".join(chr(0x61 + i % 26) for i in range(500))
    text, caret = shown(source, column)
    assert len(text) <= WIDEST + 2
    assert text[len(caret) - 1 : len(caret)] == source[column - 1 : column]


def test_problems_stand_in_the_order_of_their_places() -> None:
    places = [(FILE, 2, 1), (FILE, 1, 9), (Path("content/a.yml"), 9, 9), (FILE, 1, 2)]
    problems = sorted(Problem(file, line, column, "x") for file, line, column in places)
    assert [(p.file.name, p.line, p.column) for p in problems] == [
        ("a.yml", 9, 9),
        ("dahlias.yml", 1, 2),
        ("dahlias.yml", 1, 9),
        ("dahlias.yml", 2, 1),
    ]
