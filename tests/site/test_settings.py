"""mkdocs.yml says where the studio is; what is wrong with it is said in a sentence."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.site.settings import SettingsError, read_settings

GOOD = """\
site_name: Any
site_url: https://garden.example/flowers
docs_dir: pages
theme: {name: corymb}
plugins:
  - corymb: {studio: my-content, cache: kept}
"""


def written(folder: Path, text: str) -> Path:
    (folder / "pages").mkdir(exist_ok=True)
    file = folder / "mkdocs.yml"
    file.write_text(text)
    return file


def test_folders_are_named_from_the_folder_of_the_file(tmp_path: Path) -> None:
    settings = read_settings(written(tmp_path, GOOD))
    assert settings.studio_folder == tmp_path / "my-content"
    assert settings.cache_folder == tmp_path / "kept"
    assert settings.output("clients") == tmp_path / "clients"
    assert settings.output("staff") == tmp_path / "staff"
    assert settings.site_url == "https://garden.example/flowers/"
    assert settings.base_path("clients") == "/flowers/"
    assert settings.base_path("staff") == "/"


@pytest.mark.parametrize(
    ("address", "whole"),
    [("https://bench.example", "https://bench.example/"), ("http://10.0.0.2/", "http://10.0.0.2/")],
)
def test_where_the_staffs_site_is_opened_may_be_told(
    tmp_path: Path, address: str, whole: str
) -> None:
    told = GOOD.replace("cache: kept", f"cache: kept, staff_url: '{address}'")
    assert read_settings(written(tmp_path, told)).staff_url == whole
    assert read_settings(written(tmp_path, GOOD)).staff_url == ""


WRONG = {
    "no plugin": ("  - corymb: {studio: my-content, cache: kept}", "  []", "The plugin is missing"),
    "a misspelt option": ("studio: my", "studo: my", "‘studo’ is not an option of the plugin. Did"),
    "an audience there isn't": ("cache: kept", "audience: guests", "audience"),
    "a folder there isn't": ("docs_dir: pages", "docs_dir: paegs", "docs_dir"),
    "an address that isn't whole": ("cache: kept", "staff_url: bench", "‘bench’ is no whole addr"),
    "a day there isn't": ("site_name: Any", "site_name: 2026-02-30", "can't be read: day is out"),
    "not YAML": ("site_name: Any", "site_name: [", "mkdocs.yml"),
}


@pytest.mark.parametrize(("good", "wrong", "telling"), WRONG.values(), ids=WRONG)
def test_what_is_wrong_is_said_in_a_sentence(
    tmp_path: Path, good: str, wrong: str, telling: str
) -> None:
    assert good in GOOD
    with pytest.raises(SettingsError) as raised:
        read_settings(written(tmp_path, GOOD.replace(good, wrong)))
    assert telling in str(raised.value)
    assert "Traceback" not in str(raised.value)


def test_a_missing_file_says_how_to_make_one(tmp_path: Path) -> None:
    with pytest.raises(SettingsError, match="corymb new studio"):
        read_settings(tmp_path / "mkdocs.yml")
