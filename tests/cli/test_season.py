"""`corymb season`: what stands in a week, and what can be made."""

from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from tests.cli.conftest import Run, change

# The garden lies about four days later than the book. The middle of week 31 is 2 August in a plain
# year: cosmos and dahlias stand by then, lady's mantle and the grass stopped on 31 July.
AUGUST = """\
Week 31, 27 July to 2 August 2026, Dunmallow

Stands
  sure            Dahlia, coral; Cosmos, white; Cornflower, blue; Scabious, lilac;
                  Snapdragon, cream; Hornbeam
  touch and go    Lady's mantle; Quaking grass

In the beds
  coming on       none
  at best         none
  going over      none

Posies
  with a variant  Kitchen jug: Late summer (sure)

Hand-ties
  as pictured     Market bunch (sure)

Last chances, within 4 weeks
  Kitchen jug: until week 34, 17 to 23 August 2026. After that nothing stands in for
    blue cornflower. Again from early July 2027.
"""


def test_a_week_is_told_by_what_stands_and_by_what_can_be_made_of_it(
    studio: Path, run: Run
) -> None:
    assert run("season", "--on", "2026-07-30").output == AUGUST


SAID = {
    "coming on": ("1 June 2026", "coming on Cornflower, blue; Lady's mantle; Quaking grass; Horn"),
    "going over": ("2026-07-20", "going over Lady's mantle; Quaking grass"),
    "not then": (
        "2026-09-10",
        "Posies not then Kitchen jug (next early July 2027) "
        "Hand-ties as pictured Market bunch (sure)",
    ),
    "nothing at all": (
        "2026-12-30",
        "to 3 January 2027, Dunmallow Stands nothing; first Cornflower, blue; Lady's mantle; ",
    ),
    "last chances": (
        "1 October 2026",
        "Market bunch: until week 41, 5 to 11 October 2026. After that nothing stands in for "
        "hornbeam, coral dahlia, cream snapdragon and white cosmos. Again from late July 2027.",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("day", "told"), SAID.values(), ids=SAID)
def test_what_a_week_has_is_told_in_the_words_of_the_pages(
    studio: Path, run: Run, day: str, told: str
) -> None:
    assert told in " ".join(run("season", "--on", day).output.split())


def test_without_a_day_it_is_the_week_of_today(studio: Path, run: Run) -> None:
    today = datetime.now(ZoneInfo("Europe/Dublin")).date()
    assert run("season").output == run("season", "--on", today.isoformat()).output
    assert run("season").output.startswith(f"Week {today.isocalendar().week}, ")


def test_a_studio_with_an_error_is_put_right_first(studio: Path, run: Run) -> None:
    change(studio / "content/recipes/hand-tie/market-bunch.yml", "time:", "tme:")
    result = run("season")
    assert result.exit_code == 1
    assert "`tme` is not a key here. Did you mean `time`?" in result.output
    assert result.output.endswith("1 error; put them right first.\n")


def test_a_day_that_isn_t_one_is_answered_in_a_sentence(studio: Path, run: Run) -> None:
    result = run("season", "--on", "next week")
    assert result.exit_code == 2
    assert "‘next week’ is not a date: write it like ‘2026-09-19’" in result.output
