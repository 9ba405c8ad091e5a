"""What is served while a studio's files are edited: what is open at once, then all of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from pathlib import Path
from queue import Queue
from threading import Event, Thread, active_count

import pytest

from corymb.site.build import BuildReport
from corymb.site.live.building import LiveBuilding
from corymb.site.live.live_site import LiveSite
from corymb.site.settings import SiteSettings, read_settings
from corymb.views.pieces import AUDIENCES
from tests.fuzz.little import Demo

ROOT = Path(__file__).parents[3]
RECIPE = "recipes/posy/hedgerow-jar.yml"
NEW = "recipes/posy/new-jar.yml"
PAGE = "arrangements/hedgerow-jar.html"
DRAWING = "assets/pictures/hedgerow-jar.svg"
NEW_PAGE = "arrangements/new-jar.html"
SECONDS = 60.0
SETTINGS = """\
site_name: A little studio
site_url: https://garden.example/
docs_dir: content/pages
use_directory_urls: false
theme: {name: corymb}
plugins:
  - corymb: {studio: content, cache: cache}
"""


@dataclass
class Served:
    """A little studio on the disk, served; the rest of its sites follows while the gate is open."""

    folder: Path
    settings: SiteSettings
    live: LiveSite
    building: LiveBuilding
    finished: Queue[BuildReport]
    gate: Event = field(default_factory=Event)

    @classmethod
    def of(cls, folder: Path) -> Served:
        settings = read_settings(folder / "mkdocs.yml")
        live = LiveSite({name: settings.output(name) for name in AUDIENCES})
        finished: Queue[BuildReport] = Queue()
        building = LiveBuilding(live, AUDIENCES, finished.put)
        served = cls(folder, settings, live, building, finished)
        breath = building._breath

        def at_the_gate() -> None:
            breath()
            while not served.gate.wait(0.001):
                breath()

        building._breath = at_the_gate  # type: ignore[method-assign]
        served.gate.set()
        return served

    def file(self, name: str) -> Path:
        return self.folder / "content" / name

    def save(self, name: str, old: str, new: str) -> BuildReport:
        """Save a file with one word changed, and keep up with it."""
        text = self.file(name).read_text("utf-8")
        assert old in text
        self.file(name).write_text(text.replace(old, new, 1), "utf-8")
        return self.building.keep_up(self.settings)

    def shown(self, address: str = PAGE) -> str:
        found = self.building.at("clients", address)
        return found.decode() if isinstance(found, bytes) else ""

    def published(self, address: str = PAGE) -> str:
        return (self.settings.output("clients") / address).read_text("utf-8")

    def until_whole(self) -> BuildReport:
        self.gate.set()
        return self.finished.get(timeout=SECONDS)


@pytest.fixture(scope="module")
def begun(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Served]:
    folder = tmp_path_factory.mktemp("served")
    demo = Demo(ROOT / "content", ROOT / "site_demo" / "mkdocs.yml")
    demo.texts[RECIPE] = demo.texts[RECIPE].partition("\nvariants:\n")[0] + "\n"
    for path, data in demo.around(RECIPE).items():
        file = folder / "content" / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(data)
    (folder / "content" / "mkdocs.yml").unlink()
    (folder / "mkdocs.yml").write_text(SETTINGS, "utf-8")
    served = Served.of(folder)
    assert not served.building.begin(served.settings).errors
    yield served
    served.building.end()


@pytest.fixture
def served(begun: Served) -> Iterator[Served]:
    """As it was to begin with, for each test."""
    before = begun.file(RECIPE).read_bytes()
    yield begun
    begun.gate.set()
    begun.building.rest()
    begun.file(RECIPE).write_bytes(before)
    begun.file(NEW).unlink(missing_ok=True)
    begun.building.keep_up(begun.settings)
    begun.finished.queue.clear()
    begun.until_whole()


def test_a_save_shows_at_once_in_an_open_page_and_the_folder_follows(served: Served) -> None:
    served.gate.clear()
    news = served.live.news
    with served.live.looked_at("clients", PAGE):
        served.save(RECIPE, "care: ", "care: At once. ")
    assert served.live.news.build != news.build
    assert "At once." in served.shown()
    assert "At once." not in served.published()
    assert not served.until_whole().errors
    assert served.published() == served.shown()


def test_a_second_save_interrupts_what_follows_the_first(served: Served) -> None:
    served.gate.clear()
    served.save(RECIPE, "care: ", "care: The first. ")
    served.save(RECIPE, "care: ", "care: The second. ")
    served.until_whole()
    assert "The second. The first." in served.published()
    assert served.finished.empty()


def test_an_error_leaves_the_last_good_pages_up_and_its_mending_refreshes(served: Served) -> None:
    served.gate.clear()
    served.save(RECIPE, "5 cosmos-white", "9 cosmos-white")
    page, drawing = served.shown(), served.shown(DRAWING)
    assert page != served.published()
    assert drawing != served.published(DRAWING)
    assert served.save(RECIPE, "9 cosmos-white", "9 cosmos-whit").errors
    assert served.shown() == page
    assert served.shown(DRAWING) == drawing
    slipped = served.live.news
    assert "cosmos-whit" in slipped.trouble
    served.save(RECIPE, "9 cosmos-whit", "9 cosmos-white")
    assert not served.live.news.trouble
    assert served.live.news.build != slipped.build
    served.until_whole()
    assert served.published() == page
    assert served.published(DRAWING) == drawing


def test_a_new_page_can_be_had_once_all_is_whole_and_a_gone_one_until_then(served: Served) -> None:
    served.gate.clear()
    recipe = served.file(RECIPE).read_text("utf-8").partition("\nphotos:")[0]
    served.file(NEW).write_text(f"{recipe}\n".replace("Hedgerow", "New"), "utf-8")
    served.building.keep_up(served.settings)
    assert not served.shown(NEW_PAGE)
    served.until_whole()
    assert "New jar" in served.shown(NEW_PAGE)
    served.gate.clear()
    served.file(NEW).unlink()
    served.building.keep_up(served.settings)
    assert "New jar" in served.shown(NEW_PAGE)
    served.until_whole()
    assert not served.shown(NEW_PAGE)
    assert not (served.settings.output("clients") / NEW_PAGE).exists()


def test_many_browsers_that_ask_while_the_rest_follows_get_what_the_whole_has(
    served: Served,
) -> None:
    served.gate.clear()
    served.save(RECIPE, "name: Hedgerow jar", "name: Lane jar")
    folder = served.settings.output("clients")
    addresses = [file.relative_to(folder).as_posix() for file in folder.rglob("*.html")]
    answers: list[tuple[str, str]] = []
    asking = [
        Thread(target=lambda at=at: answers.extend((each, served.shown(each)) for each in at))
        for at in (addresses, addresses[::-1], addresses[5:] + addresses[:5])
    ]
    for each in asking:
        each.start()
    served.until_whole()
    for each in asking:
        each.join(SECONDS)
    assert len(answers) == 3 * len(addresses)
    assert {address for address, page in answers if page != served.published(address)} == set()


def test_the_folder_of_a_staffs_site_that_is_to_be_locked_is_left_to_a_build(
    served: Served,
) -> None:
    folder = served.settings.output("staff")
    before = (folder / PAGE).read_bytes()
    open_to_all = served.settings
    served.settings = replace(open_to_all, lock_staff=True)
    try:
        served.save(RECIPE, "care: ", "care: Unlocked. ")
        served.until_whole()
        found = served.building.at("staff", PAGE)
        assert isinstance(found, bytes)
        assert b"Unlocked." in found
        assert "Unlocked." in served.published()
        assert (folder / PAGE).read_bytes() == before
    finally:
        served.settings = open_to_all


def test_at_the_end_no_spare_is_left_and_nothing_goes_on(served: Served) -> None:
    threads = active_count()
    served.gate.clear()
    served.save(RECIPE, "care: ", "care: Never whole. ")
    served.building.end()
    assert active_count() <= threads
    assert served.finished.empty()
    assert "Never whole." not in served.published()
    assert not [*served.folder.rglob("spare")]
