"""What does a phone keep of the staff's site, and how does it know a newer build?"""

from __future__ import annotations

import gzip
import json
import re
from io import BytesIO
from pathlib import Path
from urllib.parse import unquote

import pytest
from PIL import Image

from corymb.site.offline import LIST, MANIFEST, WORKER
from corymb.site.offline.chosen import shown_on
from corymb.site.offline.files import digests_of, worker_and_list
from corymb.site.offline.manifest import ICON, SHAPED, icons
from corymb.views.pieces import Audience

# On the demo's day, in week 38: what is used in weeks 38 and 39, and all that is cut in them or for
# them. Of the hotel's visits those of 15 and 22 September fall into them.
CUT_DAYS = {"2026-09-13", "2026-09-17", "2026-09-20", "2026-09-27"}
ORDERS = ("barn-supper", "lantern-house--2026-09-15", "lantern-house--2026-09-22")
PAPERS = ("", "-bench", "-labels", "-load", "-collection")
MOST_MB = 8  # over the wire, packed; drawings are most of it

LATER, FIRST = ["b.html", "c d.html"], ["a.html"]
BUILD = {"a.html": b"1", "b.html": b"2", "c d.html": b"3", "not-listed.csv": b"4"}


@pytest.fixture(scope="module")
def staff(demo_sites: dict[Audience, Path]) -> Path:
    return demo_sites["staff"]


@pytest.fixture(scope="module")
def listed(staff: Path) -> dict[str, list[str]]:
    """The addresses on the demo's list, those of what comes first and those of the rest."""
    told = json.loads((staff / LIST).read_text("utf-8"))
    return {part: [unquote(path) for path, _ in told[part]] for part in ("first", "later")}


def version_in(files: dict[str, bytes]) -> str:
    found = re.search(r'VERSION = "(\w+)"', files[WORKER].decode())
    assert found and found[1] == json.loads(files[LIST])["version"]
    return found[1]


def made_of(build: dict[str, bytes]) -> dict[str, bytes]:
    return worker_and_list(FIRST, LATER, digests_of(build, {}))


def under(folder: str, paths: list[str]) -> set[str]:
    return {path for path in paths if path.startswith(folder) and path.endswith(".html")}


def test_the_papers_of_this_week_and_the_next_come_first_and_no_others(
    listed: dict[str, list[str]],
) -> None:
    first = listed["first"]
    assert under("cut/", first) == {f"cut/{day}.html" for day in CUT_DAYS}
    assert under("orders/", first) == {f"orders/{o}{p}.html" for o in ORDERS for p in PAPERS}
    assert under("weeks/", first) == {"weeks/2026-W38.html", "weeks/2026-W39.html"}
    assert {"this-week.html", "no-signal.html", "orders.html"} <= {*first}
    kept = first + listed["later"]
    assert under("cut/", kept) | under("orders/", kept) == under("cut/", first) | under(
        "orders/", first
    )


@pytest.mark.parametrize(
    "folder", ["arrangements", "assets/pictures", "flowers", "lessons", "practice"]
)
def test_every_recipe_with_its_picture_every_stem_and_every_lesson_is_kept(
    folder: str, staff: Path, listed: dict[str, list[str]]
) -> None:
    there = {f"{folder}/{file.name}" for file in (staff / folder).glob("*.[hs][tv]*")}
    assert len(there) > 8
    assert there <= {*listed["first"], *listed["later"]}


def test_all_that_pages_are_set_with_comes_first(staff: Path, listed: dict[str, list[str]]) -> None:
    theme = staff / "assets" / "theme"
    files = {str(f.relative_to(staff)) for f in theme.rglob("*") if f.suffix not in (".txt", "")}
    assert {*files, "assets/tints.css"} <= {*listed["first"]}


def test_what_is_on_the_list_is_there_once(staff: Path, listed: dict[str, list[str]]) -> None:
    paths = listed["first"] + listed["later"]
    assert len({*paths}) == len(paths)
    assert [path for path in paths if not (staff / path).is_file()] == []


def test_of_each_photo_one_file_is_kept_of_a_phones_width(listed: dict[str, list[str]]) -> None:
    paths = listed["first"] + listed["later"]
    photos = [Path(path).stem.split("-") for path in paths if path.startswith("assets/photos/")]
    assert len({photo for photo, _ in photos}) == len(photos) > 5
    assert {width for _, width in photos} == {"960"}


def test_a_photo_that_is_narrower_than_a_phone_is_kept_as_wide_as_it_is() -> None:
    html = b'<source srcset="../assets/photos/a-480.avif 480w, ../assets/photos/a-640.avif 640w">'
    assert shown_on(["made/x.html"], {"made/x.html": html}) == ["assets/photos/a-640.avif"]


