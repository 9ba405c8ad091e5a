"""While its files are edited, a studio's sites are what a new build would make of them."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import date
from pathlib import Path

import pytest

from corymb.site.build import BuildReport
from corymb.site.live.workshop import Workshop
from corymb.site.settings import SiteSettings, read_settings
from corymb.views.pieces import AUDIENCES
from tests.fuzz.little import Demo
from tests.site.sites_made import differences, made_anew

ROOT = Path(__file__).parents[3]
DAY = date(2026, 9, 16)
JAR = "content/recipes/posy/hedgerow-jar.yml"
LESSON = "content/techniques/clean-buckets.md"
ORDER = "content/orders/2026/barn-supper.yml"
SETTINGS = """\
site_name: A little studio
site_url: https://garden.example/
docs_dir: content/pages
use_directory_urls: false
theme:
  name: corymb
plugins:
  - corymb
"""


@dataclass
class Edited:
    """A studio on the disk, and a workshop that is open beside it."""

    folder: Path
    settings: SiteSettings
    workshop: Workshop

    def change(self, file: str, edit: Callable[[str], str]) -> None:
        """Save a file anew."""
        path = self.folder / file
        before = path.read_text("utf-8") if path.exists() else ""
        after = edit(before)
        assert after != before, f"{file} doesn't hold what was to be changed"
        path.write_text(after, "utf-8")

    def assert_as_made_anew(self) -> None:
        """The same is told, and the same made."""
        problems, sites = made_anew(self.settings, DAY)
        assert self.workshop.look() == problems
        if sites:
            assert differences(self.workshop.sites(BuildReport()), sites) == []


def little_studio() -> dict[str, bytes]:
    """The demo's jar with one of its variants, in an order beside another recipe; by path."""
    demo = Demo(ROOT / "content", ROOT / "site_demo" / "mkdocs.yml")
    jar, order = JAR.removeprefix("content/"), ORDER.removeprefix("content/")
    head, _, variants = demo.texts[jar].partition("\nvariants:\n")
    later = variants[variants.index("  later:\n") : variants.index("  last-of-the-lane:\n")]
    demo.texts[jar] = f"{head}\nvariants:\n{later}"
    demo.texts[order] = swap("  - 12 gleaners-trough, short\n", "")(demo.texts[order])
    return demo.around(order)


@pytest.fixture(scope="module")
def edited(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Edited]:
    folder = tmp_path_factory.mktemp("edited")
    for path, data in little_studio().items():
        file = folder / "content" / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(data)
    (folder / "mkdocs.yml").write_text(SETTINGS, "utf-8")
    settings = read_settings(folder / "mkdocs.yml")
    edited = Edited(folder, settings, Workshop(settings, AUDIENCES, DAY))
    edited.assert_as_made_anew()
    yield edited


def swap(old: str, new: str) -> Callable[[str], str]:
    return lambda text: text.replace(old, new, 1)


EDITS = [
    pytest.param(JAR, swap("care: ", "care: Every day. "), id="what-is-said-of-a-recipe"),
    pytest.param(JAR, swap("- 5 cosmos-white", "- 9 cosmos-white"), id="a-count-of-an-ordered-one"),
    pytest.param(JAR, swap("difficulty: easy", "difficulty: skilled"), id="how-hard-it-is"),
    pytest.param(JAR, swap("name: Hedgerow jar", "name: Lane jar"), id="a-name-many-pages-say"),
    pytest.param(JAR, swap("across: 22 cm", "across: 25 cm\ndraft: yes"), id="a-draft-of-it"),
    pytest.param(JAR, swap("\ndraft: yes", ""), id="and-a-draft-no-more"),
    pytest.param(JAR, swap("- 9 cosmos-white", "- 9 cosmos-whit"), id="a-slip"),
    pytest.param(JAR, swap("- 9 cosmos-whit,", "- 6 cosmos-white,"), id="and-the-slip-mended"),
    pytest.param(
        "content/recipes/posy/new-jar.yml",
        lambda _: (ROOT / JAR).read_text("utf-8").partition("\nphotos:")[0] + "\n",
        id="a-new-recipe",
    ),
    pytest.param(ORDER, swap("date: 2026-09-19", "date: 2026-09-18"), id="another-day"),
    pytest.param("content/pages/care.md", lambda text: f"{text}\nMore words.\n", id="a-page"),
    pytest.param(LESSON, swap("needs: []", "needs: [lost]"), id="a-lesson-that-isnt-there"),
    pytest.param(LESSON, swap("[lost]", "[conditioning]"), id="lessons-in-a-circle"),
    pytest.param(LESSON, swap("[conditioning]", "[]"), id="and-the-circle-opened"),
    pytest.param(
        "content/stems/half-hardy-annuals.yml",
        swap("weight: ", "weight: 1"),
        id="a-stem-of-many-recipes",
    ),
    pytest.param(
        "content/studio.yml", swap("hourly rate: ", "hourly rate: 1"), id="the-studio-itself"
    ),
]


@pytest.mark.parametrize(("file", "edit"), EDITS)
def test_after_each_edit_all_is_as_a_new_build_makes_it(
    edited: Edited, file: str, edit: Callable[[str], str]
) -> None:
    """One after the other, so that each begins with what the ones before it left."""
    edited.change(file, edit)
    edited.assert_as_made_anew()


def test_a_page_can_be_had_before_the_rest_and_is_the_same(edited: Edited) -> None:
    edited.change(JAR, swap("care: ", "care: Twice a day. "))
    edited.workshop.look()
    page = edited.workshop.page("clients", "arrangements/hedgerow-jar.html")
    drawing = edited.workshop.drawing("assets/pictures/hedgerow-jar.svg")
    assert page and drawing
    assert b"Twice a day." in page
    whole = edited.workshop.sites(BuildReport())["clients"]
    assert whole.pages["arrangements/hedgerow-jar.html"] == page
    assert whole.files["assets/pictures/hedgerow-jar.svg"] == drawing.encode()


def test_a_recipe_that_is_gone_takes_its_pages_with_it(edited: Edited) -> None:
    (edited.folder / "content/recipes/posy/new-jar.yml").unlink()
    edited.workshop.look()
    assert edited.workshop.page("clients", "arrangements/new-jar.html") is None
    edited.assert_as_made_anew()


def test_a_photo_saved_anew_is_shown_anew(edited: Edited) -> None:
    photos = edited.folder / "content" / "photos"
    one, other = sorted(photos.iterdir())[:2]
    one.write_bytes(other.read_bytes())
    edited.assert_as_made_anew()
