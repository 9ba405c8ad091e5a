"""Texts written into YAML: every reader takes them for the text they were."""

from pathlib import Path

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st
from ruamel.yaml import YAML

from corymb.studio.scalars import as_scalar
from corymb.studio.yaml_tree import read_tree

LINES = st.text(st.characters(codec="utf-8", exclude_categories=("C", "Z"), include_characters=" "))
FIDDLY = st.text("aB1 :#-\"'{}[],&*!|>%@`~?", min_size=1)


@pytest.mark.parametrize(
    ("text", "written"),
    [
        ("Hedgerow jar", "Hedgerow jar"),
        ("Dahlia, shell", "Dahlia, shell"),
        ("Teasel & Rook", "Teasel & Rook"),
        ("C#", "C#"),
        ("half past 9:30", "half past 9:30"),
        ("Picked: blue", '"Picked: blue"'),
        ("blue # white", '"blue # white"'),
        ("no", '"no"'),
        ("12", '"12"'),
        ("- jar", '"- jar"'),
        ('the "best"', 'the "best"'),
        ("ends with:", '"ends with:"'),
        ("two\n  lines", "two lines"),
    ],
)
def test_a_text_is_quoted_only_where_it_has_to_be(text: str, written: str) -> None:
    assert as_scalar(text) == written


@given(text=st.one_of(LINES, FIDDLY).map(lambda t: " ".join(t.split())).filter(bool))
def test_every_reader_reads_back_what_was_written(text: str) -> None:
    for file in (f"key: {as_scalar(text)}\n", f"key: {{in: {as_scalar(text, in_flow=True)}}}\n"):
        tree, problems = read_tree(file, Path("x.yml"))
        assert problems == []
        assert tree is not None
        for data in (tree.data, yaml.safe_load(file), YAML(typ="safe", pure=True).load(file)):
            assert data in ({"key": text}, {"key": {"in": text}})
