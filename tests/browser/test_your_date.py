"""Does the page answer for a day, keep the day in its address, and know every week there is?"""

from __future__ import annotations

from collections import Counter
from datetime import date, timedelta
from typing import Any
from urllib.parse import parse_qs, urlsplit

import pytest
from playwright.sync_api import Page, expect

from corymb.trade.season.weeks import week_on
from corymb.views.pieces import Audience
from tests.browser.conftest import DESK, PHONE, Visit
from tests.browser.kinds import kinds

PATH = "your-date.html"
DAY = "2026-09-19"
SHOWN = kinds("your-date", audience="clients")[0]
PUBLIC = f"https://teaselandrook.example/{PATH}?date={DAY}"
PAUSE = 1100  # ms; what is chosen faster is one step back

# What is shown of each recipe: its state, and whether it stands folded among those not then.
FOUND = """[...document.querySelectorAll("[data-weeks]")].map((recipe) => {
  const shown = [...recipe.querySelectorAll("[data-answer]")].filter((answer) => !answer.hidden);
  const images = [...recipe.querySelectorAll("[data-goes-with]")].filter((image) => !image.hidden);
  return {
    states: shown.map((answer) => answer.dataset.answer),
    images: images.length,
    folded: recipe.closest("[data-date-not]") !== null,
    style: recipe.closest("[data-date-style]").querySelector("h2").textContent,
  };
})"""
ORDER = ("pictured", "variant", "swaps", "none")


@pytest.fixture
def ask(visit: Visit) -> Any:
    """Opens the page with a query in its address."""

    def asked(query: str = "", **options: Any) -> Page:
        return visit(SHOWN._replace(path=PATH + query), **options)

    return asked


def says(page: Page) -> str:
    return page.locator(".date-says").inner_text()


def date_in(page: Page) -> str | None:
    return parse_qs(urlsplit(page.url).query).get("date", [None])[0]


@pytest.mark.parametrize("size", [PHONE, DESK], ids=["phone", "desk"])
def test_a_day_is_chosen_with_keys_and_reloading_keeps_it(ask: Any, size: dict[str, int]) -> None:
    page = ask(viewport=size)
    expect(page.locator("[data-date-found]")).to_be_hidden()
    page.get_by_label("The flowers are for").focus()
    page.keyboard.type("09092026")  # alike whether the day or the month comes first
    expect(page.get_by_text("Wednesday 9 September 2026")).to_be_visible()
    assert date_in(page) == "2026-09-09"
    told = says(page)
    page.reload()
    expect(page.get_by_label("The flowers are for")).to_have_value("2026-09-09")
    assert says(page) == told


def test_every_recipe_has_one_answer_in_the_order_of_ways(ask: Any) -> None:
    found = ask(f"?date={DAY}").evaluate(FOUND)
    assert len(found) > 20
    assert all(len(recipe["states"]) == 1 for recipe in found)
    states = [recipe["states"][0] for recipe in found]
    assert len(set(states)) > 2, "the demo has several kinds on this day"
    for recipe, state in zip(found, states, strict=True):
        assert recipe["folded"] == (state == "none")
        assert recipe["images"] == (state != "none")
    for style in {recipe["style"] for recipe in found}:
        places = [ORDER.index(r["states"][0]) for r in found if r["style"] == style]
        assert places == sorted(places)


def test_how_many_can_be_made_is_said_aloud(ask: Any) -> None:
    page = ask(f"?date={DAY}")
    states = Counter(recipe["states"][0] for recipe in page.evaluate(FOUND))
    aloud = page.get_by_role("status").first
    expect(aloud).to_contain_text("Week 38, 14")
    ways = {"pictured": "as pictured", "variant": "with a variant", "swaps": "with swaps"}
    each = ", ".join(f"{states[way]} {words}" for way, words in ways.items() if states[way])
    can = states.total() - states["none"]
    expect(aloud).to_contain_text(f"{can} of {states.total()} arrangements can be made: {each}.")


