"""Do the typefaces come with their licences, small, and with the letters of names?"""

from __future__ import annotations

from pathlib import Path

import pytest
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from tests.theme.sources import FONTS, name_of

FACES = sorted(FONTS.glob("*.woff2"))
LETTERS = "ABCXYZabcxyz0123456789 áéíóúàèçñäöüåøßœæÁÉÍÓÚÖÜ ‘’“”–—…·€£%&@×"
ENGLISH = "ABCXYZabcxyz0123456789é ‘’“”–—…·€£%&@×"


def test_all_faces_together_are_small() -> None:
    assert sum(face.stat().st_size for face in FACES) <= 110_000


@pytest.mark.parametrize("face", FACES, ids=name_of)
def test_a_face_has_the_letters_of_western_europe(face: Path) -> None:
    family = face.stem.removesuffix("-more").removesuffix("-bold")
    known = {*TTFont(face).getBestCmap(), *TTFont(FONTS / f"{family}-more.woff2").getBestCmap()}
    known |= TTFont(FONTS / f"{family}.woff2").getBestCmap().keys()
    assert [letter for letter in LETTERS if ord(letter) not in known] == []


def test_an_english_page_gets_all_it_needs_from_few_bytes() -> None:
    english = [face for face in FACES if not face.stem.endswith("-more")]
    assert all({*map(ord, ENGLISH)} <= TTFont(face).getBestCmap().keys() for face in english)
    assert sum(face.stat().st_size for face in english) <= 82_000


@pytest.mark.parametrize("face", FACES, ids=name_of)
def test_a_face_travels_with_its_licence(face: Path) -> None:
    rows = [line for line in (FONTS / "README.md").read_text("utf-8").splitlines() if "|" in line]
    row = next(line for line in rows if f"`{face.name}`" in line)
    licence = row.split("`")[-2]
    assert "SIL OPEN FONT LICENSE Version 1.1" in (FONTS / licence).read_text("utf-8")
