"""The ledger says what working all out anew would, and works out no more than it must."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.ledger import AsAsked, Followed, Ledger, kept


class Garden:
    """Stems and their counts, and three things worked out of them, one of the other."""

    def __init__(self, follows: bool = True) -> None:
        self.ledger = Ledger(follows)
        self.known_as = "garden"
        self.counts: Followed[str, int] = Followed(self.ledger, "counts")
        self.asked: list[str] = []

    @kept
    def is_many(self, stem: str) -> bool:
        self.asked.append(f"many {stem}")
        return self.counts[stem] > 9

    @kept
    def plenty(self) -> tuple[str, ...]:
        self.asked.append("plenty")
        return tuple(stem for stem in self.counts if self.is_many(stem))

    @kept
    def said(self) -> str:
        self.asked.append("said")
        return ", ".join(self.plenty())

    @kept
    def of(self, stem: str) -> int:
        return int(self.counts.get(stem, 0)) + self.doubled(stem)

    @kept
    def doubled(self, stem: str) -> int:
        return 2 * self.counts[stem]


BEFORE = {"dahlia": 20, "aster": 5}


@pytest.mark.parametrize(
    ("after", "again", "says"),
    [
        pytest.param(BEFORE, [], "dahlia", id="nothing"),
        pytest.param({"dahlia": 30, "aster": 5}, ["many dahlia"], "dahlia", id="to-the-same-end"),
        pytest.param(
            {"dahlia": 20, "aster": 12},
            ["many aster", "plenty", "said"],
            "dahlia, aster",
            id="to-another",
        ),
        pytest.param({"dahlia": 20}, ["plenty"], "dahlia", id="gone-unmissed"),
        pytest.param({"aster": 5}, ["plenty", "said"], "", id="gone"),
        pytest.param(
            {**BEFORE, "cosmos": 11}, ["plenty", "many cosmos", "said"], "dahlia, cosmos", id="new"
        ),
        pytest.param({"aster": 5, "dahlia": 20}, ["plenty"], "dahlia", id="another-order"),
    ],
)
def test_only_what_an_edit_touches_is_worked_out_again(
    after: dict[str, int], again: list[str], says: str
) -> None:
    garden = Garden()
    garden.counts.become(BEFORE)
    assert garden.said() == "dahlia"
    garden.asked.clear()
    garden.counts.become(after)
    assert garden.said() == says
    assert garden.asked == again


def test_what_failed_is_tried_again_and_what_got_on_without_it_learns_of_it() -> None:
    garden = Garden()

    def or_none() -> int | None:
        try:
            return garden.of("dahlia")
        except KeyError:
            return None

    ask: Callable[[], int | None] = lambda: garden.ledger.of(("or none",), or_none)  # noqa: E731
    assert ask() is None
    garden.counts.become({"dahlia": 2})
    assert ask() == 6
    garden.counts.become({})
    assert ask() is None


def test_a_ledger_that_does_not_follow_remembers_for_good() -> None:
    garden = Garden(follows=False)
    garden.counts.become(BEFORE)
    assert garden.said() == "dahlia"
    garden.counts.become({})
    assert garden.said() == "dahlia"


def test_a_mapping_as_asked_works_out_no_more_than_is_asked_for() -> None:
    made: list[str] = []

    def value(name: str) -> str:
        made.append(name)
        return name.upper()

    shelf = AsAsked(lambda: ("a", "b"), lambda name: name in "ab", value)
    assert shelf["a"] == "A"
    assert ("b" in shelf, "c" in shelf, len(shelf), list(shelf)) == (True, False, 2, ["a", "b"])
    assert made == ["a"]
    with pytest.raises(KeyError):
        shelf["c"]


COUNTS = st.dictionaries(st.sampled_from("abcd"), st.integers(0, 20), max_size=4)
READS = st.lists(st.lists(st.integers(0, 9), max_size=4), min_size=1, max_size=8)


@given(st.lists(COUNTS, min_size=1, max_size=6), READS)
def test_after_any_edits_it_says_what_a_new_one_would(
    edits: list[dict[str, int]], reads: list[list[int]]
) -> None:
    """Cells that read counts (0 to 3: by name, 4: the names) and cells before them, and branch."""
    ledger = Ledger(follows=True)
    counts: Followed[str, int] = Followed(ledger, "counts")

    def cell(number: int) -> int:
        return int(ledger.of(("cell", number), lambda: worked_out(number, counts, cell)))

    def worked_out(number: int, source: dict[str, int], below: Callable[[int], int]) -> int:
        total = 0
        for read in reads[number]:
            if total % 3 == 2:  # what is read next hangs on what was read before
                continue
            if read < 4:
                total += source.get("abcd"[read], 0)
            elif read == 4:
                total += sum(map(ord, source))
            elif number:
                total += below(read % number) % 5
        return total

    for edit in edits:
        counts.become(edit)
        plain: dict[int, int] = {}
        for number in range(len(reads)):
            plain[number] = worked_out(number, edit, plain.__getitem__)
        for number in reversed(range(len(reads))):
            assert cell(number) == plain[number]
