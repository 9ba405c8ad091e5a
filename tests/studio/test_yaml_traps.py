"""What YAML would swallow without a word is called out."""

from pathlib import Path

import pytest

from corymb.studio.reading.fault import MOST_FAULTS
from corymb.studio.yaml_tree import read_tree

FILE = Path("f.yml")


def told(text: str) -> list[str]:
    """The problems of a text as `LINE:COLUMN: message`."""
    return [str(problem).removeprefix("f.yml:") for problem in read_tree(text, FILE)[1]]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        pytest.param(
            "a: 1\nb: 2\na: 3\n",
            "3:1: ‘a’ stands here twice: the first is in line 1. Keep one of them.",
            id="on top",
        ),
        pytest.param(
            "'a': 1\na: {b: c}\n",
            "2:1: ‘a’ stands here twice: the first is in line 1. Keep one of them.",
            id="once in quotes",
        ),
        pytest.param(
            "x: {a: 1, a: 2}\n",
            "1:11: ‘a’ stands here twice: the first is in line 1. Keep one of them.",
            id="in braces",
        ),
    ],
)
def test_a_key_written_twice_is_told_with_the_first_ones_line(text: str, expected: str) -> None:
    assert told(text) == [expected]


def test_of_a_key_written_twice_the_first_is_kept() -> None:
    tree, _ = read_tree("a: 1\na: {b: c}\n", FILE)
    assert tree is not None
    assert tree.data == {"a": "1"}
    assert tree.place(("a",)) == (1, 4)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        pytest.param(
            "colour: #e8c2b4\n",
            "1:9: The # starts a comment, so nothing after it is read. "
            'Leave the # out (‘e8c2b4’), or put the whole value in quotes, like "#e8c2b4".',
            id="all of it",
        ),
        pytest.param(
            "colours:\n  - shell #e8c2b4 80 %\n",
            "2:11: The # starts a comment, so nothing after it is read. "
            "Leave the # out (‘e8c2b4’), or put the whole value in quotes, "
            'like "shell #e8c2b4 80 %".',
            id="the better half",
        ),
        pytest.param(
            "colours:\n  - #e8c2b4 80 %\n",
            "2:5: The # starts a comment, so nothing after it is read. "
            'Leave the # out (‘e8c2b4’), or put the whole value in quotes, like "#e8c2b4 80 %".',
            id="behind a dash",
        ),
        pytest.param(
            "bed: row #3\n",
            "1:10: advice: Everything from # on is taken as a comment. If ‘#3’ belongs to the "
            "value, put the whole value in quotes; if not, put a space after the #.",
            id="perhaps a comment",
        ),
    ],
)
def test_a_value_swallowed_by_a_comment_is_told(text: str, expected: str) -> None:
    assert told(text) == [expected]


def test_a_value_that_may_have_lost_a_part_is_left_out_but_not_for_advice() -> None:
    tree, _ = read_tree("a: shell #e8c2b4\nb: row #3\n", FILE)
    assert tree is not None
    assert tree.data == {"b": "row"}
    assert tree.left_out == {("a",)}


@pytest.mark.parametrize("comment", ["# yes", "#", "## yes", "#!yes", "# e8c2b4"])
def test_a_comment_that_looks_like_one_is_left_alone(comment: str) -> None:
    assert told(f"key: value  {comment}\n") == []


