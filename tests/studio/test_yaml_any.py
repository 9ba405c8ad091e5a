"""Whatever stands in a file, reading it ends in a tree or in sentences, never in an accident."""

import re
from pathlib import Path

import pytest
import yaml
from hypothesis import given, settings
from hypothesis import strategies as st

from corymb.studio.reading.scan import Scan
from corymb.studio.yaml_tree import decode, read_tree

FILE = Path("f.yml")
CONTENT = Path(__file__).parents[2] / "content"
YAMLS_OWN_WORDS = re.compile(
    r"mapping values|expected <|while scanning|while parsing|could not find|simple key"
    r"|did not find|block mapping|block sequence|cannot start any token|YAML"
)
SAMPLE = """\
# yaml-language-server: $schema=x
name: Hedgerow jar
summary: >-
  One or two sentences: a client reads them.
vessel: {kind: jar, name: "pint jar, tall", across: 9 cm}
stems:
  - 3 dahlia-shell, light, essential
  - stem: wild-carrot
    count: 4
    note: 'cut short, the maker''s way'
variants:
  later:
    swap:
      - 3 dahlia-shell -> 5 cosmos-white
    hours: 17:30-23:00
"""
PIECES = st.sampled_from(
    ["\t", '"', "'", ":", ": ", "#", " #", "-", "- ", "[", "]", "{", "}", ",", "&a ", "*a", "!",
     "|", ">", "\n", "  ", "?", "%", "@", "\u00a0", "\u200b", "x", "7", "<<: ", "---\n"]
)  # fmt: skip
KEYS = st.from_regex(r"[a-z]{1,6}( [a-z]{1,6})?", fullmatch=True)
VALUES = st.from_regex(r"[a-z0-9]([a-z0-9 .%-]{0,12}[a-z0-9])?", fullmatch=True)


def is_sound(text: str) -> None:
    """Whether a text ends in a tree or in problems with places in it."""
    tree, problems = read_tree(text, FILE)
    assert tree is not None or problems
    lines = text.split("\n")
    for problem in problems:
        assert 1 <= problem.line <= len(lines)
        assert 1 <= problem.column <= len(lines[problem.line - 1]) + 1
        assert not YAMLS_OWN_WORDS.search(problem.message)
        assert problem.message[-1] in ".?\"'"
        problem.shown()


@given(st.text(max_size=80))
def test_any_text_is_read_or_answered(text: str) -> None:
    is_sound(text)


@given(st.text(alphabet="ab: -[]{},'\"#\n|>&*!?%\t", max_size=60))
@settings(max_examples=400)
def test_any_heap_of_signs_is_read_or_answered(text: str) -> None:
    is_sound(text)


@given(st.lists(st.tuples(st.integers(0, len(SAMPLE)), PIECES), min_size=1, max_size=3))
@settings(max_examples=300)
def test_slips_anywhere_in_a_file_are_answered(slips: list[tuple[int, str]]) -> None:
    text = SAMPLE
    for at, piece in slips:
        text = text[:at] + piece + text[at:]
    is_sound(text)


@given(st.integers(0, len(SAMPLE) - 1), st.integers(1, 6))
@settings(max_examples=300)
def test_letters_missing_anywhere_in_a_file_are_answered(at: int, count: int) -> None:
    is_sound(SAMPLE[:at] + SAMPLE[at + count :])


@given(st.binary(max_size=60))
def test_any_bytes_become_text_or_a_problem(raw: bytes) -> None:
    text, problems = decode(raw, FILE)
    assert (text is None) == bool(problems)


TREES = st.recursive(
    VALUES,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(KEYS, inner, max_size=3),
    max_leaves=12,
)


@given(st.dictionaries(KEYS, TREES, min_size=1, max_size=4), st.booleans())
def test_what_a_yaml_writer_wrote_is_read_back_word_for_word(data: object, flow: bool) -> None:
    text = yaml.safe_dump(data, default_flow_style=flow, width=10_000)
    tree, problems = read_tree(text, FILE)
    assert problems == []
    assert tree is not None
    assert tree.data == data


@pytest.mark.parametrize(
    "file", sorted(CONTENT.rglob("*.yml")), ids=lambda file: str(file.relative_to(CONTENT))
)
def test_the_search_for_slips_finds_none_in_the_demo_studio(file: Path) -> None:
    assert Scan(file.read_text(encoding="utf-8").split("\n")).run() == []


def test_a_quote_that_is_closed_on_a_line_of_its_own_is_answered() -> None:
    is_sound('a:"\n*')
