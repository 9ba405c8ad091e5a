"""`corymb repeat`: an old order at a new date, in a file of its own; the old one is left alone."""

from __future__ import annotations

import re
import shutil
from datetime import date
from pathlib import Path

import pytest

from corymb.checks import read_and_check
from corymb.studio.load import read_studio
from corymb.trade.orders.repeated import Repeating
from corymb.trade.season.makeable import Makeable
from tests.cli.conftest import Run, change
from tests.conftest import STUDIO

README = STUDIO.parent / "README.md"

OWN = """\
# yaml-language-server: $schema=../../../schemas/order.schema.json
name: Kitchen table
client: {name: the neighbours}
date: 2025-07-12    # a Saturday
where: {place: their kitchen, setting: indoors, light: daylight}
handover: collection
# The jug is theirs.
lines:
  - 2 kitchen-jug   # one for the sill
learnt: The sill is narrow.
used: {cornflower-blue: 13}
"""


@pytest.fixture
def demo(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A copy of the demo studio, with its folder as the current one."""
    folder = tmp_path / "content"
    shutil.copytree(STUDIO, folder)
    monkeypatch.chdir(folder)
    return folder


@pytest.fixture
def table(studio: Path) -> Path:
    """The file of an order in a new studio."""
    file = studio / "content" / "orders" / "2025" / "kitchen-table.yml"
    file.parent.mkdir(parents=True)
    file.write_text(OWN, encoding="utf-8")
    return file


def files(folder: Path) -> dict[str, str]:
    """All orders, by path."""
    found = sorted(folder.rglob("orders/**/*.yml"))
    return {str(f.relative_to(folder)): f.read_text(encoding="utf-8") for f in found}


def errors(folder: Path) -> list[str]:
    return [str(problem) for problem in read_and_check(folder)[1] if not problem.advice]


def new_in(folder: Path, before: dict[str, str]) -> tuple[str, str]:
    """The one file that has come, with its text; all others are as they were."""
    after = files(folder)
    (new,) = after.keys() - before.keys()
    assert {path: text for path, text in after.items() if path != new} == before
    return new, after[new]


# By hand: on 12 July of a plain year all stems of the jug stand (see test_show.py).
TOLD = """\
Kitchen table: Sunday 12 July 2026, week 28
The old one was on a Saturday.

What can be made then
   2 Kitchen jug: as pictured, sure.

Money, at today's costs: stems with their waste, and what is asked
"""


def test_an_order_is_taken_to_a_new_day_and_told_of(table: Path, run: Run) -> None:
    before = files(table.parents[2])
    result = run("repeat", "kitchen-table", "--on", "12 July 2026")
    assert result.exit_code == 0
    assert result.output.startswith(TOLD)
    assert "Sent before\n  Saturday 12 July 2025: Kitchen jug\n" in result.output
    assert "Learnt last time\n  The sill is narrow.\n" in result.output
    assert result.output.endswith(
        "Written: content/orders/2026/kitchen-table-2026.yml\n"
        "What was counted stays in the old file: used.\n"
    )
    path, text = new_in(table.parents[2], before)
    assert path == "orders/2026/kitchen-table-2026.yml"
    learnt = "# Learnt last time, Saturday 12 July 2025: The sill is narrow."
    assert text == (
        OWN.replace("2025-07-12", "2026-07-12")
        .replace("learnt: The sill is narrow.", learnt)
        .replace("used: {cornflower-blue: 13}", "# used:")
    )
    assert errors(table.parents[2]) == []


def test_a_variant_is_taken_and_written_where_it_can_be_made_as_pictured(
    table: Path, run: Run
) -> None:
    before = files(table.parents[2])
    result = run("repeat", "kitchen-table", "--on", "2026-08-12", "--id", "august-table")
    assert "   2 Kitchen jug, Late summer, in place of the recipe itself: as pictured, sure." in (
        result.output
    )
    path, text = new_in(table.parents[2], before)
    assert path == "orders/2026/august-table.yml"
    assert "  - 2 kitchen-jug, late-summer   # one for the sill\n" in text


def test_how_long_it_really_took_is_told_beside_what_the_recipes_reckon(
    table: Path, run: Run
) -> None:
    change(table, "used:", "minutes: 50\nused:")
    told = " ".join(run("repeat", "kitchen-table", "--on", "2026-07-12", "--dry").output.split())
    # By hand: a jug takes 15 minutes, a second 0.95 times that: 29.25, and whole minutes.
    assert "Making it took 50 min; the recipes reckon 30 for what it was, and 30 for" in told


def test_another_guide_price_is_told(table: Path, run: Run) -> None:
    recipe = table.parents[2] / "recipes/posy/kitchen-jug.yml"
    change(recipe, "    name: Late summer\n", "    name: Late summer\n    price: from 60\n")
    told = run("repeat", "kitchen-table", "--on", "2026-08-12", "--dry").output
    assert re.search(r"€\d+ → €120; guide price from €\d+ → from €60 All", " ".join(told.split()))


def test_dry_tells_the_same_and_writes_nothing(table: Path, run: Run) -> None:
    before = files(table.parents[2])
    dry = run("repeat", "kitchen-table", "--on", "2026-07-12", "--dry")
    assert files(table.parents[2]) == before
    told, _, where = dry.output.rpartition("\n\n")
    assert where == (
        "Nothing was written. Without --dry it would be "
        "content/orders/2026/kitchen-table-2026.yml\n"
    )
    assert run("repeat", "kitchen-table", "--on", "2026-07-12").output.startswith(told)


def test_no_file_is_ever_written_over(table: Path, run: Run) -> None:
    assert run("repeat", "kitchen-table", "--on", "2026-07-12").exit_code == 0
    assert run("repeat", "kitchen-table", "--on", "2026-07-19").output.endswith(
        "Written: content/orders/2026/kitchen-table-2026-07-19.yml\n"
        "What was counted stays in the old file: used.\n"
    )
    before = files(table.parents[2])
    again = run("repeat", "kitchen-table", "--on", "2026-07-19")
    assert (again.exit_code, again.output.splitlines()[-1]) == (
        1,
        "Error: There is an order called ‘kitchen-table-2026-07-19’ already, in "
        "content/orders/2026/kitchen-table-2026-07-19.yml; nothing was written. Give this one an "
        "--id of its own.",
    )
    assert files(table.parents[2]) == before


REFUSED = [
    (["kitchen-tabel", "--on", "2026-07-12"],
     "There is no order called ‘kitchen-tabel’. Did you mean ‘kitchen-table’?"),
    (["kitchen-table"], "Say for when: --on DATE, or --year YEAR for a standing order."),
    (["kitchen-table", "--on", "2026-07-12", "--year", "2026"],
     "Say for when: --on DATE, or --year YEAR for a standing order."),
    (["kitchen-table", "--year", "2027"],
     "‘kitchen-table’ is an order for one day. Say which: --on DATE. A whole --year is for "
     "standing orders."),
    (["nothing", "--year", "2027"],
     "There is no order called ‘nothing’. There are none yet."),
]  # fmt: skip


@pytest.mark.parametrize(("arguments", "told"), REFUSED)
def test_what_cannot_be_repeated_is_answered_with_what_can(
    table: Path, run: Run, arguments: list[str], told: str
) -> None:
    before = files(table.parents[2])
    result = run("repeat", *arguments)
    assert (result.exit_code, result.output) == (1, f"Error: {told}\n")
    assert files(table.parents[2]) == before


def test_a_date_is_read_as_everywhere(table: Path, run: Run) -> None:
    assert "can be misread: write 2026-07-12 or 2026-12-07" in (
        run("repeat", "kitchen-table", "--on", "12/7/2026").output
    )


def test_errors_in_the_studio_come_first(table: Path, run: Run) -> None:
    change(table, "2 kitchen-jug", "2 kitchen-jog")
    result = run("repeat", "kitchen-table", "--on", "2026-07-12")
    assert result.exit_code == 1
    assert "There is no recipe called ‘kitchen-jog’" in result.output
    assert result.output.endswith("put them right first. Nothing was written.\n")


def test_a_visit_is_written_out_as_an_order_of_its_own_with_its_look(demo: Path, run: Run) -> None:
    before = files(demo)
    result = run("repeat", "lantern-house", "--on", "2026-09-22")
    assert result.exit_code == 0
    assert "to the next visit, Tuesday 29 September" in " ".join(result.output.split())
    path, text = new_in(demo, before)
    assert path == "orders/2026/lantern-house-2026-09-22.yml"
    assert "\ndate: 2026-09-22\nvisit of: lantern-house\nlines:\n  - 1 lantern-house-" in text
    assert text.startswith("# yaml-language-server: $schema=../../../generator/")
    assert "/order.schema.json\n" in text
    assert errors(demo) == []
    again = run("repeat", "lantern-house", "--on", "2026-09-22")
    assert again.output == (
        "Error: The visit of Tuesday 22 September 2026 is written out already, as "
        "‘lantern-house-2026-09-22’.\n"
    )


@pytest.mark.parametrize(
    ("day", "told"),
    [
        ("2026-09-23", "The next is on Tuesday 29 September 2026: --on 2026-09-29."),
        ("2026-08-04", "The next is on Tuesday 11 August 2026: --on 2026-08-11."),
        ("2027-01-05", "For another year: corymb repeat lantern-house --year 2027."),
    ],
    ids=["not its day", "skipped", "after its end"],
)
def test_a_day_without_a_visit_is_answered_with_the_next(
    demo: Path, run: Run, day: str, told: str
) -> None:
    result = run("repeat", "lantern-house", "--on", day)
    assert result.exit_code == 1
    assert "The Lantern House, hall has no visit on " in result.output
    assert result.output.endswith(f"{told}\n")


def test_a_year_is_laid_out_visit_by_visit_and_shows_where_it_is_thin(demo: Path, run: Run) -> None:
    before = files(demo)
    result = run("repeat", "lantern-house", "--year", "2027")
    lines = result.output.splitlines()
    assert lines[0] == (
        "The Lantern House, hall: 52 visits, Tuesday 5 January 2027 to Tuesday 28 December 2027"
    )
    rows = [line for line in lines if line[:1] == "W" and line[1:3].isdigit()]
    assert len(rows) == 52
    assert (rows[0][:13], rows[-1][:13]) == ("W01    5 Jan ", "W52   28 Dec ")
    looks = [row.partition("Lantern House, ")[2].partition("  ")[0] for row in rows]
    twice = [row for one, other, row in zip(looks, looks[1:], rows[1:], strict=False)
             if one == other]  # fmt: skip
    assert all(row.endswith("again") for row in twice)
    assert any(line.startswith("Thin: ") for line in lines)
    path, text = new_in(demo, before)
    assert path == "orders/standing/lantern-house-2027.yml"
    assert "\nfrom: 2027-01-05\nuntil: 2027-12-28\n" in text
    assert "\n# skip: [2026-08-04]\n# moved: {2026-12-22: 2026-12-23}\n" in text
    assert "stand in it as comments: set the new ones." in result.output
    assert errors(demo) == []


def test_every_order_of_the_demo_can_be_repeated_and_reads_back_without_a_problem(
    demo: Path, run: Run
) -> None:
    known = [Path(path) for path in files(demo)]
    for number, file in enumerate(known):
        when = ["--year", "2031"] if file.parent.name == "standing" else ["--on", "2031-05-20"]
        result = run("repeat", file.stem, *when, "--take-swaps", "--id", f"new-{number}")
        assert result.exit_code == 0, result.output
    assert len(files(demo)) == 2 * len(known)
    assert errors(demo) == []


def test_taken_swaps_stand_beside_their_line_as_a_variant_would_hold_them(
    demo: Path, run: Run
) -> None:
    read, _ = read_studio(demo)
    assert read is not None
    repeating = Repeating(read, Makeable.of(read))
    laid = repeating.dues.laid_out("lantern-house", date(2026, 12, 31))
    told = (repeating.visit("lantern-house", each.visit.day) for each in laid)
    visit = next(each for each in told if each and each.lines[-1].best.answer.swaps)
    swaps = visit.lines[-1].best.answer.swaps
    asked = ["repeat", "lantern-house", "--on", str(visit.day)]
    assert "The swaps are offered" in run(*asked, "--dry").output
    before = files(demo)
    assert run(*asked, "--take-swaps").output.endswith(
        "\nThe swaps stand beside their lines, as comments.\n"
    )
    _, text = new_in(demo, before)
    notes = [line for line in text.splitlines() if line.startswith("    # swap: ")]
    assert len(notes) == len(swaps)
    for note, swap in zip(notes, swaps, strict=True):
        assert f" {swap.out} -> {swap.in_count} {swap.in_}  (" in note
    assert errors(demo) == []


def test_a_line_that_stands_at_its_cut_is_not_refused_for_the_week_of_its_day(
    demo: Path, run: Run
) -> None:
    told = run("repeat", "lantern-house-2026-10-06", "--on", "2026-12-08", "--dry").output
    assert "\nAs of the cut: Sunday 6 December 2026, week 49.\n" in told
    assert "Not then" not in told


def test_a_line_that_cannot_be_made_is_named_with_what_to_put_in_its_place_and_not_quoted(
    demo: Path, run: Run
) -> None:
    asked = ["repeat", "lantern-house-2026-10-06", "--on", "2026-12-15"]
    told = run(*asked).output
    assert "In the new file put ‘lantern-house-winter, advent’ in its place." in told
    assert "\nNothing is quoted: none of it can be made then.\n" in told
    assert "€" not in told
    assert told.endswith(
        "\nIts line ‘1 lantern-house-autumn, hips-and-bronze’ can't be made then: put "
        "‘1 lantern-house-winter, advent’ in its place.\n"
    )
    new = demo / "orders" / "2026" / "lantern-house-2026-12-15.yml"
    change(new, "lantern-house-autumn, hips-and-bronze", "lantern-house-winter, advent")
    assert errors(demo) == []


def test_the_rest_of_an_order_is_quoted_without_the_line_that_cannot_be_made(
    demo: Path, run: Run
) -> None:
    file = demo / "orders" / "2026" / "lantern-house-2026-10-06.yml"
    line = "  - 1 lantern-house-autumn, hips-and-bronze"
    change(file, line, f"  - 1 lantern-house-winter\n{line}")
    told = run("repeat", file.stem, "--on", "2026-12-15", "--dry").output
    assert re.search(
        r"Without what can't be made, Lantern House, autumn, Hips and bronze: costs €[\d.]+; "
        r"quote €\d+ ",
        " ".join(told.split()),
    )


EXAMPLES = re.findall(r"`corymb (repeat [^`]+)`", README.read_text(encoding="utf-8"))


@pytest.mark.parametrize("example", EXAMPLES)
def test_the_examples_of_the_readme_run_on_the_demo(demo: Path, run: Run, example: str) -> None:
    before = files(demo)
    result = run(*example.split())
    assert result.exit_code == 0, result.output
    assert new_in(demo, before)[0].endswith("2027.yml")


def test_the_readme_shows_an_order_and_a_standing_order_repeated() -> None:
    assert [("--on" in example, "--year" in example) for example in EXAMPLES] == [
        (True, False),
        (False, True),
    ]
