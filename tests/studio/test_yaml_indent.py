"""Lines that stand in the wrong place, or lack their key, are told by how they stand."""

from pathlib import Path

import pytest

from corymb.studio.yaml_tree import read_tree

FILE = Path("f.yml")

TOO_FAR = (
    "This line is moved in further than ‘{}’ above, which already has its value. Line the two up; "
    "if it goes on with the text above, put the whole text in quotes."
)
NOWHERE = (
    "This line is moved in by {}, and nothing above it stands there: line it up with what it "
    "belongs to, probably at {}."
)
DASH = (
    "This dash stands among keys. A list stands below its key, moved in by two spaces; if it "
    "belongs to the key above, that key's line ends with its colon."
)
NO_DASH = (
    "This line stands among dashes and has none: put a dash before it. If it goes on with the text "
    "above, move it in by two spaces; if it is a key, move it out to its fellows."
)
GOES_ON = (
    "This dash is taken as part of the text above it. Line it up with the other dashes; "
    "if it is text, put the whole text in quotes."
)
ON_LINE = (
    "A list with dashes starts on the line below its key, moved in by two spaces. "
    "If this is text, put it in quotes."
)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        pytest.param("name: x\n  use: y\n", f"2:3: {TOO_FAR.format('name')}", id="too far in"),
        pytest.param(
            "about: One two\n  three: four.\nname: x\n",
            f"2:3: {TOO_FAR.format('about')}",
            id="text with a colon that goes on",
        ),
        pytest.param(
            "stems:\n  - stem: carrot\n   count: 4\n",
            f"3:4: {TOO_FAR.format('stem')}",
            id="beside a key behind a dash",
        ),
        pytest.param(
            "a:\n    b: 1\n  c: 2\nd: 3\n",
            f"3:3: {NOWHERE.format('2 spaces', '4 spaces')}",
            id="between",
        ),
        pytest.param(
            "stems:\n  dahlia:\n    name: x\n   use: focal\n    form: y\n",
            f"4:4: {NOWHERE.format('3 spaces', '4 spaces')}",
            id="one short",
        ),
        pytest.param(
            "stems:\n  - 3 dahlia\n - 5 cosmos\n",
            f"3:2: {NOWHERE.format('one space', '2 spaces')}",
            id="a dash one short",
        ),
        pytest.param(
            "stems:\n - 1 dahlia\n  - 1 scabious\n  - stem: tall\n    count: 1\n",
            "3:3: This dash stands further in than those above it: line them all up.",
            id="dashes further in",
        ),
        pytest.param(
            "method:\n  - Cut.\n    name: x\n",
            "3:5: This line is moved in below the dash with ‘Cut.’, which is a text, not a key. "
            "Give the text its key and colon, or move this line out to line up with its fellows.",
            id="a key below a text",
        ),
        pytest.param(
            "stems:\n  - 3 dahlia\n   - 5 cosmos\n", f"3:4: {GOES_ON}", id="a dash too far"
        ),
        pytest.param("method: Strip\n  - Cut\n", f"2:3: {GOES_ON}", id="a list after a value"),
        pytest.param("method: - Strip\nx: 1\n", f"1:9: {ON_LINE}", id="a dash behind its key"),
        pytest.param("method: - Strip\n  - Cut\n", f"1:9: {ON_LINE}", id="and more below"),
        pytest.param("stems:\n  a: 1\n  - b\n", f"3:3: {DASH}", id="dash among keys"),
        pytest.param("method:\n  - a\n  b: 1\n", f"3:3: {NO_DASH}", id="key among dashes"),
        pytest.param(
            "method:\n  - Strip.\n  Cut the stems.\n  - Tie.\n",
            f"3:3: {NO_DASH}",
            id="text among dashes",
        ),
        pytest.param(
            "  name: x\nuse: y\n",
            "1:1: The first key of the file is moved in: it starts at the margin, like the others.",
            id="first key moved in",
        ),
        pytest.param(
            "name Dahlia\nuse: focal\n",
            "1:1: This line has no colon after its key: write it like ‘name: Dahlia’.",
            id="no colon",
        ),
        pytest.param(
            "stems:\n  dahlia\n    name: x\n",
            "2:9: This line has no colon after its key: write it like ‘dahlia:’.",
            id="no colon before a table",
        ),
        pytest.param(
            "about: One sentence here\nand it goes on for long.\nuse: x\n",
            "2:1: This line has no key. If it goes on with the text above, move it in by two "
            "spaces more than the line above; if it is a key, write it like "
            "‘and: it goes on for long.’.",
            id="text not moved in",
        ),
        pytest.param(
            ": x\na: 1\n",
            "1:1: There is no key before this colon: write ‘key: value’.",
            id="no key",
        ),
    ],
)
def test_a_line_in_the_wrong_place_is_told(text: str, expected: str) -> None:
    problems = read_tree(text, FILE)[1]
    assert [str(problem).removeprefix("f.yml:") for problem in problems] == [expected]


def test_two_lines_in_wrong_places_far_apart_are_both_told() -> None:
    text = "a:\n    b: 1\n  c: 2\nd:\n  e: 1\nf:\n    g: 1\n  h: 2\n"
    assert [problem.line for problem in read_tree(text, FILE)[1]] == [3, 8]


def test_where_nothing_tells_what_is_wrong_the_place_is_shown_with_what_to_look_for() -> None:
    [problem] = read_tree("name: x\n>\n", FILE)[1]
    assert str(problem) == (
        "f.yml:2:1: Reading stops here. Look at this line and the one above: is a quote or bracket "
        "left open, a colon without its space, or a line moved in differently from those beside it?"
    )
