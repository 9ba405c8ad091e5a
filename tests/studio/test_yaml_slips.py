"""A slip of the hand is told in a sentence, at its place, with what would be right."""

from pathlib import Path

import pytest

from corymb.studio.yaml_tree import read_tree

FILE = Path("f.yml")


def told(text: str) -> list[str]:
    """The problems of a text as `LINE:COLUMN: message`."""
    return [str(problem).removeprefix("f.yml:") for problem in read_tree(text, FILE)[1]]


def check(text: str, *expected: str) -> None:
    """Whether a text has these problems and no others."""
    assert told(text) == list(expected)


SPACES = [
    pytest.param(
        "stems:\n\tdahlia: 1\n",
        "2:1: This line is moved in with a tab. Use spaces, two for each step.",
        id="tab",
    ),
    pytest.param(
        "stems:\n  a: 1\n  \tb: 1\n",
        "3:3: This line is moved in with a tab. Use spaces, two for each step.",
        id="tab after spaces",
    ),
    pytest.param(
        "care: |\n  Water.\n\tOften.\n",
        "3:1: This line is moved in with a tab. Use spaces, two for each step.",
        id="tab in kept lines",
    ),
    pytest.param(
        "a:\n  -\tx\n",
        "2:4: A tab stands beside this dash. Put a space in its place.",
        id="tab after dash",
    ),
    pytest.param(
        "name: x\ncount:7\nuse: focal\n",
        "2:6: After the colon comes a space: write ‘count: 7’.",
        id="no space after colon",
    ),
    pytest.param(
        "name:x\n", "1:5: After the colon comes a space: write ‘name: x’.", id="in the only line"
    ),
    pytest.param(
        "vessel:\n  kind:jar\n",
        "2:7: After the colon comes a space: write ‘kind: jar’. If it is text, put it in quotes.",
        id="taken for text",
    ),
    pytest.param(
        "vessel:\n  kind: jar\n    count:7\n",
        "3:10: After the colon comes a space: write ‘count: 7’. If it is text, put it in quotes.",
        id="taken for more text",
    ),
    pytest.param(
        "vessel: {kind:jar, name: pint}\n",
        "1:10: ‘kind:jar’ lacks a space after its colon: write ‘kind: jar’.",
        id="in braces",
    ),
    pytest.param(
        '"name":x\nb: 1\n',
        '1:7: After the colon comes a space: write ‘"name": x’.',
        id="behind a quoted key",
    ),
    pytest.param(
        "stems:\n  -3 dahlia, light\n",
        "2:3: After the dash comes a space: write ‘- 3 dahlia, light’.",
        id="no space after dash",
    ),
    pytest.param(
        "method:\n  - Strip\n  -Cut\n",
        "3:3: After the dash comes a space: write ‘- Cut’.",
        id="no space after one dash",
    ),
]

QUOTES = [
    pytest.param(
        'name: "Dahlia, shell\nuse: focal\nform: rosette\n',
        '1:7: The quote that opens here is never closed: add a " at its end.',
        id="never closed",
    ),
    pytest.param(
        "name: 'Dahlia\nuse: focal\nbed: 'north wall'\n",
        "1:7: The quote that opens here is never closed: add a ' at its end. "
        'If it is an apostrophe, write "\'Dahlia".',
        id="closed by the next one's opening",
    ),
    pytest.param(
        'a: 1\nb: "x\n',
        '2:4: The quote that opens here is never closed: add a " at its end.',
        id="in the last line",
    ),
    pytest.param(
        'a: ["x, y]\nb: 1\n',
        '1:5: The quote that opens here is never closed: add a " at its end.',
        id="in brackets",
    ),
    pytest.param(
        "name: 'Rook's wing'\n",
        "1:12: The quote is closed here by ', but the text goes on: "
        'write the whole as "Rook\'s wing".',
        id="apostrophe",
    ),
    pytest.param(
        'note: "He said "hi" to me"\n',
        '1:16: The quote is closed here by ", but the text goes on: '
        "write the whole as 'He said \"hi\" to me'.",
        id="speech",
    ),
    pytest.param(
        'name: "Rook" wing\n',
        '1:12: The quote is closed here by ", but the text goes on: '
        "write the whole as '\"Rook\" wing'.",
        id="only a word quoted",
    ),
    pytest.param(
        'note: "C:\\path"\n',
        "1:10: In double quotes a backslash changes what follows: "
        "use single quotes, or write two backslashes.",
        id="backslash",
    ),
    pytest.param(
        "name: “Dahlia: shell”\n",
        "1:14: A colon with a space after it makes a key, so a text that holds one goes in quotes: "
        'write "“Dahlia: shell”".',
        id="curly quotes don't count",
    ),
]

