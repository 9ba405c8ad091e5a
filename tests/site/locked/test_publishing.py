"""What is published of a site, when it is locked and when it isn't?"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest

from corymb.site.locked.keys import Passphrase
from corymb.site.locked.places import DOOR, SEALED
from corymb.site.locked.publishing import as_published
from corymb.site.settings import SiteSettings
from corymb.site.site import Site

PASSPHRASE = Passphrase("bako-rimu-tesa", 10)
HOUSE: Any = SimpleNamespace(name="Hazel & Row", language="en-IE")


@pytest.fixture
def settings(tmp_path: Path) -> SiteSettings:
    where = (tmp_path / "mkdocs.yml", tmp_path / "content", tmp_path / "cache")
    return SiteSettings(*where, staff_url="https://bench.example/staff/", lock_staff=True)


@pytest.fixture
def site(tmp_path: Path) -> Site:
    photo = tmp_path / "photo.avif"
    photo.write_bytes(b"pixels")
    copies = {"assets/photos/0f-960.avif": photo}
    return Site(pages={"index.html": b"<h1>This week</h1>"}, copies=copies)


def test_the_clients_site_and_one_that_is_not_to_be_locked_stay_as_they_are(
    site: Site, settings: SiteSettings
) -> None:
    with as_published(site, "clients", settings, HOUSE, PASSPHRASE) as published:
        assert published is site
    with as_published(site, "staff", replace(settings, lock_staff=False), HOUSE, None) as published:
        assert published is site


def test_before_a_locked_site_stands_a_door_in_the_studios_name(
    site: Site, settings: SiteSettings
) -> None:
    with as_published(site, "staff", settings, HOUSE, PASSPHRASE) as published:
        front, door, lost = (
            published.files[at].decode() for at in ("index.html", DOOR, "404.html")
        )
    assert all("Hazel &amp; Row" in page and "<form" in page for page in (front, door, lost))
    assert 'src="assets/theme/js/locked.js"' in front
    assert 'src="../assets/theme/js/locked.js"' in door
    assert 'src="/staff/assets/theme/js/locked.js"' in lost  # shown at any depth
    assert not any("This week" in page for page in (front, door, lost))


def test_a_door_speaks_the_studios_language(site: Site, settings: SiteSettings) -> None:
    german: Any = SimpleNamespace(name="Hazel & Row", language="de-DE")
    with as_published(site, "staff", settings, german, PASSPHRASE) as published:
        assert 'lang="de-DE"' in published.files[DOOR].decode()
        assert "Werkstatt" in published.files[DOOR].decode()


def test_what_is_sealed_beside_the_site_is_gone_once_that_is_published(
    site: Site, settings: SiteSettings
) -> None:
    with (
        pytest.raises(KeyboardInterrupt),
        as_published(site, "staff", settings, HOUSE, PASSPHRASE) as published,
    ):
        assert [path for path in published.copies if path.startswith(SEALED)]
        (kept,) = settings.cache_folder.iterdir()
        assert all(file.is_relative_to(kept) for file in published.copies.values())
        raise KeyboardInterrupt
    assert list(settings.cache_folder.iterdir()) == []
    kept.mkdir()  # a build was killed before it could clear up
    (kept / "left.bin").write_bytes(b"")
    with as_published(site, "staff", settings, HOUSE, PASSPHRASE):
        assert not (kept / "left.bin").exists()


def test_a_code_on_a_label_leads_through_the_door(settings: SiteSettings) -> None:
    at = "https://bench.example/staff/"
    assert settings.codes_lead_to == f"{at}{DOOR}#"
    assert replace(settings, lock_staff=False).codes_lead_to == at
    assert replace(settings, staff_url="").codes_lead_to == ""
