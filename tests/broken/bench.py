"""How is a good studio broken, and what must be said of it?

A case changes one file of `studio/` (or brings a new one) and lists all that must be told:
nothing else may be.
"""

from __future__ import annotations

import shutil
from dataclasses import dataclass, field
from pathlib import Path

from PIL import Image

GOOD = Path(__file__).parent / "studio"
PHOTO = "photos/hedgerow-jar.jpg"

HOUSE = "studio.yml"
DAHLIAS = "stems/dahlias.yml"
ANNUALS = "stems/annuals.yml"
JAR = "recipes/posy/hedgerow-jar.yml"
WINDOW = "recipes/posy/window-jar.yml"  # based on the jar
URN = "recipes/urn/hall-urn.yml"
MADE = "made/2025/long-table.yml"
ORDER = "orders/2026/barn-supper.yml"
STANDING = "orders/standing/lantern-house.yml"
WALK = "walks/2026-W38.yml"
LOG = "log/2025.yml"
LINK = "links/barn-supper.yml"
PAGE = "pages/care.md"
LESSON = "techniques/tying.md"
FIRST_LESSON = "techniques/conditioning.md"


@dataclass(frozen=True)
class Told:
    """What must be said: where, and a part of the sentence that says what would be right."""

    line: int
    column: int
    says: str
    file: str = ""
    advice: bool = False


@dataclass(frozen=True)
class Case:
    """A slip: in `file` the text `old` becomes `new`; a file with no `old` is written afresh."""

    name: str
    file: str
    old: str
    new: str | bytes
    told: tuple[Told, ...] = field(default=())


def case(name: str, file: str, old: str, new: str, *told: Told) -> Case:
    """A text of a file changed by a hand."""
    return Case(name, file, old, new, told)


def new_file(name: str, file: str, text: str | bytes, *told: Told) -> Case:
    """A file that is new, or written over."""
    return Case(name, file, "", text, told)


def at(line: int, column: int, says: str, file: str = "") -> Told:
    """An error, in the changed file unless another is named."""
    return Told(line, column, says, file)


def advice(line: int, column: int, says: str, file: str = "") -> Told:
    """Advice, which stops nothing."""
    return Told(line, column, says, file, advice=True)


def good(file: str) -> str:
    """The text of a file of the good studio."""
    return (GOOD / file).read_text(encoding="utf-8")


def good_studio(folder: Path) -> Path:
    """A copy of the good studio in `folder`, with a real little photo."""
    studio = folder / "studio"
    shutil.copytree(GOOD, studio)
    (studio / "photos").mkdir()
    Image.new("RGB", (48, 32), (232, 194, 180)).save(studio / PHOTO)
    return studio


def break_it(studio: Path, case: Case) -> None:
    """Let the hand slip."""
    file = studio / case.file
    if not case.old:
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(case.new if isinstance(case.new, bytes) else case.new.encode("utf-8"))
        return
    assert isinstance(case.new, str)
    text = file.read_text(encoding="utf-8")
    assert text.count(case.old) == 1, f"{case.old!r} stands {text.count(case.old)} times in it"
    file.write_text(text.replace(case.old, case.new), encoding="utf-8")
