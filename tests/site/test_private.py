"""Nothing private reaches the clients' site: secrets are planted, and every byte is searched.

Every value of a small studio that clients may not see is a secret (`planting.py` lists what they
may), and so are the names of files that they may not know of, and the inside of its photos.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path

import pytest

from corymb.photos import PhotoCache, PreparedPhoto, prepare
from corymb.studio.load import MODELS
from corymb.studio.values.friendly import Friendly
from tests.site.found_secrets import found_in
from tests.site.planted_studio import NAMED, Planted
from tests.site.planting import private_places, readers_in
from tests.site.secret_values import HOLDS_NONE, MAKERS

CODE = "h2fk7q3v8m2k7t5x9w4r6n1p0sz"


def found(planted: Planted, folder: Path) -> set[str]:
    """Where the secrets were planted that are found in a folder."""
    each = (planted.secrets[secret] for secret in found_in(folder, planted.secrets))
    return {where for wheres in each for where in wheres.split("; ")}


def test_every_kind_of_value_can_be_a_secret_or_is_known_to_hold_none() -> None:
    known = {*MAKERS, *HOLDS_NONE}
    readers = [reader for model in MODELS.values() for reader in readers_in(model)]
    assert len(readers) > 150
    assert not [r.parse for r in readers if isinstance(r, Friendly) and r.parse not in known]


@pytest.mark.parametrize("kind", MODELS)
def test_a_secret_is_planted_in_every_private_place_of(planted: Planted, kind: str) -> None:
    wheres = [where for each in planted.secrets.values() for where in each.split("; ")]
    there = [
        where.removeprefix(f"{kind}: ").split(" > ")
        for where in wheres
        if where.startswith(f"{kind}: ")
    ]
    places = list(private_places(kind))
    assert places
    assert not [place for place in places if not any(is_at(place, path) for path in there)]


def is_at(place: Sequence[str], path: Sequence[str]) -> bool:
    return len(place) == len(path) and all(
        wanted in ("*", step) for wanted, step in zip(place, path, strict=True)
    )


def test_no_secret_reaches_the_clients_site(planted: Planted) -> None:
    assert len(planted.secrets) > 250
    assert found(planted, planted.clients) == set()


STAFF_NEED = (
    *("notes", "learnt", "method", "client > name", "client > email", "photo for staff"),
    *("technique: title", "link: for", "stems > [] > note", "bed", "source"),
    *("grown", "bought", "sundries", "weight", "stems per bucket", "date"),
    "name: zq90002hush",  # an order's address
    "name: zq90010hush",  # a draft's
    "name: zq90011hush",  # a lesson's
)


def test_the_same_secrets_are_on_the_staffs_site_where_staff_need_them(planted: Planted) -> None:
    """If the planting failed, the test above would pass for nothing."""
    there = found(planted, planted.staff)
    assert [wanted for wanted in STAFF_NEED if not any(wanted in where for where in there)] == []


FOR_NEITHER = (
    "photo for nobody",
    *(".jpg: notes", ".jpg: title"),
    f"name: {NAMED}",  # the studio's folder
    *(f"name: zq9002{number}hush" for number in range(3, 10)),  # photos' files
    "name: zq90015hush",  # the code of a link that is over
)


def test_what_nobody_may_see_is_on_neither_site(planted: Planted) -> None:
    there = found(planted, planted.staff)
    assert [where for where in there if any(words in where for words in FOR_NEITHER)] == []


def test_the_codes_of_style_links_stand_on_one_page_for_staff_alone(planted: Planted) -> None:
    files = [file for file in planted.staff.rglob("*") if file.is_file()]
    naming = [file.name for file in files if CODE.encode() in file.read_bytes()]
    assert naming == ["links.html"]


def test_the_clients_site_has_no_kind_of_file_that_is_for_staff(planted: Planted) -> None:
    def kinds(site: Path) -> set[str]:
        return {file.suffix for file in site.rglob("*") if file.is_file()}

    assert kinds(planted.staff) - kinds(planted.clients) == {".csv", ".ics", ".png"}
    assert not {file.name for file in planted.clients.glob("*")} & {
        *("field-list.json", "field-worker.js", "manifest.json", "costs.csv"),
        *("orders", "cut", "weeks", "practice", "links.html"),
    }


DRAFTS = ("zq90010hush", "open-jug--zq90012hush")


def test_drafts_have_no_page_and_no_picture_on_the_clients_site(planted: Planted) -> None:
    names = {file.stem for file in planted.clients.rglob("*")}
    staff_names = {file.stem for file in planted.staff.rglob("*")}
    for draft in DRAFTS:
        assert draft not in names
        assert draft in staff_names


FOR_CLIENTS = "zq90025hush.jpg"
FOR_STAFF = ("zq90024hush.jpg", "zq90026hush.jpg")
FOR_NOBODY = ("zq90027hush.jpg", "zq90029hush.jpg")
OF_A_DRAFT = ("zq90023hush.jpg", "zq90028hush.jpg")
"""What clients may see, of what they don't know of."""


def traces(photo: PreparedPhoto) -> Iterator[bytes]:
    """All by which a photo could be told."""
    yield photo.placeholder.encode()
    for file in (*photo.files, photo.share_card):
        yield file.name.encode()
        yield file.path.read_bytes()


def shown_of(planted: Planted, site: Path, name: str) -> bool:
    """Whether anything of a photo, its name, placeholder or any of its files, is in a site."""
    source = planted.folder / "content" / "photos" / name
    with PhotoCache(planted.settings.cache_folder / "photos") as cache:
        sought = list(traces(prepare(source, cache)))
    files = [file for file in site.rglob("*") if file.is_file() and file.suffix != ".woff2"]
    return any(
        trace == data or trace in data or trace in file.name.encode()
        for file in files
        for data in [file.read_bytes()]
        for trace in sought
    )


def test_of_photos_each_site_has_those_that_may_be_shown_there(planted: Planted) -> None:
    assert shown_of(planted, planted.clients, FOR_CLIENTS)
    for name in (*FOR_STAFF, *FOR_NOBODY, *OF_A_DRAFT):
        assert not shown_of(planted, planted.clients, name), name
        assert shown_of(planted, planted.staff, name) is (name not in FOR_NOBODY), name
