"""Nothing private reaches the clients' site: secrets are planted, and every byte is searched.

What clients may see is listed here, apart from the code that decides it. Every other value in a
copy of the demo studio is replaced by a secret, and so is the inside of its photos.
"""

from __future__ import annotations

import itertools
import re
import shutil
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import Any

import pytest
import yaml
from PIL import Image

from corymb.site.build import build_sites
from corymb.site.settings import SiteSettings

CONTENT = Path(__file__).parents[2] / "content"

PUBLIC = {
    "studio": "name tagline about language place.name place.latitude contact styles.*.name "
    "styles.*.plural styles.*.about styles.*.known_object",
    "stems": "group stems.*.name stems.*.botanical stems.*.use stems.*.form stems.*.colours "
    "stems.*.green stems.*.head stems.*.head_length stems.*.heads_per_stem stems.*.length "
    "stems.*.in_season stems.*.at_best stems.*.vase_life stems.*.hazards stems.*.caution "
    "stems.*.scent stems.*.about",
    "recipes": "name summary time across high vessel against stems sizes price care photos "
    "variants.*.name variants.*.about variants.*.swap variants.*.add variants.*.drop "
    "variants.*.scale variants.*.price variants.*.photos variants.*.builds_on based_on swap add "
    "drop scale",
    "made": "title recipe variant date about photos",
}
"""What clients may see, by kind of file; `*` is any key, and a name stands for all below it."""

FIXED = (
    "draft",  # decided by the test itself
    "techniques",
    "difficulty",
    "order",
    "cutting_step",
    "ends_with",
    "styles.*.place",
    "styles.*.excludes",
    "styles.*.stem_length",
    "styles.*.heaviest_stem",
    "place",
    "reference_place",
    "currency",
    "tax_in_prices",
)
"""Names and choices that have to stay valid, so that no secret can stand in their place."""


MONEY = re.compile(rb"[0-9][0-9,]{3,8}\.[0-9]{2}")


@dataclass
class Secrets:
    """Hands out secrets, and remembers them."""

    planted: dict[str, str] = field(default_factory=dict)
    numbers: Iterator[int] = field(default_factory=lambda: itertools.count(1))

    def text(self, where: str) -> str:
        secret = f"zq{next(self.numbers):05d}hush"
        self.planted[secret] = where
        return secret

    def money(self, where: str) -> str:
        secret = f"{7000 + next(self.numbers)}.{next(self.numbers) % 89 + 10}"
        self.planted[secret] = where
        return secret


def is_public(kind: str, path: tuple[str, ...]) -> bool:
    """Whether clients may see the value at a path."""
    return any(_matches(public.split("."), path) for public in PUBLIC.get(kind, "").split())


def _matches(pattern: list[str], path: tuple[str, ...]) -> bool:
    names = [step.replace(" ", "_") for step in path if not step.isdigit()]
    return len(names) >= len(pattern) and all(
        wanted in ("*", name) for wanted, name in zip(pattern, names, strict=False)
    )


def plant(kind: str, value: Any, path: tuple[str, ...], secrets: Secrets) -> Any:
    """A copy of a file's data in which every private value is a secret."""
    if is_public(kind, path):
        return value
    if isinstance(value, dict):
        return {k: plant(kind, v, (*path, k), secrets) for k, v in value.items()}
    if isinstance(value, list):
        return [plant(kind, v, (*path, str(i)), secrets) for i, v in enumerate(value)]
    return _secret(kind, str(value), path, secrets)


def _secret(kind: str, value: str, path: tuple[str, ...], secrets: Secrets) -> str:
    where = f"{kind}: {' > '.join(path)}"
    last = path[-1].replace(" ", "_")
    if any(_matches(fixed.split("."), path) or fixed == last for fixed in FIXED):
        return value
    if kind == "recipes" and "sundries" in path:
        return f"1 {secrets.text(where)}, {secrets.money(where)}"
    try:
        float(value)
    except ValueError:
        return value if value[:1].isdigit() else secrets.text(where)
    money = path[-1] in ("grown", "bought", "hourly rate", "round prices to")
    return secrets.money(where) if money else value


