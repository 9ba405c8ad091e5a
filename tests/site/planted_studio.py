"""A small studio with a secret in every private place, its two sites, and where each secret was.

It is the starter of `corymb new studio`, with a file of every other kind from `small_studio/`
beside it. What clients may not see is replaced by secrets (`planting.py` lists what they may), and
so is the inside of its photos. What is called `zq90002hush` in `small_studio/` is a secret as it
stands: the name of a file or a folder, or something of a draft.
"""

from __future__ import annotations

import io
import json
import shutil
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

import yaml
from PIL import Image

import corymb
from corymb.site.build import build_sites
from corymb.site.settings import SiteSettings, read_settings
from corymb.studio.folder import FOLDERS
from corymb.views.pieces import AUDIENCES
from tests.photos.test_metadata import notes
from tests.site.found_secrets import WORDS
from tests.site.planting import Planter
from tests.site.secret_values import Secrets

STARTER = Path(corymb.__file__).parent / "starter" / "content"
SMALL = Path(__file__).parent / "small_studio"
CACHE = Path(__file__).parents[2] / ".cache" / "planted"

LAST_DAY = date(2027, 7, 7)
"""On it one of the style links stands, and the other is over."""

NAMED = "zq90000hush"
"""The folder that all lies in, on the machine."""

SETTINGS = f"""\
site_name: A small studio
site_url: https://garden.example/
docs_dir: content/pages
site_dir: by-mkdocs
use_directory_urls: false
theme: {{name: corymb}}
plugins:
  - corymb:
      cache: {CACHE}
"""


@dataclass(frozen=True)
class Planted:
    """The folder of the planted studio, and its secrets by where they were planted."""

    folder: Path
    secrets: Mapping[str, str]

    @property
    def settings(self) -> SiteSettings:
        """Those that its sites were built with."""
        return read_settings(self.folder / "mkdocs.yml")

    @property
    def clients(self) -> Path:
        """The clients' site."""
        return self.settings.output("clients")

    @property
    def staff(self) -> Path:
        """The staff's."""
        return self.settings.output("staff")


def planted_in(run: Path) -> Planted:
    """What `plant` made in a folder."""
    return Planted(run / NAMED, json.loads((run / "secrets.json").read_text("utf-8")))


def plant(run: Path) -> None:
    """Write the planted studio into a folder, and build both its sites beside it."""
    folder, secrets = run / NAMED, Secrets()
    secrets.named(NAMED, f"name: {NAMED}")
    shutil.copytree(STARTER, folder / "content")
    shutil.copytree(SMALL, folder / "content", dirs_exist_ok=True)
    for file in sorted((folder / "content").rglob("*.*")):
        _plant_in(file, folder / "content", secrets)
    (folder / "mkdocs.yml").write_text(SETTINGS, "utf-8")
    report = build_sites(read_settings(folder / "mkdocs.yml"), AUDIENCES, LAST_DAY)
    assert [str(problem) for problem in report.errors] == []
    (run / "secrets.json").write_text(json.dumps(secrets.planted), "utf-8")


def _plant_in(file: Path, content: Path, secrets: Secrets) -> None:
    kind, text = kind_of(file, content), file.read_text("utf-8")
    for word in WORDS.findall(f"{file.relative_to(content)} {text}".encode()):
        secrets.named(word.decode(), f"name: {word.decode()}")
    if file.suffix == ".md":
        _plant_in_prose(file, kind, secrets)
        return
    data = Planter.of(kind, secrets).planted(yaml.load(text, yaml.BaseLoader))
    for photo in _photos(data):
        _plant_in_photo(photo, content, secrets)
    _write(file, data)


def kind_of(file: Path, content: Path) -> str:
    """What is written in a file of the studio."""
    within = file.relative_to(content).parts
    if within[0] == "studio.yml":
        return "studio"
    return "standing" if "standing" in within else FOLDERS[within[0]]


def _write(file: Path, data: Any, below: str = "") -> None:
    text = yaml.safe_dump(data, sort_keys=False, allow_unicode=True)
    file.write_text(f"---\n{text}---\n{below}" if below else text, "utf-8")


def _photos(data: Any) -> list[dict[str, str]]:
    variants = data.get("variants", {})
    each = variants.values() if isinstance(variants, dict) else ()
    return [*data.get("photos", []), *(photo for one in each for photo in one.get("photos", []))]


def _plant_in_photo(photo: dict[str, str], content: Path, secrets: Secrets) -> None:
    """What is said of photos that clients may not see, and what a camera wrote into any."""
    who = photo["may be shown to"]
    if who != "clients":
        photo["alt"] = secrets.text(f"photo for {who}")
        photo["credit"] = secrets.text(f"photo for {who}")
    file = content / photo["file"]
    if not file.exists():
        file.parent.mkdir(exist_ok=True)
        file.write_bytes(_camera_file(file.name, secrets))


def _camera_file(name: str, secrets: Secrets) -> bytes:
    """A photo of one colour, another for each name, with all that a camera may note in it.

    The other places for a note, and other kinds of file, are tried in `tests/photos`.
    """
    colour = (int(name[2:7]) * 37 % 200, 120, 90)
    exif = notes(secrets.text(f"{name}: notes"))
    exif[0x9C9B] = secrets.text(f"{name}: title").encode("utf-16-le")  # XPTitle
    output = io.BytesIO()
    Image.new("RGB", (1280, 960), colour).save(
        output,
        "JPEG",
        exif=exif,
        xmp=f"<x:xmpmeta>{secrets.text(f'{name}: notes')}</x:xmpmeta>".encode(),
        comment=secrets.text(f"{name}: notes").encode(),
    )
    return output.getvalue()


def _plant_in_prose(file: Path, kind: str, secrets: Secrets) -> None:
    """Pages and lessons for staff: every word of the heading, and one below it."""
    _, heading, words = file.read_text("utf-8").split("---\n", 2)
    data = yaml.load(heading, yaml.BaseLoader)
    if data.get("for", "staff" if kind == "technique" else "everyone") == "staff":
        _write(file, Planter.of(kind, secrets).planted(data), f"{words}\n{secrets.text(file.name)}")
