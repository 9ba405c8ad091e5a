"""Can a tick on a cut list or a bench sheet be found again in a later build, and counted?"""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.views.pieces import Audience
from tests.site.trees import tree_of

LISTS = ("cut/*.html", "orders/*-bench.html")


@pytest.mark.parametrize("pages", LISTS)
def test_every_row_has_a_key_of_its_own_and_every_list_another(
    pages: str, demo_sites: dict[Audience, Path]
) -> None:
    lists = [tree_of(file) for file in sorted(demo_sites["staff"].glob(pages))]
    names = [name for tree in lists for name in tree.xpath("//@data-ticks")]
    assert len({*names}) == len(names) == len(lists) >= 10
    for tree in lists:
        keys = tree.xpath("//@data-tick")
        assert keys and len({*keys}) == len(keys), keys


@pytest.mark.parametrize("pages", LISTS)
def test_what_is_left_at_first_is_all_that_the_rows_say(
    pages: str, demo_sites: dict[Audience, Path]
) -> None:
    for file in demo_sites["staff"].glob(pages):
        tree = tree_of(file)
        counts = [int(count) for count in tree.xpath("//@data-count")]
        said = tree.xpath("string(//output[@data-ticks-bar])").split()[0]
        assert sum(counts) == int(said), file
        shown = tree.xpath("//*[@data-row]//*[contains(concat(' ', @class, ' '), ' count ')]")
        assert len(shown) >= len(counts)


def test_a_key_says_nothing_of_the_rows_place(demo_sites: dict[Audience, Path]) -> None:
    """Of a stem on a day, and of a stem in a role in a look of an order: whatever stands before."""
    cut = tree_of(demo_sites["staff"] / "cut" / "2026-09-17.html")
    assert "flowers/dahlia-shell.html" in cut.xpath("//@data-tick")
    bench = tree_of(demo_sites["staff"] / "orders" / "barn-supper-bench.html")
    assert bench.xpath("//@data-ticks") == ["bench barn-supper 2026-09-19"]
    keys = bench.xpath("//@data-tick")
    assert "gleaners-trough short: light dahlia-shell for dahlia-shell" in keys
