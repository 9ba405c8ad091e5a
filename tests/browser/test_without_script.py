"""Is everything that matters there when JavaScript is off?"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Playwright, expect

from corymb.studio.load import read_studio
from corymb.studio.studio import Studio
from corymb.views.pieces import AUDIENCES, Audience
from tests import conftest
from tests.browser.chromium import start_chromium
from tests.browser.conftest import Visit
from tests.browser.frames import pages_in, read_pages
from tests.browser.kinds import Kind, kinds

ROLES = {"depth", "light", "accent"}

# The visible words of a recipe's page: innerText leaves out what can't be seen. Apostrophes as
# they are written in the files.
READ = """(page) => {
  const words = (root, selector) =>
    [...root.querySelectorAll(selector)].map((part) => part.innerText.trim().replaceAll("’", "'"));
  const rows = [...page.querySelectorAll(".lines tbody tr")];
  return {
    counts: rows.map((row) => Number(words(row, ".count")[0])),
    roles: rows.map((row) => words(row, ".part span")[0].toLowerCase()),
    names: words(page, ".lines tbody a"),
    total: Number(words(page, ".lines tfoot .count")[0]),
    season: words(page, ".season-says").join(" "),
    variants: words(page, ".variant-switch a"),
  };
}"""


@pytest.fixture(scope="module")
def studio() -> Studio:
    studio, _ = read_studio(conftest.STUDIO)
    assert studio
    return studio


def recipe_faults(path: str, said: dict[str, Any], studio: Studio) -> list[str]:
    """What is missing in what the page of a recipe, or of one of its variants, says."""
    recipe_id, _, known_as = Path(path).stem.partition("--")
    recipe = studio.recipes[recipe_id]
    faults = []
    if not said["counts"] or min(said["counts"]) < 1 or sum(said["counts"]) != said["total"]:
        faults.append(f"counts {said['counts']} are not {said['total']} in all")
    if not set(said["roles"]) <= ROLES:
        faults.append(f"roles {said['roles']}")
    if not said["season"].endswith("."):
        faults.append(f"season ‘{said['season']}’")
    if missing := [v.name for v in recipe.variants.values() if v.name not in said["variants"]]:
        faults.append(f"variants {missing} are not there to choose")
    if not known_as and recipe.based_on is None:
        written = [(line.count, studio.stems[line.stem].name) for line in recipe.stems]
        if sorted(written) != sorted(zip(said["counts"], said["names"], strict=True)):
            faults.append(f"lines {said['counts']} {said['names']} are not {written}")
    return [f"{path}: {fault}" for fault in faults]


@pytest.mark.parametrize("audience", AUDIENCES)
def test_every_recipe_shows_counts_roles_windows_and_variants_without_script(
    audience: Audience,
    plain_browser: Browser,
    demo_sites: dict[Audience, Path],
    demo_addresses: dict[Audience, str],
    studio: Studio,
) -> None:
    paths = pages_in(demo_sites[audience], "arrangements")
    assert len(paths) > len(studio.recipes)
    said = read_pages(plain_browser, demo_addresses[audience], paths, READ, script=False)
    faults = [fault for path in paths for fault in recipe_faults(path, said[path], studio)]
    assert not faults, "\n".join(faults)


@pytest.mark.parametrize("kind", kinds("home"), ids=str)
def test_the_menu_opens_and_leads_on_without_script(kind: Kind, visit: Visit) -> None:
    page = visit(kind, java_script_enabled=False)
    page.get_by_text("Menu", exact=True).click()
    menu = page.get_by_role("navigation", name="Main")
    for label in ("Arrangements", "Flowers", "Made here", "Search"):
        expect(menu.get_by_role("link", name=label)).to_be_visible()
    menu.get_by_role("link", name="Arrangements").click()
    expect(page.get_by_role("heading", level=1, name="Arrangements")).to_be_visible()


@pytest.mark.parametrize(
    ("kind", "entries"),
    [
        *((kind, ".card-name a") for kind in kinds("arrangements", "style")),
        *((kind, ".year-name a") for kind in kinds("flowers")),
        *((kind, ".made-name a") for kind in kinds("made-list")),
        *((kind, ".lesson-item a") for kind in kinds("lessons")),
    ],
    ids=str,
)
def test_a_list_shows_all_its_entries_without_script(
    kind: Kind, entries: str, visit: Visit
) -> None:
    page = visit(kind, java_script_enabled=False)
    there = page.locator(entries).count()
    assert page.locator(f"{entries}:visible").count() == there > 2
    assert not page.locator("[data-filters]:visible").count()


@pytest.mark.parametrize("kind", kinds("recipe", "made-piece", "made-list"), ids=str)
def test_photos_are_shown_without_script(kind: Kind, visit: Visit) -> None:
    page = visit(kind, java_script_enabled=False)
    photo = page.locator("picture img").first
    expect(photo).to_be_visible()
    complete, width, source = photo.evaluate(
        "(image) => [image.complete, image.naturalWidth, image.currentSrc]"
    )
    assert complete and width >= 300 and source.endswith(".avif")
    assert len(photo.get_attribute("alt") or "") > 10


@pytest.mark.parametrize("kind", kinds("recipe", audience="clients"), ids=str)
def test_photo_and_drawing_change_places_without_script(kind: Kind, visit: Visit) -> None:
    page = visit(kind, java_script_enabled=False)
    photo, drawn = page.locator(".show-photo img").last, page.locator(".show-drawn img")
    expect(photo).to_be_visible()
    expect(drawn).to_be_hidden()
    page.get_by_text("Drawn", exact=True).click()
    expect(drawn).to_be_visible()
    expect(photo).to_be_hidden()
    expect(page.get_by_text("Drawn from its recipe, to scale")).to_be_visible()
    expect(page.locator(".credit", has_text="Photo:")).to_be_hidden()


def test_search_says_that_it_takes_script_and_where_else_to_look(
    playwright: Playwright, demo_addresses: dict[Audience, str]
) -> None:
    # Only a browser that has no script at all shows what is written for it.
    with start_chromium(playwright, "--blink-settings=scriptEnabled=false") as browser:
        page = browser.new_page()
        page.goto(demo_addresses["clients"] + "search.html")
        instead = page.locator("[data-search-instead]")
        expect(instead).to_be_visible()
        expect(instead.get_by_role("link", name="all flowers")).to_be_visible()
