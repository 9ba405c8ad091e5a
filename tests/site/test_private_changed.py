"""Can anything private be told from what clients see by comparing, or working back?

A search for secrets finds what is copied. What is worked out from them (a rounded price, a size, an
order of things, a date) is found by changing them all: clients then see the same, to the byte.
"""

from __future__ import annotations

import shutil
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import pytest
import yaml

from corymb.site.build import build_sites
from tests.site.planted_studio import LAST_DAY, Planted, kind_of
from tests.site.planting import Planter
from tests.site.secret_values import Secrets

PRIVATE_AS_A_WHOLE = ("orders", "walks")
PLACES = ("place", "reference place")
"""From them follows when a flower stands, which clients see."""


@dataclass
class Others(Secrets):
    """Secrets that are far from those which were planted first."""

    def number(self, where: str, places: int = 0, short: bool = False) -> str:
        """About a third as large."""
        first = super().number(where, places, short)
        return f"{float(first) / 3:.{places}f}"

    def count(self, where: str) -> str:
        """About a tenth."""
        return super().count(where)[:4]


def change_private_values(content: Path, secrets: Secrets) -> None:
    for file in sorted(content.rglob("*.yml")):
        kind, data = kind_of(file, content), yaml.load(file.read_text("utf-8"), yaml.BaseLoader)
        changed: dict[str, Any] = Planter.of(kind, secrets).planted(data)
        changed |= {key: data[key] for key in PLACES if key in data}
        file.write_text(yaml.safe_dump(changed, sort_keys=False, allow_unicode=True), "utf-8")


@pytest.fixture
def clients_of_changed(planted: Planted, tmp_path: Path) -> Path:
    """The clients' site of the same studio where everything private is another, or not there."""
    content, secrets = tmp_path / "content", Others()
    shutil.copytree(planted.folder / "content", content)
    change_private_values(content, secrets)
    assert len(secrets.planted) > 200
    for path in PRIVATE_AS_A_WHOLE:
        shutil.rmtree(content / path)
    elsewhere = replace(
        planted.settings, config_file=tmp_path / "mkdocs.yml", studio_folder=content
    )
    report = build_sites(elsewhere, ["clients"], LAST_DAY)
    assert [str(problem) for problem in report.errors] == []
    return tmp_path / "clients"


def contents(site: Path) -> dict[str, bytes]:
    files = (file for file in site.rglob("*") if file.is_file())
    return {file.relative_to(site).as_posix(): file.read_bytes() for file in files}


def test_clients_see_the_same_to_the_byte_whatever_is_private(
    planted: Planted, clients_of_changed: Path
) -> None:
    before, after = contents(planted.clients), contents(clients_of_changed)
    assert len(before) > 50
    assert [path for path in before | after if before.get(path) != after.get(path)] == []
