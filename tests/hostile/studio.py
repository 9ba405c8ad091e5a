"""A studio whose every free text is an attack, made of the good studio by the models' types.

Each text holds all attacks at once, behind a name of its own by which it is found again.
"""

from __future__ import annotations

import shutil
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import Any

import yaml
from PIL import Image

from corymb.site.build import build_sites
from corymb.site.settings import SiteSettings
from corymb.studio.folder import Found, files_of
from corymb.studio.models import Sundry
from corymb.studio.shape import as_model
from corymb.studio.values import text
from corymb.studio.values.friendly import Friendly
from corymb.views.pieces import AUDIENCES
from tests.broken.bench import GOOD, PHOTO
from tests.site.planting import Planter, reader_of
from tests.site.secret_values import Secrets

DAY = date(2026, 9, 16)
MAIL = "o'neil&cc=x+1'={7*7}@garden.example"
ATTACK = (
    "\"><script>window.broken=1</script> '+alert(1)+' ' onmouseover='window.broken=1' "
    "</title></textarea></script></style><!-- --!> ]]> {{7*7}} {% raise %} {name} %s %(n)s "
    "${7*7} <img src=x onerror=window.broken=1><svg onload=window.broken=1> &lt;b&gt; &#60; "
    "javascript:window.broken=1 a{}</style>} %0d%0aBcc:x \\r\\n"
)
BEGINNINGS = ("=cmd|' /C calc'!A0", "@SUM(1+1)", "+1+1", "-2+3", "=1+1")
"""What a spreadsheet would work out."""

LINES = ("\r\nATTENDEE:mailto:x@y.example\r\nEND:VEVENT", "\nBEGIN:VALARM", "\rURL:x", "\tT")
"""What would begin a new line, of a calendar for one."""

PHOTOS = (
    "two words, a #1 and 100%.jpg",
    "what?&x=1;.jpg",
    '"it\'s" <b>.jpg',
    "%2e%2e%2fτριαντάφυλλο.jpg",  # noqa: RUF001 (Greek)
    "وردة.jpg",
    "गुलाब.jpg",
    "薔薇🌹.jpg",
    "rose\N{COMBINING ACUTE ACCENT}.jpg",
    "-rf.JPG",
    "n" * 240 + ".jpg",
)
"""Names that photos come with; each is shown with the made work."""

PROSE = """
# {name}

{attack}

<script>window.broken=1</script>

<iframe src="javascript:window.broken=1"></iframe>

<p style="color: red" onclick="window.broken=1">painted</p>

## A heading {{: onclick="window.broken=1" style="color: red" }}

| Number | Word |
| ---: | :---: |
| 1 | one |

``` {{ .python onclick="window.broken=1" style="color: red" }}
print("</script>")
```
"""


@dataclass
class Attacks(Secrets):
    """Hands out attacks; the same for the same text, so that a thing still goes by its name."""

    given: dict[str, str] = field(default_factory=dict)

    def text(self, where: str, instead_of: str = "") -> str:
        if instead_of not in self.given:
            number = len(self.given)
            name = f"hz{number:04d}{LINES[number // 2 % len(LINES)] if number % 2 else ''}"
            begin = f"{BEGINNINGS[number % len(BEGINNINGS)]} {name}" if number % 3 else name
            self.given[instead_of] = f"{begin} {ATTACK}"
        return self.given[instead_of]


class Attacked(Planter):
    """Puts an attack in the place of every text, and leaves all else as it is."""

    def _secret(self, written: str, hint: Any, path: tuple[str, ...]) -> Any:
        model = as_model(hint)
        if model is Sundry:
            return {"name": self.secrets.text("sundry", written), "count": "1", "cost": "1.20"}
        if model:
            return written
        reader = reader_of(hint)
        if path[-1] in ("file", "code"):  # a photo's place, and a part of an address
            return written
        if isinstance(reader, Friendly) and reader.parse is text.parse_text:
            return self.secrets.text(self.kind, written)
        return written


def settings_in(folder: Path) -> SiteSettings:
    """With an extension that lets a text name attributes of its own, which studios do choose."""
    return SiteSettings(
        config_file=folder / "mkdocs.yml",
        studio_folder=folder / "content",
        cache_folder=folder / "cache",
        site_url="https://garden.example/",
        staff_url="https://bench.garden.example/",
        markdown_extensions=("fenced_code", "attr_list", "footnotes", "def_list"),
    )


def write_hostile(folder: Path) -> None:
    """The studio's files with an attack in every text, and photos of odd names."""
    shutil.copytree(GOOD, folder)
    (folder / "photos").mkdir()
    Image.new("RGB", (96, 64), (232, 194, 180)).save(folder / PHOTO)
    for number, name in enumerate(PHOTOS):
        Image.new("RGB", (8, 8), (9 * number, 80, 60)).save(folder / "photos" / name, "JPEG")
    attacks = Attacks()
    for found in list(files_of(folder)):
        assert isinstance(found, Found), str(found)
        _attack(found, attacks)


def _attack(found: Found, attacks: Attacks) -> None:
    """Write a file anew, a page or a lesson with a text that no page should obey."""
    words = found.file.read_text("utf-8")
    is_text = found.file.suffix == ".md"
    heading = words.split("---\n")[1] if is_text else words
    data = Attacked(found.kind, attacks).planted(yaml.load(heading, yaml.BaseLoader))
    _change(found.kind, data)
    text = yaml.dump(data, Dumper=Quoting, sort_keys=False, allow_unicode=True, width=100_000)
    prose = PROSE.format(name=found.id, attack=ATTACK)
    found.file.write_text(f"---\n{text}---\n{prose}" if is_text else text, "utf-8")


def _change(kind: str, data: dict[str, Any]) -> None:
    """What is no text."""
    if kind == "studio":
        data["contact"]["email"] = MAIL
    if kind == "standing":  # one visit is enough
        data |= {"from": "2026-09-22", "until": "2026-09-22", "skip": [], "moved": {}}
    if kind == "made":
        (shown,) = data["photos"]
        data["photos"] += [{**shown, "file": f"photos/{name}"} for name in PHOTOS]


class Quoting(yaml.SafeDumper):
    """Writes attacks in quotes, since a florist's eye would be caught by some that are bare."""


Quoting.add_representer(
    str,
    lambda dumper, each: dumper.represent_scalar(
        "tag:yaml.org,2002:str", each, '"' if ATTACK in each else None
    ),
)


def build_hostile(folder: Path) -> None:
    """Write the hostile studio into a folder, and build both of its sites."""
    write_hostile(folder / "content")
    report = build_sites(settings_in(folder), AUDIENCES, DAY)
    assert not report.errors, "\n".join(map(str, report.errors))
