"""`corymb cut`: what to cut for the orders of some days."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from tests.cli.conftest import Run, change

ORDER = """\
name: Garden lunch
client: {name: the garden club}
date: 2026-08-01
where: {place: the walled garden, setting: outdoors, light: daylight}
handover: collection
lines:
  - 3 market-bunch
"""
WALK = "counts: {dahlia-coral: 40, cosmos-white: 90, snapdragon-cream: 60, hornbeam: 60}\n"


@pytest.fixture
def lunch(studio: Path) -> Path:
    """A new studio with an order and a walk."""
    for name, text in (("orders/2026/garden-lunch.yml", ORDER), ("walks/2026-W31.yml", WALK)):
        file = studio / "content" / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, encoding="utf-8")
    return studio


LIST = """\
Cut on Thursday 30 July 2026
For Garden lunch, wanted on Saturday 1 August.
By the walk of week 31, 27 July to 2 August 2026, counted the same week.
No other plan leaves less missing, or costs less in stems bought, colour and waste:
  that is proven.

Bed 1
  [ ]   25  1 × 25      Dahlia, coral
            nearly full open, the back petals still firm
            17 Garden lunch: tall bucket 1
            8 left over
            15 stay in the bed

Bed 2
  [ ]   20  2 × 10      Cosmos, white
            the bud just unfolding, petals not yet flat
            17 Garden lunch: tall bucket 4
            3 left over
            70 stay in the bed
  [ ]   25  1 × 25      Snapdragon, cream
            a third of the flowers open
            24 Garden lunch: tall bucket 2
            1 left over
            35 stay in the bed

Hedge
  [ ]   25  1 × 25      Hornbeam
            the leaves firm, not the soft tips of spring
            17 Garden lunch: tall bucket 3
            8 left over
            35 stay in the bed

Garden lunch, wanted on Saturday 1 August
  75 stems in 4 × tall bucket.
   1 tall bucket: 17 Dahlia, coral
   2 tall bucket: 24 Snapdragon, cream
   3 tall bucket: 17 Hornbeam
   4 tall bucket: 17 Cosmos, white

Take care
  Dahlia: keep trimmings away from pets.
"""


def test_the_cut_is_told_bed_by_bed_and_then_by_order(lunch: Path, run: Run) -> None:
    assert run("cut", "--from", "2026-08-01").output == LIST


def test_a_day_is_read_as_one_writes_it(lunch: Path, run: Run) -> None:
    assert run("cut", "--from", "27 July 2026", "--to", "Sunday 2 August 2026").output == LIST


def test_a_terminal_that_knows_only_ascii_gets_it_too(
    lunch: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys.modules["corymb.cli.cut"], "is_plain", lambda: True)
    told = run("cut", "--from", "2026-08-01").output
    assert told.isascii()
    assert "  [ ]   25  1 x 25      Dahlia, coral" in told


TABLE = """\
cut on,bed,stem,botanical,order,wanted on,stems,cut,bought in,spare,buckets
2026-07-30,bed 1,"Dahlia, coral",Dahlia,Garden lunch,2026-08-01,17,17,0,2,tall bucket 1
2026-07-30,bed 1,"Dahlia, coral",Dahlia,left over,,8,8,0,0,
"""


def test_a_table_for_spreadsheets_is_written_beside_it(lunch: Path, run: Run) -> None:
    result = run("cut", "--from", "2026-08-01", "--csv", "cut.csv")
    assert result.output == f"{LIST}\nWrote cut.csv\n"
    written = Path("cut.csv").read_bytes()
    assert written.decode("utf-8-sig").replace("\r\n", "\n").startswith(TABLE)


def test_each_cutting_day_has_a_list_of_its_own(lunch: Path, run: Run) -> None:
    second = lunch / "content/orders/2026/garden-tea.yml"
    text = ORDER.replace("lunch", "tea").replace("2026-08-01", "2026-08-05")
    second.write_text(text, encoding="utf-8")
    told = run("cut", "--from", "2026-08-01", "--to", "2026-08-05").output
    lists = [line for line in told.splitlines() if line.startswith("Cut on")]
    assert lists == ["Cut on Thursday 30 July 2026", "Cut on Monday 3 August 2026"]
    assert "less what is cut before this day" in " ".join(told.split())
    assert told.startswith(LIST)


def test_what_is_short_says_what_is_swapped_bought_and_missing(lunch: Path, run: Run) -> None:
    walk = lunch / "content/walks/2026-W31.yml"
    change(walk, "dahlia-coral: 40", "dahlia-coral: 4")
    change(walk, "hornbeam: 60", "hornbeam: 10")
    told = " ".join(run("cut", "--from", "2026-08-01").output.split())
    assert "To buy in, €" in told and "Dahlia, coral, €" in told
    assert "Missing: 8 Hornbeam, for 3 Market bunch" in told


SAID = {
    "nothing that day": (
        ("--from", "2026-07-20"),
        "Nothing is wanted on Monday 20 July 2026, so nothing has to be cut. The next is Garden "
        "lunch, on Saturday 1 August 2026: corymb cut --from 2026-08-01\n",
    ),
    "nothing any more": (
        ("--from", "2027-07-20", "--to", "2027-07-21"),
        "Nothing is wanted from Tuesday 20 July 2027 to Wednesday 21 July 2027, nor in the year "
        "after.\n",
    ),
    "a leap day": (("--from", "2028-02-29"), "Nothing is wanted on Tuesday 29 February 2028, nor"),
}


@pytest.mark.parametrize(("asked", "said"), SAID.values(), ids=SAID)
def test_that_nothing_is_due_is_no_error(
    asked: tuple[str, ...], said: str, lunch: Path, run: Run
) -> None:
    result = run("cut", *asked)
    assert result.exit_code == 0
    assert result.output.startswith(said)


REFUSED = {
    "backwards": (
        ("--from", "2026-08-02", "--to", "2026-08-01"),
        "Error: --to 2026-08-01 is before --from 2026-08-02: put the earlier day first.\n",
    ),
    "no day": (("--from", "friday"), "‘friday’ is not a date: write it like ‘2026-09-19’"),
    "no first day": (("--to", "2026-08-01"), "Missing option '--from'."),
}


@pytest.mark.parametrize(("asked", "said"), REFUSED.values(), ids=REFUSED)
def test_days_that_can_t_be_are_answered_in_a_sentence(
    asked: tuple[str, ...], said: str, lunch: Path, run: Run
) -> None:
    result = run("cut", *asked)
    assert result.exit_code != 0
    assert said in result.output


def test_a_studio_with_an_error_is_put_right_first(lunch: Path, run: Run) -> None:
    change(lunch / "content/orders/2026/garden-lunch.yml", "lines:", "lnes:")
    result = run("cut", "--from", "2026-08-01")
    assert result.exit_code == 1
    assert result.output.endswith("put them right first.\n")
