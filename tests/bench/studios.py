"""A studio of any size, made of the demo's: its recipes again and again, each with other stems.

The copies keep what makes a recipe heavy to build (variants, sizes, steps, notes); their stems are
others of the same use, each recipe's in its own way, so that no two are the same look. Every
recipe has a photo of its own. Orders stay the demo's: a studio's week doesn't grow with its book.
"""

from __future__ import annotations

import random
import re
import shutil
from pathlib import Path

from PIL import Image

from corymb.studio.load import read_studio
from corymb.studio.models import Stem
from corymb.studio.studio import Studio

DEMO = Path(__file__).parents[2] / "content"
SETTINGS = """\
site_name: A studio for measuring
site_url: https://flowers.example/
docs_dir: content/pages
use_directory_urls: false
theme:
  name: corymb
plugins:
  - corymb
"""
PHOTO_SIZE = (1600, 1200)
NAME = re.compile(r"^name: (.+)$", re.MULTILINE)
PHOTOS = re.compile(r"^photos:\n(?:[ -].*\n)+", re.MULTILINE)
DRAFT = re.compile(r"^draft: yes\n", re.MULTILINE)


def make_studio(folder: Path, recipes: int, photos: bool = True, seed: int = 7) -> Path:
    """Make a studio of so many recipes in an empty folder; its mkdocs.yml is returned."""
    content = folder / "content"
    shutil.copytree(DEMO, content)
    demo, _ = read_studio(content)
    assert demo is not None
    written = [file for file in sorted(content.glob("recipes/*/*.yml")) if _stands_alone(file)]
    dice = random.Random(seed)
    others = _others(demo)
    for number in range(max(0, recipes - len(demo.recipes))):
        model = written[number % len(written)]
        _copy(model, number // len(written) + 2, others, dice, photos)
    settings = folder / "mkdocs.yml"
    settings.write_text(SETTINGS, encoding="utf-8")
    return settings


def _stands_alone(file: Path) -> bool:
    return "\nbased on:" not in file.read_text("utf-8")


def _others(studio: Studio) -> dict[str, list[str]]:
    """By stem, those of the same use, sort of form and hazards: what a copy may have instead."""
    alike: dict[object, list[str]] = {}
    for known_as, stem in studio.stems.items():
        alike.setdefault(_sort_of(stem), []).append(known_as)
    return {known_as: alike[_sort_of(stem)] for known_as, stem in studio.stems.items()}


def _sort_of(stem: Stem) -> object:
    return stem.use, stem.head_length is None, frozenset(stem.hazards)


def _copy(
    model: Path, again: int, others: dict[str, list[str]], dice: random.Random, photo: bool
) -> None:
    text = model.read_text("utf-8")
    text = DRAFT.sub("", PHOTOS.sub("", text))
    text = NAME.sub(lambda name: f"name: {name[1]} {again}", text, count=1)
    text = _with_other_stems(text, others, dice)
    known_as = f"{model.stem}-{again}"
    if photo:
        file = model.parents[2] / "photos" / f"{known_as}.jpg"
        _photograph(file, dice)
        text += (
            f"photos:\n  - file: photos/{known_as}.jpg\n    alt: Colours for {known_as}\n"
            "    credit: made for measuring\n    may be shown to: clients\n"
        )
    (model.parent / f"{known_as}.yml").write_text(text, encoding="utf-8")


def _with_other_stems(text: str, others: dict[str, list[str]], dice: random.Random) -> str:
    """Every stem that the file names becomes another, and never two of them the same."""
    named = [s for s in others if re.search(rf"(?<![\w-]){re.escape(s)}(?![\w-])", text)]
    taken: set[str] = set()
    instead: dict[str, str] = {}
    for known_as in named:
        free = [other for other in others[known_as] if other not in taken]
        instead[known_as] = dice.choice(free)
        taken.add(instead[known_as])
    pattern = "|".join(sorted(map(re.escape, instead), key=len, reverse=True))
    return re.sub(rf"(?<![\w-])(?:{pattern})(?![\w-])", lambda found: instead[found[0]], text)


def _photograph(file: Path, dice: random.Random) -> None:
    """A photo that no other is like: soft patches of colour, cheap to make and to decode."""
    patches = Image.new("RGB", (16, 12))
    patches.putdata([tuple(dice.randrange(30, 240) for _ in range(3)) for _ in range(192)])
    patches.resize(PHOTO_SIZE, Image.Resampling.BICUBIC).save(file, quality=88)
