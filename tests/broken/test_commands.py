"""Whatever is wrong with a studio, every command says so and none stumbles over it."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.broken.bench import (
    HOUSE,
    JAR,
    ORDER,
    PHOTO,
    Case,
    break_it,
    case,
    good_studio,
    new_file,
)
from tests.slips.commands import ASKED, NEEDS_ALL, answer

SETTINGS = """\
site_name: Any
docs_dir: studio/pages
theme: {name: corymb}
plugins:
  - corymb: {studio: studio, cache: kept}
"""

SLIPS = [
    new_file("the studio's own file a photo", HOUSE, b"\xff\xd8\xff\xe0\x00\x10JFIF"),
    new_file("a recipe that isn't YAML", JAR, "name: [\n"),
    case("an order on no day", ORDER, "date: 2026-09-19", "date: 2026-09-31"),
]
NAMES = {"recipe": "hedgerow-jar", "order": "barn-supper"}


def asked(command: str, settings: Path) -> tuple[int, str, str]:
    """A command's answer about the studio beside its settings."""
    studio = settings.parent / "studio"
    out = {"out": str(settings.parent / "out.html"), "photo": str(studio / PHOTO)}
    return answer(command, settings, **NAMES, **out)


@pytest.mark.parametrize("slip", SLIPS, ids=lambda slip: slip.name)
def test_every_command_tells_what_is_wrong_and_where(slip: Case, tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    settings = tmp_path / "mkdocs.yml"
    settings.write_text(SETTINGS)
    break_it(studio, slip)
    place = re.compile(rf"{re.escape(slip.file)}:\d+:\d+: ")
    for command in ASKED:
        code, said, traceback = asked(command, settings)
        assert not traceback, f"{command}: {traceback}"
        if command in NEEDS_ALL:
            assert code == 1, f"{command}: {said}"
            assert place.search(said), f"{command}: {said}"
