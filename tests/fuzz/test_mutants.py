"""A few of the ten thousand slips: each is told in its place, or a site is built of it."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.checks import read_and_check
from tests.fuzz.mutants import GOOD_ENDS, SEED, Bench, demo, drawn_for, try_all

EACH = 4
FILES = {
    "studio.yml": False,
    "stems/everlastings.yml": False,
    "recipes/buttonhole/frost-button.yml": False,
    "made/2026/first-light.yml": False,
    "orders/2026/christening-lunch.yml": False,
    "orders/standing/lantern-house.yml": False,
    "links/may-wedding.yml": False,
    "log/2025.yml": False,
    "walks/2026-W47.yml": False,
    "mkdocs.yml": False,
    "pages/about.md": True,
    "techniques/binding-a-crown.md": True,
}
"""A file of each kind, and whether sites are made of it here: where that takes a moment."""


@pytest.mark.parametrize("file", FILES)
def test_a_slip_in_a_file_of_the_demo_is_told_in_its_place_or_builds_a_site(
    file: str, tmp_path: Path
) -> None:
    (tmp_path / "cache").mkdir()
    numbers = list(range(1, EACH + 1))
    for tried in try_all(file, numbers, SEED, tmp_path, makes=FILES[file]):
        assert tried.verdict.came in GOOD_ENDS, f"{tried.told}\n{tried.shown}\n{tried.verdict.why}"


def test_a_little_studio_is_as_good_as_the_demo(tmp_path: Path) -> None:
    little = demo().around("made/2026/first-light.yml")
    bench = Bench(tmp_path, little)
    bench.lay_out()
    assert [p for p in read_and_check(bench.studio)[1] if not p.advice] == []
    assert bench.good is not None
    assert "first-light-posy" in bench.good.recipes


def test_a_slip_can_be_tried_again_by_its_number() -> None:
    files = demo().around("pages/about.md")
    assert drawn_for(files, "pages/about.md", 1, 5) == drawn_for(files, "pages/about.md", 1, 5)
