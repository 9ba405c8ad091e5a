"""A plain `mkdocs build` and `corymb build` work in one folder, and keep to what is theirs."""

from __future__ import annotations

import logging
import shutil
from datetime import date
from pathlib import Path

import pytest
from mkdocs.commands.build import build
from mkdocs.config import load_config
from mkdocs.exceptions import Abort, BuildError
from mkdocs.livereload import LiveReloadServer
from mkdocs.structure.files import Files
from PIL import Image

import corymb
from corymb.photos import PhotoCache
from corymb.site.build import build_sites
from corymb.site.publishing.rooms import Room
from corymb.site.settings import read_settings

STARTER = Path(corymb.__file__).parent / "starter"
DAY = date(2026, 9, 16)
PHOTO = """
photos:
  - {file: photos/jug.jpg, alt: A jug, credit: Us, may be shown to: clients}
"""


@pytest.fixture
def studio(tmp_path: Path) -> Path:
    """The starter's folder, with one photo, for the clients."""
    folder = tmp_path / "studio"
    shutil.copytree(STARTER, folder)
    (folder / "content" / "photos").mkdir()
    Image.new("RGB", (1600, 1200), "#a3412a").save(folder / "content" / "photos" / "jug.jpg")
    recipe = folder / "content" / "recipes" / "posy" / "kitchen-jug.yml"
    recipe.write_text(recipe.read_text(encoding="utf-8") + PHOTO, encoding="utf-8")
    return folder


def by_mkdocs(studio: Path) -> None:
    build(load_config(str(studio / "mkdocs.yml")))


def by_corymb(studio: Path) -> list[str]:
    report = build_sites(read_settings(studio / "mkdocs.yml"), ["clients"], DAY)
    return [problem.message for problem in report.errors]


def tidied_by_another(studio: Path) -> int:
    """How many photos another program, which used none of them, removes from the cache."""
    with PhotoCache(studio / ".cache" / "corymb" / "photos") as cache:
        return cache.evict()


def test_mkdocs_never_puts_a_locked_site_there_open(studio: Path) -> None:
    config = studio / "mkdocs.yml"
    text = config.read_text("utf-8")
    staff = text.replace("- corymb:", "- corymb:\n      audience: staff").replace(
        "site_dir: clients", "site_dir: staff"
    )
    config.write_text(staff.replace("- corymb:", "- corymb:\n      lock_staff: true"), "utf-8")
    with pytest.raises((Abort, BuildError)):
        by_mkdocs(studio)
    assert not (studio / "staff").exists()
    config.write_text(staff, "utf-8")
    (studio / "staff" / "locked").mkdir(parents=True)
    (studio / "staff" / "locked" / "lock.json").write_text("{}")
    with pytest.raises((Abort, BuildError)):
        by_mkdocs(studio)
    assert not (studio / "staff" / "index.html").exists()


def test_either_builds_over_what_the_other_built(studio: Path) -> None:
    by_mkdocs(studio)
    assert by_corymb(studio) == []
    by_mkdocs(studio)
    assert by_corymb(studio) == []


def test_what_mkdocs_left_hidden_in_a_folder_stays_there(studio: Path) -> None:
    (studio / "clients" / ".git" / "refs").mkdir(parents=True)
    by_mkdocs(studio)
    assert by_corymb(studio) == []
    assert (studio / "clients" / ".git" / "refs").is_dir()


def test_a_mistake_leaves_the_last_good_site_of_mkdocs_standing(studio: Path) -> None:
    by_mkdocs(studio)
    before = {file: file.read_bytes() for file in (studio / "clients").rglob("*.*")}
    about = studio / "content" / "studio.yml"
    about.write_text(about.read_text(encoding="utf-8").replace("tagline:", "tag line:"))
    with pytest.raises(Abort):
        by_mkdocs(studio)
    assert {file: file.read_bytes() for file in (studio / "clients").rglob("*.*")} == before