def test_all_that_is_kept_is_a_few_megabytes(staff: Path, listed: dict[str, list[str]]) -> None:
    sizes = {
        part: sum(len(gzip.compress((staff / path).read_bytes(), 6)) for path in listed[part])
        for part in ("first", "later")
    }
    assert sum(sizes.values()) < MOST_MB * 1e6, sizes
    assert sizes["first"] < 2e6, sizes


@pytest.mark.parametrize(
    "change",
    [{path: BUILD[path] + b"." for path in [each]} for each in BUILD] + [{"new.html": b"5"}],
    ids=[*BUILD, "a file more"],
)
def test_a_build_has_another_version_wherever_a_file_has_changed(change: dict[str, bytes]) -> None:
    assert version_in(made_of({**BUILD, **change})) != version_in(made_of(BUILD))


def test_a_build_has_the_same_version_and_list_where_no_file_has_changed() -> None:
    backwards = dict(reversed(BUILD.items()))
    assert made_of(backwards) == made_of(BUILD)
    assert json.loads(made_of(BUILD)[LIST])["later"][1][0] == "c%20d.html"


def test_the_list_tells_a_changed_file_from_those_that_are_the_same() -> None:
    before, after = (
        dict(json.loads(made_of(build)[LIST])["later"])
        for build in (BUILD, {**BUILD, "b.html": b"another"})
    )
    assert [path for path in before if before[path] != after[path]] == ["b.html"]


def test_a_photo_is_known_by_its_name_and_any_other_copy_by_what_is_in_it(tmp_path: Path) -> None:
    (tmp_path / "a.js").write_bytes(b"1")
    copies = {"assets/photos/0f-960.avif": tmp_path / "never-read", "js/a.js": tmp_path / "a.js"}
    before = digests_of({}, copies)
    (tmp_path / "a.js").write_bytes(b"2")
    after = digests_of({}, copies)
    assert [path for path in before if before[path] != after[path]] == ["js/a.js"]


def test_the_site_may_lie_in_any_folder(staff: Path, listed: dict[str, list[str]]) -> None:
    told = json.loads((staff / MANIFEST).read_text("utf-8"))
    named = [told["id"], told["scope"], told["start_url"], *(icon["src"] for icon in told["icons"])]
    named += [shortcut["url"] for shortcut in told["shortcuts"]]
    assert not [path for path in (*named, *listed["first"]) if path.startswith("/") or ":" in path]
    assert all((staff / path).exists() for path in named)


def test_the_manifest_opens_this_week_in_a_window_of_its_own(staff: Path) -> None:
    told = json.loads((staff / MANIFEST).read_text("utf-8"))
    assert (told["name"], told["short_name"]) == ("Teasel & Rook", "Bench copy")
    assert (told["display"], told["start_url"]) == ("standalone", "this-week.html")
    week = "weeks/2026-W38.html"
    said = [
        (staff / path).read_text("utf-8").split("<main")[1] for path in (week, "this-week.html")
    ]
    assert said[0].replace('"../', '"').count("<li") == said[1].count("<li")


def test_icons_have_the_sides_that_they_say(staff: Path) -> None:
    told = json.loads((staff / MANIFEST).read_text("utf-8"))["icons"]
    assert [icon["purpose"] for icon in told] == ["any", "any", "maskable"]
    for icon in told:
        with Image.open(staff / icon["src"]) as drawn:
            assert "x".join(map(str, drawn.size)) == icon["sizes"]


def test_whatever_shape_a_phone_cuts_the_icon_to_the_flower_stays_whole() -> None:
    drawn = Image.open(BytesIO(icons()[ICON.format(SHAPED)])).convert("RGB")
    side, ground = drawn.width, drawn.getpixel((0, 0))
    safe = (side * 0.4) ** 2  # W3C, Web Application Manifest, 1.3.1: within two fifths of the side
    out = [
        (x, y)
        for x in range(0, side, 4)
        for y in range(0, side, 4)
        if drawn.getpixel((x, y)) != ground and (x - side / 2) ** 2 + (y - side / 2) ** 2 > safe
    ]
    assert not out


def test_the_clients_site_keeps_nothing_on_a_phone(demo_sites: dict[Audience, Path]) -> None:
    clients = demo_sites["clients"]
    assert not [name for name in (WORKER, LIST, MANIFEST) if (clients / name).exists()]
    assert not list(clients.rglob("*ticks.js")) + list(clients.rglob("offline.js"))
    for file in clients.rglob("*.html"):
        html = file.read_bytes()
        assert b"manifest.json" not in html and b"offline.js" not in html, file