BRACKETS = [
    pytest.param(
        "hazards: [thorns, irritant sap\nname: x\n",
        "1:10: The bracket that opens here is never closed: add ] at its end.",
        id="never closed",
    ),
    pytest.param(
        "buckets:\n  - {name: tall, across: 29 cm\n  - {name: low}\n",
        "2:5: The bracket that opens here is never closed: add } at its end.",
        id="in a list",
    ),
    pytest.param(
        "a: [x,\n  y,\n  z\nb: 1\n",
        "1:4: The bracket that opens here is never closed: add ] at its end.",
        id="over lines",
    ),
    pytest.param(
        "a: [x, {b: c]\n",
        "1:8: The bracket that opens here is never closed: add } at its end.",
        id="inner one never closed",
    ),
    pytest.param(
        "hazards: [thorns}\n",
        "1:17: This bracket should be ], since it was opened with [.",
        id="another closes",
    ),
    pytest.param(
        "hazards: [thorns]]\n", "1:18: One bracket too many: take the last ] out.", id="too many"
    ),
    pytest.param(
        "note: [sic] words\n",
        "1:13: Text goes on after the closing bracket. If the bracket is part of the text, "
        'put the whole text in quotes: "[sic] words".',
        id="text in brackets",
    ),
    pytest.param(
        "a: [x, , y]\n",
        "1:8: There is nothing before this comma: take it out, or fill in what is missing.",
        id="two commas",
    ),
    pytest.param(
        "a: {x: 1 y: 2}\n",
        '1:11: A text that holds a colon goes in quotes: write "1 y: 2". '
        "If ‘y’ is a key, put a comma before it.",
        id="no comma",
    ),
    pytest.param(
        "a: {alt: A jar, with peas, credit: T}\n",
        "1:17: ‘with peas’ has no value. Between { and } a comma starts a new key: "
        "if it is part of a text, put the text in quotes.",
        id="a comma in text",
    ),
]

TEXTS = [
    pytest.param(
        "name: Dahlia: shell\n",
        "1:13: A colon with a space after it makes a key, so a text that holds one goes in quotes: "
        'write "Dahlia: shell".',
        id="colon",
    ),
    pytest.param(
        'name: 9" Dahlia: shell\n',
        "1:16: A colon with a space after it makes a key, so a text that holds one goes in quotes: "
        "write '9\" Dahlia: shell'.",
        id="colon beside a quote",
    ),
    pytest.param(
        "care: as follows:\n  - x\n",
        "1:7: A second colon ends this line, but its key has its value already: "
        "take out either ‘as follows:’ or what stands below it.",
        id="colon at the end",
    ),
    pytest.param(
        "photos: {alt: A jar: small, credit: T}\n",
        '1:20: A text that holds a colon goes in quotes: write "A jar: small". '
        "If ‘jar’ is a key, put a comma before it.",
        id="colon in braces",
    ),
    pytest.param(
        "email: @studio\n",
        '1:8: A text that starts with @ can\'t stand bare: write it in quotes, "@studio".',
        id="at",
    ),
    pytest.param(
        "note: *important*\n",
        '1:7: A text that starts with * can\'t stand bare: write it in quotes, "*important*".',
        id="star",
    ),
    pytest.param(
        "note: > 20 stems\n",
        '1:7: A text that starts with > can\'t stand bare: write it in quotes, "> 20 stems".',
        id="greater than",
    ),
    pytest.param(
        "a: 1\n}bed: x\nb: 2\n", "2:1: A key can't start with }: take it out.", id="before a key"
    ),
    pytest.param(
        "share: %80\n",
        '1:8: A text that starts with % can\'t stand bare: write it in quotes, "%80".',
        id="percent",
    ),
]


@pytest.mark.parametrize(("text", "expected"), SPACES)
def test_a_missing_space_or_a_tab_is_told(text: str, expected: str) -> None:
    check(text, expected)


@pytest.mark.parametrize(("text", "expected"), QUOTES)
def test_a_quote_that_goes_wrong_is_told_where_it_starts_to(text: str, expected: str) -> None:
    check(text, expected)


@pytest.mark.parametrize(("text", "expected"), BRACKETS)
def test_a_bracket_that_goes_wrong_is_told(text: str, expected: str) -> None:
    check(text, expected)


@pytest.mark.parametrize(("text", "expected"), TEXTS)
def test_a_text_that_needs_quotes_is_given_back_in_quotes(text: str, expected: str) -> None:
    check(text, expected)


def test_several_slips_are_told_in_one_run() -> None:
    check(
        "name: Dahlia: shell\ncount:7\nuse: 'x\nform: [a\nb: c\nb: d\n",
        "1:13: A colon with a space after it makes a key, so a text that holds one goes in quotes: "
        'write "Dahlia: shell".',
        "2:6: After the colon comes a space: write ‘count: 7’.",
        "3:6: The quote that opens here is never closed: add a ' at its end. "
        'If it is an apostrophe, write "\'x".',
        "4:7: The bracket that opens here is never closed: add ] at its end.",
        "6:1: ‘b’ stands here twice: the first is in line 5. Keep one of them.",
    )


def test_a_slip_that_leaves_no_doubt_still_gives_a_tree_to_look_into() -> None:
    tree, problems = read_tree("name: x\ncount:7\nuse: focal\n", FILE)
    assert len(problems) == 1
    assert tree is not None
    assert tree.data == {"name": "x", "count": "7", "use": "focal"}


def test_a_guess_gives_no_tree() -> None:
    tree, problems = read_tree("stems:\n  dahlia:\n    name: x\n   use: focal\n", FILE)
    assert len(problems) == 1
    assert tree is None


def test_a_problem_carries_the_line_as_it_was_written() -> None:
    [problem] = read_tree("name: x\n\tcount: 7\n", FILE)[1]
    assert problem.source == "\tcount: 7"
