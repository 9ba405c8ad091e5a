"""Does a locked site hold all of the open one, and tell none of it?"""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from corymb.site.locked.keys import Passphrase
from corymb.site.locked.lock import Lock, lock_for
from corymb.site.locked.made import Sealer, locked_site
from corymb.site.locked.places import DOOR, LOCK, SEALED
from corymb.site.locked.sealing import SealBrokenError, unseal
from corymb.site.offline import LIST, MANIFEST, WORKER
from corymb.site.offline.files import digest
from corymb.site.site import Site

PASSPHRASE = Passphrase("bako-rimu-tesa", 10)
DOORS = {"index.html": b"Locked", "404.html": b"Locked", DOOR: b"Locked"}
ORDER = "orders/ottoline-marsh-supper.html"
PAGES = {"index.html": b"the staff's week", ORDER: b"Ottoline Marsh, 8 jugs"}
FILES = {
    "search.json": b'["Ottoline Marsh"]',
    "costs.csv": b"jug,41.50",
    "cut/2026-07-09.ics": b"SUMMARY:Cut for Ottoline Marsh",
    "assets/tints.css": b"[data-tint=aa0011]",
    "assets/pictures/ottoline-jug.svg": b"<svg>Ottoline Marsh</svg>",
    "assets/theme/css/corymb.css": b"body{}",
    "robots.txt": b"User-agent: *",
    MANIFEST: b'{"name": "Hazel Row", "description": "Flowers for Ottoline Marsh"}',
    WORKER: b'const VERSION = "{{version}}";',
    LIST: json.dumps(
        {
            "version": "1",
            "first": [["assets/theme/css/corymb.css", "a"], [ORDER, "b"]],
            "later": [["assets/pictures/ottoline-jug.svg", "c"], ["index.html", "d"]],
        }
    ).encode(),
}
PHOTO = "assets/photos/ottoline-960.avif"
SECRETS = ("ottoline", "marsh", "41.50", "aa0011", "week", "jug", "supper", "costs", "search")


@pytest.fixture
def open_site(tmp_path: Path) -> Site:
    photo = tmp_path / "photo.avif"
    photo.write_bytes(b"pixels of Ottoline Marsh")
    style = tmp_path / "menu.js"
    style.write_bytes(b"// menu")
    copies = {PHOTO: photo, "assets/theme/js/menu.js": style}
    return Site(pages=dict(PAGES), files=dict(FILES), copies=copies)


@pytest.fixture
def lock(tmp_path: Path) -> Lock:
    return lock_for(PASSPHRASE, tmp_path)


def made(open_site: Site, lock: Lock, standing: Path) -> Site:
    scratch = standing.parent / f"{standing.name}-scratch"
    scratch.mkdir(exist_ok=True)
    return locked_site(open_site, lock, DOORS, standing, scratch)


def contents(site: Site) -> dict[str, bytes]:
    """All that is published, by address."""
    return {**site.written, **{path: file.read_bytes() for path, file in site.copies.items()}}


def put(site: Site, folder: Path) -> None:
    for path, content in contents(site).items():
        (folder / path).parent.mkdir(parents=True, exist_ok=True)
        (folder / path).write_bytes(content)


def test_no_name_and_no_byte_tells_anything(open_site: Site, lock: Lock, tmp_path: Path) -> None:
    for path, content in contents(made(open_site, lock, tmp_path / "out")).items():
        if path in (WORKER, LIST):
            continue  # below: they are the program's words
        told = (path + content.decode("latin-1")).lower()
        assert [secret for secret in SECRETS if secret in told] == [], path


def test_what_phones_go_by_names_sealed_files_alone(
    open_site: Site, lock: Lock, tmp_path: Path
) -> None:
    site = made(open_site, lock, tmp_path / "out")
    told = json.loads(site.files[LIST])
    for path, digest_told in (*told["first"], *told["later"]):
        assert path.startswith((SEALED, "assets/theme/", DOOR)), path
        assert digest_told == digest(contents(site)[path])
    assert not any(secret in site.files[LIST].decode().lower() for secret in SECRETS)
    assert not any(secret in site.files[WORKER].decode() for secret in ("ottoline", ORDER))


def test_every_file_comes_out_at_its_own_address_and_at_no_other(
    open_site: Site, lock: Lock, tmp_path: Path
) -> None:
    site = contents(made(open_site, lock, tmp_path / "out"))
    sealer = Sealer(lock, tmp_path)
    photo = {PHOTO: b"pixels of Ottoline Marsh"}
    private = {path: FILES[path] for path in list(FILES)[:5]} | {LIST: FILES[LIST]}
    private |= PAGES | photo
    for path, content in private.items():
        assert unseal(lock.keys.files, path, site[sealer.address(path)]) == content
    assert len(private) == sum(path.startswith(SEALED) for path in site)
    with pytest.raises(SealBrokenError):  # a host shows one page in place of another
        unseal(lock.keys.files, "index.html", site[sealer.address(ORDER)])


def test_what_anyone_may_read_is_the_theme_the_door_and_the_studios_name(
    open_site: Site, lock: Lock, tmp_path: Path
) -> None:
    site = contents(made(open_site, lock, tmp_path / "out"))
    bare = {path for path in site if not path.startswith(SEALED)}
    theme = {"assets/theme/css/corymb.css", "assets/theme/js/menu.js"}
    assert bare == {*DOORS, *theme, LOCK, LIST, WORKER, MANIFEST, "robots.txt"}
    assert json.loads(site[MANIFEST]) == {"name": "Hazel Row"}
    assert {site[path] for path in DOORS} == {b"Locked"}


def test_only_what_has_changed_is_sealed_anew(open_site: Site, lock: Lock, tmp_path: Path) -> None:
    out = tmp_path / "out"
    put(made(open_site, lock, out), out)
    again = made(open_site, lock_for(PASSPHRASE, out), out)
    assert contents(again) == {path: (out / path).read_bytes() for path in contents(again)}
    open_site.pages[ORDER] = b"Ottoline Marsh, 9 jugs"
    later = contents(made(open_site, lock_for(PASSPHRASE, out), out))
    changed = {path for path in later if later[path] != (out / path).read_bytes()}
    assert changed == {Sealer(lock, out).address(ORDER), LIST, WORKER}


def test_with_another_passphrase_nothing_is_as_it_was(
    open_site: Site, lock: Lock, tmp_path: Path
) -> None:
    out = tmp_path / "out"
    put(made(open_site, lock, out), out)
    another = lock_for(Passphrase("bako-rimu-tesi", 10), out)
    before, after = (
        {path for path in contents(site) if path.startswith(SEALED)}
        for site in (made(open_site, lock, out), made(open_site, another, out))
    )
    assert len(before) == len(after) and not before & after


def test_a_sealed_file_that_was_cut_off_is_made_again(
    open_site: Site, lock: Lock, tmp_path: Path
) -> None:
    out = tmp_path / "out"
    put(made(open_site, lock, out), out)
    address = Sealer(lock, out).address(PHOTO)
    (out / address).write_bytes((out / address).read_bytes()[:20])
    again = contents(made(open_site, lock, out))[address]
    assert unseal(lock.keys.files, PHOTO, again) == b"pixels of Ottoline Marsh"
