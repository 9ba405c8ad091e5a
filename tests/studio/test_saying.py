"""Lists and counts, as one says them."""

import pytest

from corymb.studio.saying import and_list, counted, or_list


@pytest.mark.parametrize(
    ("words", "all_of_them", "one_of_them"),
    [
        ([], "", ""),
        (["a"], "a", "a"),
        (["a", "b"], "a and b", "a or b"),
        (["a", "b", "c"], "a, b and c", "a, b or c"),
    ],
)
def test_words_are_listed_as_one_says_them(
    words: list[str], all_of_them: str, one_of_them: str
) -> None:
    assert and_list(words) == all_of_them
    assert or_list(words) == one_of_them


@pytest.mark.parametrize(
    ("count", "said"), [(0, "0 stems"), (1, "1 stem"), (2, "2 stems"), (56, "56 stems")]
)
def test_one_is_said_as_one(count: int, said: str) -> None:
    assert counted(count, "stem", "stems") == said
