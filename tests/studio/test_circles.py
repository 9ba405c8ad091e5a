"""What leads back to itself is found, each circle once."""

from __future__ import annotations

import pytest

from corymb.studio.circles import circles

CASES = [
    pytest.param({"a": "b", "b": "c", "c": ""}, [], id="a line"),
    pytest.param({"a": "b", "b": "b", "c": "a"}, ["bb"], id="one that names itself"),
    pytest.param({"b": "a", "a": "b", "c": "a"}, ["bab"], id="two, and one beside them"),
    pytest.param({"a": "b", "b": "c", "c": "a"}, ["abca"], id="three"),
    pytest.param({"a": "bc", "b": "a", "c": "a"}, ["aba", "aca"], id="two that share one"),
    pytest.param({"a": "b", "b": "a", "c": "d", "d": "c"}, ["aba", "cdc"], id="two apart"),
    pytest.param({"a": "x", "b": "y"}, [], id="names that lead nowhere"),
    pytest.param({}, [], id="nothing"),
]


@pytest.mark.parametrize(("leads", "found"), CASES)
def test_a_circle_is_told_once_from_its_first_name_on(
    leads: dict[str, str], found: list[str]
) -> None:
    assert sorted("".join(way) for way in circles(leads)) == found
