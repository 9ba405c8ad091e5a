"""What is changed in a file is changed, and every other letter stays."""

from __future__ import annotations

import pytest
import yaml

from corymb.studio.rewriting import Rewriting

TEXT = """\
# head
a: one   # behind
b:       # the list
  - x
# between, at the margin
  - y    # a remark

# above c
c: >-
  folded # no comment
  text

  and more

# foot
"""


@pytest.mark.parametrize(
    ("key", "new", "expected"),
    [
        pytest.param("a", "two", TEXT.replace("one", "two"), id="a plain text"),
        pytest.param(
            "c",
            "two",
            TEXT.replace(">-\n  folded # no comment\n  text\n\n  and more\n", "two\n"),
            id="a folded text",
        ),
    ],
)
def test_a_value_is_replaced_and_nothing_else(key: str, new: str, expected: str) -> None:
    file = Rewriting(TEXT)
    file.replace(file.value(key), new)
    assert file.result() == expected


@pytest.mark.parametrize(
    ("old", "new", "written"),
    [
        pytest.param("'it''s'", "that's", "'that''s'", id="single quotes"),
        pytest.param('"it"', 'say "so"', '"say \\"so\\""', id="double quotes"),
    ],
)
def test_a_value_keeps_its_quotes(old: str, new: str, written: str) -> None:
    file = Rewriting(f"a: {old} # behind\n")
    file.replace(file.value("a"), new)
    assert file.result() == f"a: {written} # behind\n"
    assert yaml.safe_load(file.result()) == {"a": new}


@pytest.mark.parametrize(
    ("key", "left"),
    [
        pytest.param("a", TEXT.replace("a: one   # behind\n", ""), id="one line"),
        pytest.param(
            "b",
            TEXT.replace(TEXT[TEXT.index("b:") : TEXT.index("\n# above c")], ""),
            id="a list with comments in it",
        ),
        pytest.param(
            "c", TEXT.replace(TEXT[TEXT.index("c:") : TEXT.index("\n# foot")], ""), id="the last"
        ),
    ],
)
def test_a_key_goes_with_its_value_and_leaves_the_comments_around_it(key: str, left: str) -> None:
    file = Rewriting(TEXT)
    file.take_out(key)
    assert file.result() == left


def test_the_comment_right_above_a_key_goes_along_if_asked() -> None:
    file = Rewriting(TEXT)
    file.take_out("c", ["d: new"], remarks_too=True)
    assert file.result() == TEXT[: TEXT.index("# above c")] + "d: new\n\n# foot\n"


def test_the_line_that_names_the_schema_is_no_comment_of_the_first_key() -> None:
    file = Rewriting("# yaml-language-server: $schema=x.json\na: 1\nb: 2\n")
    file.take_out("a", remarks_too=True)
    assert file.result() == "# yaml-language-server: $schema=x.json\nb: 2\n"


def test_a_file_in_braces_gets_a_line_for_each_key() -> None:
    file = Rewriting('# head\n{a: one, b: {c: "01"}, d: [x, y]}\n')
    file.replace(file.value("a"), "two")
    assert file.result() == '# head\na: two\nb: {c: "01"}\nd: [x, y]\n'