def test_only_the_images_that_are_shown_are_fetched(
    visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit()
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(demo_addresses["clients"] + PATH)
    page.wait_for_load_state("networkidle")
    assert not [url for url in asked if "/pictures/" in url or "/photos/" in url]


def test_week_steps_move_the_day_by_seven(ask: Any) -> None:
    page = ask(f"?date={DAY}")
    page.get_by_role("button", name="A week later").focus()
    page.keyboard.press("Enter")
    assert date_in(page) == "2026-09-26"
    page.get_by_role("button", name="A week earlier").click(click_count=2)
    assert date_in(page) == "2026-09-12"
    expect(page.get_by_label("The flowers are for")).to_have_value("2026-09-12")


def test_what_cant_be_made_then_leads_to_the_nearest_day_it_can(ask: Any) -> None:
    page = ask(f"?date={DAY}")
    folded = page.locator("[data-date-not]").first
    folded.locator("summary").click()
    recipe = folded.locator("[data-weeks]").first
    name = recipe.get_by_role("heading").inner_text()
    recipe.get_by_role("button", name="The ne").first.click()
    day = date.fromisoformat(date_in(page) or "")
    assert day.weekday() == date.fromisoformat(DAY).weekday() and day.isoformat() != DAY
    can = page.locator("[data-date-can] [data-weeks]", has_text=name)
    expect(can).to_be_visible()
    expect(page.get_by_label("The flowers are for")).to_be_focused()


@pytest.mark.parametrize(
    ("today", "words"),
    [("2026-09-18", ["The nearest is ", "or "]), ("2027-01-15", ["The next is "])],
    ids=["both-to-come", "one-gone-by"],
)
def test_no_day_is_offered_that_has_gone_by(
    visit: Visit, demo_addresses: dict[Audience, str], today: str, words: list[str]
) -> None:
    page = visit()
    page.clock.set_fixed_time(f"{today}T12:00:00Z")
    page.goto(demo_addresses["clients"] + f"{PATH}?date=2027-01-20")
    recipe = page.locator("[data-weeks]", has_text="Hedgerow jar")
    offered = recipe.locator("[data-nearest]:not([hidden])").evaluate_all(
        "(buttons) => buttons.map((each) => [each.textContent, each.dataset.nearest])"
    )
    shown = [each for each in offered if each[0]]
    assert [text for text, _ in shown if text.startswith(tuple(words))] == [t for t, _ in shown]
    assert len(shown) == len(words)
    assert all(day >= today for _, day in shown)


def test_back_and_forward_go_through_the_days(ask: Any) -> None:
    page = ask(f"?date={DAY}")
    page.get_by_role("button", name="A week later").click()
    page.wait_for_timeout(PAUSE)
    page.get_by_label("The flowers are for").fill("2026-12-19")
    page.go_back()
    expect(page.get_by_text("Saturday 26 September 2026")).to_be_visible()
    page.go_back()
    expect(page.get_by_text("Saturday 19 September 2026")).to_be_visible()
    expect(page.get_by_label("The flowers are for")).to_have_value(DAY)
    page.go_forward()
    expect(page.get_by_text("Saturday 26 September 2026")).to_be_visible()


def test_days_changed_quickly_are_one_step_back(ask: Any) -> None:
    page = ask(f"?date={DAY}")
    page.evaluate("""() => {
      const later = document.querySelector("[data-date-step='7']");
      for (let week = 0; week < 5; week += 1) later.click();
    }""")
    assert date_in(page) == "2026-10-24"
    page.go_back()
    expect(page.get_by_text("Saturday 19 September 2026")).to_be_visible()


def test_a_day_that_is_taken_out_leaves_nothing_chosen(ask: Any) -> None:
    page = ask(f"?date={DAY}")
    page.get_by_label("The flowers are for").fill("")
    assert date_in(page) is None
    expect(page.locator("[data-date-found]")).to_be_hidden()
    expect(page.get_by_role("heading", name="Or month by month")).to_be_visible()
    assert not says(page).strip()


@pytest.mark.parametrize(
    ("query", "words"),
    [
        ("?date=2026-02-30", "The address says ‘2026-02-30’, and that isn’t a day."),
        ("?date=19.9.2026", "The address says ‘19.9.2026’, and that isn’t a day."),
        ("?date=2026-9-19", "The address says ‘2026-9-19’, and that isn’t a day."),
        ("?date=<b>soon</b>", "The address says ‘<b>soon</b>’, and that isn’t a day."),
        ("?date=1066-10-14", "too far off to answer for. Choose a day from 2000 to 2099."),
        ("?date=", "The address names no day."),
        ("?date", "The address names no day."),
    ],
    ids=["no-such-day", "dotted", "short", "markup", "far-off", "empty", "bare"],
)
def test_an_address_with_a_wrong_day_says_so_and_chooses_nothing(
    ask: Any, query: str, words: str
) -> None:
    page = ask(query)
    assert words in says(page)
    expect(page.get_by_label("The flowers are for")).to_have_value("")
    expect(page.locator("[data-date-found]")).to_be_hidden()


@pytest.mark.parametrize(
    ("today", "gone"), [("2026-09-19", False), ("2026-09-20", True)], ids=["the-day", "day-after"]
)
def test_a_day_that_has_gone_by_is_named_so(
    visit: Visit, demo_addresses: dict[Audience, str], today: str, gone: bool
) -> None:
    # The demo is built on 16 September 2026.
    page = visit(timezone_id="Pacific/Auckland")
    page.clock.set_fixed_time(f"{today}T00:30:00+12:00")
    page.goto(demo_addresses["clients"] + f"{PATH}?date={DAY}")
    assert ("That day has gone by" in says(page)) == gone


# ISO 8601: a week belongs to the year of its Thursday; 2026 and 2020 have 53.
@pytest.mark.parametrize(
    ("day", "week", "cell"),
    [
        ("2026-12-31", 53, 52),
        ("2027-01-01", 53, 52),
        ("2027-01-03", 53, 52),
        ("2027-01-04", 1, 1),
        ("2025-12-29", 1, 1),
        ("2025-12-28", 52, 52),
        ("2024-12-30", 1, 1),
        ("2020-12-31", 53, 52),
        ("2021-01-01", 53, 52),
        ("2023-01-01", 52, 52),
        ("2024-02-29", 9, 9),
    ],
)
def test_a_day_at_the_turn_of_the_year_gets_its_own_week(
    ask: Any, day: str, week: int, cell: int
) -> None:
    page = ask(f"?date={day}")
    assert f"Week {week}, " in says(page)
    chosen = page.evaluate(f"""[...document.querySelectorAll("[data-weeks]")].every((recipe) => {{
      const answers = recipe.querySelectorAll("[data-answer]");
      const lists = [recipe.dataset.weeks, recipe.dataset.next];
      return lists.some((list) => !answers[Number(list.split(" ")[{cell - 1}])].hidden);
    }})""")
    assert chosen


@pytest.mark.parametrize("zone", ["Europe/Dublin", "Pacific/Auckland", "America/Los_Angeles"])
def test_every_day_of_seven_years_has_the_week_that_python_gives_it(ask: Any, zone: str) -> None:
    first, last = date(2024, 1, 1), date(2030, 12, 31)
    days = [first + timedelta(days=each) for each in range((last - first).days + 1)]
    page = ask(timezone_id=zone)
    told = page.evaluate(
        """async (days) => {
          const week = await import("./assets/theme/js/week.js");
          return days.map((text) => {
            const day = week.dayFrom(text);
            return [week.weekOf(day), week.cellOf(day) + 1, week.written(week.mondayOf(day))];
          });
        }""",
        [day.isoformat() for day in days],
    )
    for day, (week, cell, monday) in zip(days, told, strict=True):
        assert week == day.isocalendar().week, day
        assert cell == week_on(day), day
        assert monday == (day - timedelta(days=day.weekday())).isoformat(), day


def test_the_day_is_sent_with_its_address(ask: Any) -> None:
    page = ask(f"?date={DAY}")
    page.evaluate("navigator.share = async (what) => { window.sent = what; }")
    page.get_by_role("link", name="Send this day").click()
    sent = page.evaluate("window.sent")
    assert sent["url"] == PUBLIC
    assert sent["title"].startswith("Saturday 19 September 2026")


def test_asking_begins_a_mail_about_the_day(ask: Any) -> None:
    page = ask(f"?date={DAY}")
    href = page.get_by_role("link", name="Ask about this day").get_attribute("href")
    assert href == "mailto:flowers@teaselandrook.example?subject=Saturday%2019%20September%202026"


def test_without_script_the_months_lead_on(visit: Visit) -> None:
    page = visit(SHOWN, java_script_enabled=False)
    expect(page.get_by_label("The flowers are for")).to_be_hidden()
    expect(page.locator("[data-date-found]")).to_be_hidden()
    page.get_by_role("link", name="September").click()
    expect(page.locator(".month > summary", has_text="September")).to_be_in_viewport()
