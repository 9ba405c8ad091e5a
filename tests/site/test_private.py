"""Nothing private reaches the clients' site: secrets are planted, and every byte is searched.

Every value of a copy of the demo studio that clients may not see is replaced by a secret
(`planting.py` lists what they may), and so is the inside of its photos.
"""

from __future__ import annotations

import shutil
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

import pytest
import yaml
from PIL import Image

from corymb.checks import read_and_check
from corymb.site.book import Asked
from corymb.site.build import build_sites
from corymb.site.settings import SiteSettings
from corymb.studio.load import MODELS
from corymb.studio.values.friendly import Friendly
from corymb.views.pieces import AUDIENCES
from tests.site.books import made
from tests.site.planting import Planter, readers_in
from tests.site.secret_values import HOLDS_NONE, MAKERS, Secrets, found_in

CONTENT = Path(__file__).parents[2] / "content"

KINDS = {
    "stems": "stems",
    "recipes": "recipe",
    "made": "made",
    "orders": "order",
    "walks": "walk",
    "log": "log",
    "links": "link",
    "pages": "page",
    "techniques": "technique",
}
"""The kind of file in each folder; the standing orders' is told below."""


def copy_with_secrets(folder: Path, secrets: Secrets) -> None:
    """A copy of the demo studio with a secret in every private place."""
    shutil.copytree(CONTENT, folder)
    for file in sorted(folder.rglob("*.yml")):
        data = Planter.of(kind_of(file, folder), secrets).planted(_read(file.read_text("utf-8")))
        _plant_in_photos(data, secrets)
        _write(file, data)
    for file in sorted(folder.rglob("*.md")):
        _plant_in_prose(file, kind_of(file, folder), secrets)
    for file in sorted((folder / "photos").glob("*.jpg")):
        _plant_in_image(file, secrets)


def kind_of(file: Path, folder: Path) -> str:
    within = file.relative_to(folder).parts
    if within[0] == "studio.yml":
        return "studio"
    return "standing" if "standing" in within else KINDS[within[0]]


def _read(text: str) -> Any:
    return yaml.load(text, yaml.BaseLoader)


def _write(file: Path, data: Any, below: str = "") -> None:
    text = yaml.safe_dump(data, sort_keys=False, allow_unicode=True)
    file.write_text(f"---\n{text}---\n{below}" if below else text, "utf-8")


def _plant_in_photos(data: dict[str, Any], secrets: Secrets) -> None:
    """What is said of photos that clients may not see."""
    variants = data.get("variants", {}).values() if isinstance(data.get("variants"), dict) else ()
    for photo in [*data.get("photos", []), *(p for v in variants for p in v.get("photos", []))]:
        if photo["may be shown to"] != "clients":
            photo["alt"] = secrets.text(f"photo for {photo['may be shown to']}")
            photo["credit"] = secrets.text(f"photo for {photo['may be shown to']}")


def _plant_in_prose(file: Path, kind: str, secrets: Secrets) -> None:
    """Pages and lessons for staff: every word of the heading, and one below it."""
    _, heading, words = file.read_text("utf-8").split("---\n", 2)
    data = _read(heading)
    if data.get("for", "staff" if kind == "technique" else "everyone") == "staff":
        _write(file, Planter.of(kind, secrets).planted(data), f"{words}\n{secrets.text(file.name)}")


def _plant_in_image(file: Path, secrets: Secrets) -> None:
    with Image.open(file) as image:
        exif = image.getexif()
        exif[0x010E] = secrets.text(f"{file.name}: description")  # ImageDescription
        exif[0x013B] = secrets.text(f"{file.name}: artist")  # Artist
        image.save(file, exif=exif, comment=secrets.text(f"{file.name}: comment").encode())


DRAFTED = {
    "bridal-hand-tie/rooks-wing-hand-tie": None,  # another recipe is based on it
    "posy/hedgerow-jar": "later",  # another variant builds on it
    "posy/windfall-posy": None,
}
"""Recipes that are made drafts, or the variant of one that is."""


def draft_some(folder: Path, secrets: Secrets) -> tuple[str, ...]:
    """Make some recipes drafts, and a variant of another; their ids."""
    drafts = []
    for recipe, variant in DRAFTED.items():
        file = folder / "recipes" / f"{recipe}.yml"
        data = _read(file.read_text("utf-8"))
        drafted = data["variants"][variant] if variant else data
        drafted["draft"] = "yes"
        drafted["name"] = secrets.text("a draft's name")
        drafted["about" if variant else "summary"] = secrets.text("a draft's words")
        _write(file, data)
        drafts.append(f"{file.stem}--{variant}" if variant else file.stem)
    return tuple(drafts)


