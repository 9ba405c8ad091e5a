"""The words that are gathered for translators, once for all that look at them."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest
from babel.messages.catalog import Catalog
from babel.messages.frontend import CommandLineInterface
from babel.messages.pofile import read_po

ROOT = Path(__file__).parents[2]
COMMAND = re.compile(r"^ +\.venv/bin/(pybabel extract .+) -o \S+/corymb\.pot \.$", re.M)


@pytest.fixture(scope="session")
def gathered(tmp_path_factory: pytest.TempPathFactory) -> Catalog:
    """What the command that DEVELOPERS.md gives finds in code, templates and scripts."""
    file = tmp_path_factory.mktemp("words") / "messages.pot"
    found = COMMAND.search((ROOT / "DEVELOPERS.md").read_text("utf-8"))
    assert found
    command = [*shlex.split(found[1]), "-o", str(file), str(ROOT)]
    command.insert(1, "--quiet")
    command.remove("--no-location")
    at = command.index("-F") + 1
    command[at] = str(ROOT / command[at])
    CommandLineInterface().run(command)  # type: ignore[no-untyped-call]
    with file.open("rb") as written:
        return read_po(written)
