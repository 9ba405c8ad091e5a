"""A command tells in the studio's language what the pages tell, and nothing past its end."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from corymb.language import spoken
from tests.cli.conftest import Run, change
from tests.language.made_up import made_up

GERMAN = """
msgid ""
msgstr "Content-Type: text/plain; charset=UTF-8\\n"

msgid "Stands"
msgstr "Blüht"

msgid "week {week}, {days}"
msgstr "Woche {week}, {days}"
"""


@pytest.fixture(autouse=True)
def _with_some_german(tmp_path: Path) -> Iterator[None]:
    (tmp_path / "said").mkdir()
    with made_up(tmp_path / "said", de=GERMAN):
        yield


def test_a_report_is_in_the_studios_language_and_an_error_in_english(
    studio: Path, run: Run
) -> None:
    change(studio / "content/studio.yml", "language: en-IE", "language: de-AT")
    told = run("season", "--on", "2026-07-30").output
    assert told.startswith("Woche 31, 27. ")
    assert "\nBlüht\n" in told
    assert "There is no recipe called ‘jug’." in run("show", "jug").output
    assert spoken() == "en"
