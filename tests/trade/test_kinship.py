"""Which arrangements go with each other?"""

from __future__ import annotations

from collections.abc import Mapping
from random import Random

import pytest

from corymb.studio.models import Stem
from corymb.trade.changes import LookLine
from corymb.trade.kinship import (
    COMMON_WEEKS,
    FURTHEST,
    LOOKED_AT,
    MOST,
    NOTHING_SHARED,
    SAME_STYLE,
    Kin,
    Kinship,
    seen_of,
)
from corymb.trade.looks import Look
from tests.trade.making import stem

STEMS = {
    "rose": stem(),
    "peony": stem("peony", colours=["blush e9c3b5 100 %"]),
    "mint": stem("mint", colours=["green 6f8a5a 100 %"]),
    "plum": stem("plum", colours=["plum 4a1f3d 100 %"]),
}
YEAR = frozenset(range(1, 53))
JUNE = frozenset(range(23, 27))


def look(known_as: str, **counts: int) -> Look:
    """A look of so many of each stem."""
    lines = tuple(LookLine(s, n, "light", None, False, "") for s, n in counts.items())
    return Look(known_as, "", lines, lines)


LOOKS = {
    each.id: each
    for each in (
        look("jar", rose=4, mint=4),
        look("crown", rose=2, mint=2),
        look("posy", peony=3, mint=1),
        look("urn", plum=9),
    )
}


def kin(
    looks: Mapping[str, Look] = LOOKS,
    weeks: Mapping[str, frozenset[int]] | None = None,
    styles: Mapping[str, str] | None = None,
    stems: Mapping[str, Stem] = STEMS,
) -> dict[str, tuple[Kin, ...]]:
    each_its_own = {look_id: look_id for look_id in looks}
    all_year = {**dict.fromkeys(looks, YEAR), **(weeks or {})}
    known = styles or each_its_own
    kinship = Kinship({k: seen_of(looks[k], stems, all_year[k], known[k]) for k in looks})
    return {known_as: kinship.of(known_as) for known_as in looks}


def names(found: dict[str, tuple[Kin, ...]], of: str) -> list[str]:
    return [each.recipe for each in found[of]]


def test_the_same_flowers_and_colours_go_together_best() -> None:
    assert names(kin(), "jar") == ["crown", "posy"]
    first, second = kin()["jar"]
    assert (first.shared, first.palette, first.score) == (("mint", "rose"), 0, 0)
    assert second.shared == ("mint",)
    assert second.palette > 0


def test_what_shares_no_stem_and_no_colour_goes_with_nothing() -> None:
    assert kin()["urn"] == ()


def test_the_same_colours_alone_are_enough() -> None:
    looks = {"a": look("a", rose=3), "b": look("b", peony=3)}
    (only,) = kin(looks)["a"]
    assert only.shared == ()
    assert only.score == pytest.approx(NOTHING_SHARED + only.palette, abs=1e-6)
    assert only.palette < 1


def test_the_stem_most_seen_in_both_comes_first() -> None:
    looks = {"a": look("a", rose=6, mint=2), "b": look("b", rose=6, mint=1, plum=1)}
    assert kin(looks)["a"][0].shared == ("rose", "mint")


def test_a_piece_of_another_style_goes_before_one_of_the_same() -> None:
    looks = {each: look(each, rose=4) for each in ("a", "b", "c")}
    found = kin(looks, styles={"a": "posy", "b": "posy", "c": "crown"})
    assert names(found, "a") == ["c", "b"]
    assert [each.score for each in found["a"]] == [0, SAME_STYLE]


WEEKS = {
    "all of a short season": ({"crown": JUNE}, True),
    "a few weeks of both": ({"jar": frozenset(range(10, 26)), "crown": JUNE}, True),
    "two weeks of both": ({"jar": frozenset(range(10, 25)), "crown": JUNE}, False),
    "a season of two weeks, within the other's": ({"crown": frozenset({23, 24})}, True),
    "never at the same time": ({"jar": frozenset({1, 2, 3, 4}), "crown": JUNE}, False),
    "one is never made": ({"crown": frozenset()}, False),
    "neither is ever made": ({"jar": frozenset(), "crown": frozenset()}, False),
}


@pytest.mark.parametrize(("weeks", "together"), WEEKS.values(), ids=WEEKS)
def test_only_what_can_be_made_in_the_same_weeks_goes_together(
    weeks: dict[str, frozenset[int]], together: bool
) -> None:
    assert COMMON_WEEKS == 3
    found = kin(weeks=weeks)
    assert ("crown" in names(found, "jar")) is together
    assert ("jar" in names(found, "crown")) is together


def many(count: int) -> dict[str, Look]:
    """Looks of four stems each, by chance; the same each time."""
    chance = Random(7)
    return {
        name: look(name, **{s: chance.randrange(1, 9) for s in chance.sample(sorted(STEMS), 3)})
        for name in (f"look-{i:02d}" for i in range(count))
    }


def test_of_many_the_best_few_are_named_and_the_order_of_recipes_makes_no_difference() -> None:
    looks = many(LOOKED_AT + 20)
    found = kin(looks)
    assert any(len(others) == MOST for others in found.values())
    for look_id, others in found.items():
        assert len(others) <= MOST
        assert look_id not in names(found, look_id)
        assert [each.score for each in others] == sorted(each.score for each in others)
        assert all(each.score <= FURTHEST for each in others)
    assert found == kin(dict(reversed(looks.items())))
    assert found == kin(looks)


def test_two_that_go_together_are_as_near_from_either_side() -> None:
    found = kin(many(MOST + 1))  # so few that none is left out for others
    scores = {(a, each.recipe): each.score for a, others in found.items() for each in others}
    assert len(scores) > MOST
    assert scores == pytest.approx({(b, a): score for (a, b), score in scores.items()})


def test_a_stem_on_two_lines_counts_as_one() -> None:
    line = LookLine("rose", 2, "light", None, False, "")
    twice = Look("a", "", (line, LookLine("rose", 2, "depth", None, False, "")), ())
    (only,) = kin({"a": twice, "b": look("b", rose=4)})["a"]
    assert only.score == 0
