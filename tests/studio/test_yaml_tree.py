"""A file is read word for word: nothing is converted, and every piece knows its place."""

import pickle
from pathlib import Path

import pytest

from corymb.studio.yaml_tree import Tree, Written, read_tree

FILE = Path("stems.yml")


def read(text: str) -> Tree:
    """The tree of a text in which nothing is wrong."""
    tree, problems = read_tree(text, FILE)
    assert problems == []
    assert tree is not None
    return tree


@pytest.mark.parametrize(
    "raw",
    ["no", "on", "~", "null", "12:30", "17:30-23:00", "007", "1_000", "1e3", "0x1f", "e8c2b4",
     "2026-09-19", "85 %", "-7.1", ".5", "3 dahlia-shell", "a -> b", "5c2b40", "=", "Rook's wing",
     "https://garden.example/a#b", "at 5:30", "mix 1:10", "x, y", "“quoted”"],
)  # fmt: skip
def test_a_value_is_its_raw_text(raw: str) -> None:
    value = read(f"key: {raw}\n").data["key"]
    assert value == raw
    assert isinstance(value, Written)
    assert not value.quoted


@pytest.mark.parametrize(
    ("text", "value"),
    [
        pytest.param('key: "no"', "no", id="double quotes"),
        pytest.param("key: 'Rook''s'", "Rook's", id="single quotes"),
        pytest.param('key: ""', "", id="nothing in quotes"),
        pytest.param("key: |\n  one\n  two: three\n", "one\ntwo: three\n", id="kept lines"),
        pytest.param("key: >\n  one\n  two\n", "one two\n", id="joined lines"),
        pytest.param('key: "one\n  two: three"', "one two: three", id="quotes over two lines"),
    ],
)
def test_a_text_in_quotes_knows_that_it_was(text: str, value: str) -> None:
    written = read(text).data["key"]
    assert written == value
    assert written.quoted


def test_a_bare_text_may_go_on_below() -> None:
    assert read("about: One two\n  three.\nname: x\n").data == {
        "about": "One two three.",
        "name": "x",
    }


@pytest.mark.parametrize(
    "text",
    ['{"a": {"b": ["x", "y"]}}', "a: {b: [x, y]}", "a:\n  b:\n    - x\n    - y\n",
     "a:\n  b:\n  - x\n  - y\n", "a: {\n  b: [x,\n    y]\n}\n", "---\na:\n  b: [x, y]\n...\n",
     "# a comment\na:   # another\n  b: [x, y]   # and one more\n"],
    ids=["json", "flow", "block", "dashes under key", "flow over lines", "marked", "comments"],
)  # fmt: skip
def test_all_ways_of_writing_it_give_the_same(text: str) -> None:
    assert read(text).data == {"a": {"b": ["x", "y"]}}


TEXT = """\
# first line
group: Dahlias
stems:
  dahlia-shell:
    name:  "Dahlia, shell"
    colours:
      - shell e8c2b4 80 %
      - {name: heart, hex: c98472}
"""


@pytest.mark.parametrize(
    ("path", "place"),
    [
        pytest.param(("group",), (2, 8), id="a value"),
        pytest.param(("stems", "dahlia-shell", "name"), (5, 12), id="a quoted value"),
        pytest.param(("stems", "dahlia-shell"), (5, 5), id="a table"),
        pytest.param(("stems", "dahlia-shell", "colours", 0), (7, 9), id="an item"),
        pytest.param(("stems", "dahlia-shell", "colours", 1, "hex"), (8, 28), id="in braces"),
        pytest.param(("stems", "dahlia-shell", "colours", 5), (7, 7), id="no such item"),
        pytest.param(("stems", "dahlia-shell", "use"), (5, 5), id="no such key"),
        pytest.param(("nothing", "here"), (2, 1), id="nothing known"),
        pytest.param((), (2, 1), id="the whole"),
    ],
)
def test_a_value_knows_its_place(path: tuple[str | int, ...], place: tuple[int, int]) -> None:
    assert read(TEXT).place(path) == place


@pytest.mark.parametrize(
    ("path", "place"),
    [
        pytest.param(("stems", "dahlia-shell", "name"), (5, 5), id="a key"),
        pytest.param(("stems",), (3, 1), id="a key with a table"),
        pytest.param(("stems", "dahlia-shell", "colours", 1, "hex"), (8, 23), id="in braces"),
        pytest.param(("stems", "dahlia-shell", "colours", 1), (8, 9), id="an item has no key"),
        pytest.param(("stems", "dahlia-shell", "use"), (5, 5), id="no such key"),
    ],
)
def test_a_key_knows_its_place(path: tuple[str | int, ...], place: tuple[int, int]) -> None:
    assert read(TEXT).key_place(path) == place


def test_a_written_text_carries_its_own_place() -> None:
    name = read(TEXT).data["stems"]["dahlia-shell"]["name"]
    assert (name.line, name.column, name.quoted) == (5, 12, True)


def test_a_tree_can_be_kept_for_later() -> None:
    tree = read(TEXT)
    again = pickle.loads(pickle.dumps(tree))
    assert again == tree
    name = again.data["stems"]["dahlia-shell"]["name"]
    assert (name.line, name.column, name.quoted) == (5, 12, True)


def test_a_key_without_a_value_is_told_of_and_left_out() -> None:
    tree, problems = read_tree("name: x\nvariants:\n", FILE)
    assert tree is not None
    assert tree.data == {"name": "x"}
    assert tree.left_out == {("variants",)}
    assert len(problems) == 1


def test_places_count_letters_not_bytes() -> None:
    tree = read("é: ü\nß: {ä: ö, x: y}\n")
    assert tree.place(("ß", "x")) == (2, 14)
