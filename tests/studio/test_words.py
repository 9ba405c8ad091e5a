"""The fixed words are told apart, described, and written as they are read."""

import ast
from pathlib import Path

import pytest

from corymb.studio import words

LISTS = {name: value for name, value in vars(words).items() if isinstance(value, tuple)}


@pytest.mark.parametrize(("name", "known"), LISTS.items(), ids=LISTS)
def test_a_list_of_words_has_none_twice(name: str, known: tuple[str, ...]) -> None:
    assert len({word.casefold() for word in known}) == len(known)


@pytest.mark.parametrize(("name", "known"), LISTS.items(), ids=LISTS)
def test_words_to_choose_from_are_small_letters(name: str, known: tuple[str, ...]) -> None:
    if name not in ("MONTHS", "WEEKDAYS"):
        assert [word.casefold() for word in known] == list(known)


def test_the_words_of_a_recipe_line_can_be_told_apart() -> None:
    in_a_line = (*words.ROLES, *words.USES, words.ESSENTIAL)
    assert len(set(in_a_line)) == len(in_a_line)


def test_long_forms_are_forms() -> None:
    assert set(words.LONG_FORMS) <= set(words.FORMS)


def test_every_list_says_what_it_is() -> None:
    body = ast.parse(Path(words.__file__).read_text(encoding="utf-8")).body
    for at, statement in enumerate(body):
        if isinstance(statement, ast.Assign):
            after = body[at + 1] if at + 1 < len(body) else None
            assert isinstance(after, ast.Expr), ast.unparse(statement)
