"""One number changes in a recipe's file, and every other letter stays."""

from __future__ import annotations

import pytest

from corymb.studio.recipe_numbers import with_number

TEXT = """\
# A jar.
name: Gate jar
time:   20 min   # with the jar washed
stems:
  - 6   rose, light, essential  # the best
  - "4 mint, depth"
  - stem: poppy
    count: 2    # no more
    role: accent
  - {stem: fern, count: 3, role: depth}
variants:
  later:
    name: Later
    time: 1 h
    swap: [poppy -> lily, '2 mint -> 5 sage, depth']
    add:
      - 3 aster, accent
  long:
    swap:
      - out: mint
        in: sage
        in count: 4
      - {out: poppy, in: lily}
"""

LATER = ("variants", "later")
CHANGES: dict[str, tuple[tuple[str | int, ...], int, str, str]] = {
    "a line": (("stems", 0), 7, "- 6   rose", "- 7   rose"),
    "a line in quotes": (("stems", 1), 12, '"4 mint, depth"', '"12 mint, depth"'),
    "a long line": (("stems", 2), 3, "count: 2    #", "count: 3    #"),
    "a long line in braces": (("stems", 3), 4, "count: 3, role", "count: 4, role"),
    "the time": (("time",), 75, "time:   20 min   #", "time:   1 h 15 min   #"),
    "a variant's time": ((*LATER, "time"), 50, "time: 1 h\n", "time: 50 min\n"),
    "a swap without counts": ((*LATER, "swap", 0), 3, "[poppy -> lily,", "[poppy -> 3 lily,"),
    "a swap with counts": ((*LATER, "swap", 1), 6, "-> 5 sage", "-> 6 sage"),
    "an addition": ((*LATER, "add", 0), 2, "- 3 aster", "- 2 aster"),
    "a long swap": (("variants", "long", "swap", 0), 5, "in count: 4", "in count: 5"),
}


@pytest.mark.parametrize(("path", "number", "old", "new"), CHANGES.values(), ids=CHANGES)
def test_a_number_changes_where_it_stands(
    path: tuple[str | int, ...], number: int, old: str, new: str
) -> None:
    assert TEXT.count(old) == 1
    assert with_number(TEXT, path, number) == TEXT.replace(old, new)


def test_a_file_in_braces_keeps_what_it_says() -> None:
    assert "2 rose" in with_number("{name: Jar, stems: [1 rose]}\n", ("stems", 0), 2)


REFUSED = {
    "a long swap that gives no count": (TEXT, ("variants", "long", "swap", 1), "by hand"),
    "a file with an error": (TEXT + "name: Twice\n", ("time",), "put them right first"),
    "a value used twice": (
        "a: &line 2 rose\nstems:\n  - *line\n", ("stems", 0), "put them right first"
    ),
}  # fmt: skip


@pytest.mark.parametrize(("text", "path", "words"), REFUSED.values(), ids=REFUSED)
def test_what_can_t_be_changed_for_certain_is_left_to_the_hand(
    text: str, path: tuple[str | int, ...], words: str
) -> None:
    with pytest.raises(ValueError, match=words):
        with_number(text, path, 5)