def test_a_broken_build_of_mkdocs_leaves_the_old_site_whole(
    studio: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert by_corymb(studio) == []
    before = {file: file.read_bytes() for file in (studio / "clients").rglob("*.*")}
    config = load_config(str(studio / "mkdocs.yml"))

    def fails(self: Files, **options: object) -> None:
        Path(config.site_dir).mkdir()
        (Path(config.site_dir) / "half.html").touch()
        raise BuildError("the disk is full")

    with monkeypatch.context() as patched, pytest.raises(Abort):
        patched.setattr(Files, "copy_static_files", fails)
        build(config)
    assert {file: file.read_bytes() for file in (studio / "clients").rglob("*.*")} == before
    assert not Room.of(studio / "clients").new.exists()
    assert Path(config.site_dir) == studio / "clients"


def test_a_strict_build_of_mkdocs_with_warnings_leaves_the_old_site(studio: Path) -> None:
    by_mkdocs(studio)
    assert not Room.of(studio / "clients").new.exists()
    before = (studio / "clients").stat().st_ino
    config = load_config(str(studio / "mkdocs.yml"), strict=True)
    config.plugins.events["post_page"].append(warned)
    (studio / "docs").mkdir()
    (studio / "docs" / "index.md").write_text("# A page of MkDocs")
    config.docs_dir = str(studio / "docs")
    with pytest.raises(Abort, match="strict"):
        build(config)
    assert (studio / "clients").stat().st_ino == before


def warned(output: str, **_: object) -> str:
    """Another plugin has something to say."""
    logging.getLogger("mkdocs.plugins.other").warning("this could be better")
    return output


def test_mkdocs_serve_watches_the_whole_studio(
    studio: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    config = load_config(str(studio / "mkdocs.yml"))
    server = LiveReloadServer(lambda: None, "127.0.0.1", 0, root=str(studio / "clients"))
    watched: list[str] = []
    monkeypatch.setattr(server, "watch", watched.append)
    config.plugins.on_serve(server, config=config, builder=lambda *_: None)
    assert watched == [str(studio / "content")]


def test_photos_stay_in_the_cache_until_mkdocs_has_copied_them(
    studio: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    copy = Files.copy_static_files
    removed = []

    def tidied_first(self: Files, **options: object) -> None:
        removed.append(tidied_by_another(studio))
        copy(self, **options)

    monkeypatch.setattr(Files, "copy_static_files", tidied_first)
    by_mkdocs(studio)
    assert removed == [0]
    assert any((studio / "clients" / "assets" / "photos").iterdir())
    assert tidied_by_another(studio) == 1


def test_an_error_in_the_studio_stops_mkdocs(
    studio: Path, caplog: pytest.LogCaptureFixture
) -> None:
    photo = studio / "content" / "photos" / "jug.jpg"
    photo.write_bytes(photo.read_bytes()[:2000])
    with pytest.raises(Abort):
        by_mkdocs(studio)
    first, last = [record.getMessage() for record in caplog.records if record.levelname == "ERROR"]
    assert "kitchen-jug.yml:46:12: ‘photos/jug.jpg’ is cut short or damaged" in first
    assert last == "1 thing to put right in the studio's files."


def test_a_build_that_fails_lets_go_of_the_cache(
    studio: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fails(self: Files, **options: object) -> None:
        raise BuildError("the disk is full")

    monkeypatch.setattr(Files, "copy_static_files", fails)
    config = load_config(str(studio / "mkdocs.yml"))
    with pytest.raises(Abort):
        build(config)
    assert tidied_by_another(studio) == 1


def test_mkdocs_publishes_nothing_of_the_studios_folder_by_itself(studio: Path) -> None:
    for name in ("orders/hush.txt", "pages/hush.md~", "pages/hush.jpg"):
        file = studio / "content" / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.touch()
    settings = studio / "mkdocs.yml"
    text = settings.read_text(encoding="utf-8")
    settings.write_text(text.replace("docs_dir: content/pages", "docs_dir: content"), "utf-8")
    by_mkdocs(studio)
    published = [file.relative_to(studio / "clients") for file in (studio / "clients").rglob("*")]
    assert Path("care.html") in published
    assert not [path for path in published if "hush" in path.name or path.suffix in (".yml", ".md")]
    assert not {path.parts[0] for path in published} & {"techniques", "photos", "stems", "recipes"}


def test_a_dirty_build_of_mkdocs_leaves_nothing_that_is_no_longer_there(studio: Path) -> None:
    by_mkdocs(studio)
    recipe = studio / "content" / "recipes" / "hand-tie" / "market-bunch.yml"
    recipe.write_text(recipe.read_text(encoding="utf-8") + "draft: yes\n", encoding="utf-8")
    assert (studio / "clients" / "arrangements" / "market-bunch.html").exists()
    config = load_config(str(studio / "mkdocs.yml"))
    config.plugins.on_startup(command="build", dirty=True)
    build(config, dirty=True)
    assert not [file for file in (studio / "clients").rglob("*") if "market-bunch" in file.name]
    assert (studio / "clients" / "arrangements" / "kitchen-jug.html").exists()