@dataclass
class Planted:
    """Both sites of the planted studio, and its secrets."""

    clients: Path
    staff: Path
    secrets: dict[str, str]
    drafts: tuple[str, ...]


@pytest.fixture(scope="module")
def planted(tmp_path_factory: pytest.TempPathFactory) -> Planted:
    folder = tmp_path_factory.mktemp("planted")
    secrets = Secrets()
    copy_with_secrets(folder / "content", secrets)
    drafts = draft_some(folder / "content", secrets)
    settings = SiteSettings(
        config_file=folder / "mkdocs.yml",
        studio_folder=folder / "content",
        cache_folder=CONTENT.parent / ".cache" / "planted",
        site_url="https://garden.example/",
    )
    report = build_sites(settings, ("clients", "staff"), date(2026, 6, 24))
    assert [str(problem) for problem in report.errors] == []
    return Planted(folder / "clients", folder / "staff", secrets.planted, drafts)


def test_every_kind_of_value_can_be_a_secret_or_is_known_to_hold_none() -> None:
    known = {*MAKERS, *HOLDS_NONE}
    readers = [reader for model in MODELS.values() for reader in readers_in(model)]
    assert len(readers) > 150
    assert not [r.parse for r in readers if isinstance(r, Friendly) and r.parse not in known]


@pytest.mark.parametrize("kind", MODELS)
def test_a_secret_is_planted_in_every_kind_of_file(planted: Planted, kind: str) -> None:
    assert any(where.startswith(f"{kind}: ") for where in planted.secrets.values())


def test_no_secret_reaches_the_clients_site(planted: Planted) -> None:
    assert len(planted.secrets) > 500
    leaked = {planted.secrets[secret] for secret in found_in(planted.clients, planted.secrets)}
    assert leaked == set()


STAFF_NEED = (
    *(
        "notes",
        "learnt",
        "method",
        "client",
        "photo for staff",
        "technique: title",
        "link: for",
        "stems > [] > note",
    ),
    *("grown", "bought", "sundries", "weight", "hours", "stems per bucket"),  # numbers
)


def test_the_same_secrets_are_on_the_staffs_site_where_staff_need_them(planted: Planted) -> None:
    """If the planting failed, the test above would pass for nothing."""
    there = {planted.secrets[secret] for secret in found_in(planted.staff, planted.secrets)}
    for wanted in STAFF_NEED:
        assert any(wanted in where for where in there), wanted


def test_no_secret_reaches_the_clients_book(planted: Planted) -> None:
    studio, _ = read_and_check(planted.clients.parent / "content")
    assert studio
    there = {}
    for audience in AUDIENCES:
        folder = planted.clients.parent / "books" / audience
        folder.mkdir(parents=True)
        for path, data in made(studio, Asked(audience)).bare_files.items():
            (folder / path.replace("/", "-")).write_bytes(data)
        there[audience] = {planted.secrets[each] for each in found_in(folder, planted.secrets)}
    assert there["clients"] == set()
    for wanted in ("recipe: method", "recipe: notes", "technique: title"):
        assert any(wanted in where for where in there["staff"]), wanted


def test_what_nobody_may_see_is_on_neither_site(planted: Planted) -> None:
    there = {planted.secrets[secret] for secret in found_in(planted.staff, planted.secrets)}
    assert not any("photo for nobody" in where for where in there)
    assert not any(where.endswith((": artist", ": comment", ": description")) for where in there)


def test_drafts_have_no_page_and_no_picture_on_the_clients_site(planted: Planted) -> None:
    names = {file.stem for file in planted.clients.rglob("*")}
    staff_names = {file.stem for file in planted.staff.rglob("*")}
    for draft in planted.drafts:
        assert draft not in names
        assert draft in staff_names


def test_the_clients_site_has_no_file_of_a_photo_that_clients_may_not_see(
    planted: Planted,
) -> None:
    def photos(site: Path) -> set[str]:
        return {file.name for file in (site / "assets" / "photos").iterdir()}

    more = photos(planted.staff) - photos(planted.clients)
    assert photos(planted.clients) < photos(planted.staff)
    pages = b"".join(file.read_bytes() for file in planted.clients.rglob("*.html"))
    assert not any(name.encode() in pages for name in more)