def copy_with_secrets(folder: Path, secrets: Secrets) -> None:
    """A copy of the demo studio with a secret in every private place."""
    shutil.copytree(CONTENT, folder)
    for file in folder.rglob("*.yml"):
        kind = file.relative_to(folder).parts[0].removesuffix(".yml")
        if kind in ("walks", "log", "links"):
            continue
        data = yaml.load(file.read_text("utf-8"), yaml.BaseLoader)
        data = (
            _private_orders(data, secrets) if kind == "orders" else plant(kind, data, (), secrets)
        )
        _plant_in_photos(data, secrets)
        file.write_text(yaml.safe_dump(data, sort_keys=False, allow_unicode=True), "utf-8")
    for file in folder.rglob("*.md"):
        _plant_in_prose(file, secrets)
    for file in (folder / "photos").glob("*.jpg"):
        _plant_in_image(file, secrets)


def _private_orders(data: dict[str, Any], secrets: Secrets) -> dict[str, Any]:
    for key in ("name", "notes", "learnt"):
        data[key] = secrets.text(f"orders: {key}")
    data["client"] = {
        "name": secrets.text("orders: client's name"),
        "email": f"{secrets.text('orders: client')}@private.example",
    }
    data.pop("vehicle", None)  # its name is a secret by now
    data["where"]["place"] = secrets.text("orders: place")
    return data


def _plant_in_photos(data: dict[str, Any], secrets: Secrets) -> None:
    """What is said of photos that clients may not see."""
    variants = data.get("variants", {}).values() if isinstance(data.get("variants"), dict) else ()
    for photo in [*data.get("photos", []), *(p for v in variants for p in v.get("photos", []))]:
        if photo["may be shown to"] != "clients":
            photo["alt"] = secrets.text(f"photo for {photo['may be shown to']}")
            photo["credit"] = secrets.text(f"photo for {photo['may be shown to']}")


def _plant_in_prose(file: Path, secrets: Secrets) -> None:
    text = file.read_text("utf-8")
    lesson = file.parent.name == "techniques" and "for: everyone" not in text
    if lesson or "for: staff" in text:
        file.write_text(f"{text}\n\n{secrets.text(file.name)}\n", "utf-8")


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
        data = yaml.load(file.read_text("utf-8"), yaml.BaseLoader)
        drafted = data["variants"][variant] if variant else data
        drafted["draft"] = "yes"
        drafted["name"] = secrets.text("a draft's name")
        drafted["about" if variant else "summary"] = secrets.text("a draft's words")
        file.write_text(yaml.safe_dump(data, sort_keys=False, allow_unicode=True), "utf-8")
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


def found_in(folder: Path, secrets: dict[str, str]) -> set[str]:
    """The secrets that stand in any byte or name of a site.

    Money may have a comma for its thousands by then.
    """
    found: set[str] = set()
    for file in folder.rglob("*"):
        whole = file.name.encode() + b"\n" + (file.read_bytes() if file.is_file() else b"")
        found |= {each.decode() for each in re.findall(rb"zq[0-9]{5}hush", whole)}
        found |= {each.decode().replace(",", "") for each in MONEY.findall(whole)}
    return found & set(secrets)


def test_no_secret_reaches_the_clients_site(planted: Planted) -> None:
    assert len(planted.secrets) > 500
    leaked = {planted.secrets[secret] for secret in found_in(planted.clients, planted.secrets)}
    assert leaked == set()


def test_the_same_secrets_are_on_the_staffs_site_where_staff_need_them(planted: Planted) -> None:
    """If the planting failed, the test above would pass for nothing."""
    there = {planted.secrets[secret] for secret in found_in(planted.staff, planted.secrets)}
    for wanted in ("notes", "grown", "bought", "method", "sundries", "client", "photo for staff"):
        assert any(wanted in where for where in there), wanted


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
