"""There is no float anywhere in the studio's money: every amount is exact."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

import corymb.trade.money

MODULES = sorted(Path(corymb.trade.money.__file__).parent.glob("*.py"))


def floats(source: str) -> list[int]:
    """The lines on which a float stands, or is made or asked for."""
    return [
        node.lineno
        for node in ast.walk(ast.parse(source))
        if (isinstance(node, ast.Constant) and isinstance(node.value, float))
        or (isinstance(node, ast.Name) and node.id in ("float", "round"))
    ]


@pytest.mark.parametrize("module", MODULES, ids=[module.stem for module in MODULES])
def test_no_module_of_money_knows_a_float(module: Path) -> None:
    assert floats(module.read_text(encoding="utf-8")) == []


def test_a_float_would_be_found() -> None:
    assert floats("a = 1\nb = 1.5\nc = float(a)\n") == [2, 3]