EMPTY = (
    "Nothing stands after ‘{}:’. Fill it in (what belongs to it is moved in by two spaces below "
    "it), or take the line out."
)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        pytest.param("name: x\nvariants:\n", f"2:1: {EMPTY.format('variants')}", id="key"),
        pytest.param("a:   # later\nb: 1\n", f"1:1: {EMPTY.format('a')}", id="a comment behind"),
        pytest.param("a:\n  - b:\n    c: 1\n", f"2:5: {EMPTY.format('b')}", id="behind a dash"),
        pytest.param(
            "method:\n  - a\n  -\n  - b\n",
            "3:3: This dash has nothing after it: fill it in, or take the line out.",
            id="dash",
        ),
        pytest.param(
            "a: {b, c: d}\n",
            "1:5: ‘b’ has no value. Between { and } a comma starts a new key: "
            "if it is part of a text, put the text in quotes.",
            id="in braces",
        ),
    ],
)
def test_a_key_or_dash_with_nothing_behind_it_is_told(text: str, expected: str) -> None:
    assert told(text) == [expected]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        pytest.param(
            "a: &x 1\n",
            "1:4: ‘&x’ names a value to be used elsewhere: take it out, and write the value out in "
            "each place. A text that starts with & goes in quotes.",
            id="anchor",
        ),
        pytest.param(
            "a: [*x]\n",
            "1:5: ‘*x’ points to a value elsewhere: write it out here, or put the text in quotes.",
            id="alias",
        ),
        pytest.param(
            "a: !!python/object:os.system x\n",
            "1:4: A word with ! before a value changes what it means: take it out, or put the text "
            "in quotes.",
            id="tag",
        ),
        pytest.param(
            "a:\n  <<: {b: c}\n",
            "2:3: ‘<<’ copies keys from elsewhere: write them out here instead.",
            id="merge",
        ),
        pytest.param(
            "%YAML 1.1\n---\na: 1\n",
            "1:1: A line that starts with % is an order to the computer: take it out.",
            id="directive",
        ),
        pytest.param(
            "a: 1\n---\nb: 2\n",
            "2:1: A second document starts here (the line of three dashes). "
            "Put it in a file of its own.",
            id="second document",
        ),
        pytest.param(
            "[a, b]: c\n",
            "1:1: A list or a table can't be a key: a key is a word or two before a colon.",
            id="list as key",
        ),
        pytest.param(
            "- a\n- b\n",
            "1:1: This file should start with a key, like ‘name: …’, not with a list or a value.",
            id="list on top",
        ),
        pytest.param("", "1:1: This file is empty. Fill it in, or delete it.", id="empty"),
        pytest.param(
            "# x\n\n", "1:1: This file is empty. Fill it in, or delete it.", id="comments"
        ),
    ],
)
def test_what_a_studio_file_has_no_use_for_is_refused(text: str, expected: str) -> None:
    assert told(text) == [expected]


def test_an_alias_bomb_does_not_go_off() -> None:
    lines = ["a0: &a0 [x]"] + [f"a{n}: &a{n} [{f'*a{n - 1},' * 9}]" for n in range(1, 30)]
    tree, problems = read_tree("\n".join(lines), FILE)
    assert tree is None
    assert 0 < len(problems) <= MOST_FAULTS + 1


@pytest.mark.parametrize("depth", [39, 40, 100_000])
def test_nesting_has_an_end(depth: int) -> None:
    problems = told("a: " + "[" * depth + "]" * depth)
    too_deep = "Things are nested more than 40 deep here: some brackets or dashes are too many."
    assert problems == ([] if depth == 39 else [f"1:43: {too_deep}"])


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        pytest.param("a: b\x00c\n", "1:5: A character that can't be seen stands here (U+0000, "
                     "control character). Delete it.", id="nul"),
        pytest.param("a: b\u200bc\n", "1:5: A character that can't be seen stands here (U+200B, "
                     "zero width space). Delete it.", id="zero width"),
        pytest.param("a: b\u2028c\n", "1:5: A character that can't be seen stands here (U+2028, "
                     "line separator). Delete it.", id="line separator"),
        pytest.param("a:\u00a0b\n", "1:3: This space is a hard space, as copied from a letter or a "
                     "web page. Put an ordinary space in its place.", id="hard space"),
        pytest.param("a:\n\u00a0 b: c\n", "2:1: This space is a hard space, as copied from a "
                     "letter or a web page. Put an ordinary space in its place.", id="moved in"),
    ],
)  # fmt: skip
def test_a_character_nobody_sees_is_told(text: str, expected: str) -> None:
    assert told(text) == [expected]


@pytest.mark.parametrize("text", ["a: 5\u00a0cm\n", "a: naïve ☘ 花\n", "a: family 👩\u200d🌾\n"])
def test_letters_of_all_kinds_are_welcome(text: str) -> None:
    assert told(text) == []


def test_a_picture_is_not_taken_for_text() -> None:
    text = "".join(f"{chr(n % 32)}\n" for n in range(200))
    assert told(text)[0].endswith(
        "This is not a text file: it is full of characters that can't be seen."
    )


def test_a_huge_text_is_not_read() -> None:
    assert told("a: " + "x" * 2_000_001) == ["1:1: This file has over 2 MB of text. Split it."]


def test_a_file_in_which_everything_is_wrong_is_not_told_to_the_end() -> None:
    assert len(told("a:b\n" * 5_000)) == MOST_FAULTS + 1
    assert len(told("a:\n" * 5_000)) == MOST_FAULTS + 1
