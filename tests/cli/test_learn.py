"""`corymb learn`: recipes are held against what orders took, and changed only when asked."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.conftest import Run, change

JUG = Path("content/recipes/posy/kitchen-jug.yml")

ORDER = """\
name: {name}
client: {{name: the village hall}}
date: 2026-08-{day}
where: {{place: the hall, setting: indoors, light: daylight}}
handover: collection
lines:
  - 10 kitchen-jug{variant}
"""


def made(name: str, told: str, variant: str = "", day: int = 15) -> None:
    """An order that tells what it took."""
    folder = Path("content/orders/2026")
    folder.mkdir(parents=True, exist_ok=True)
    text = ORDER.format(name=name, variant=variant, day=day) + told
    (folder / f"{name.lower().replace(' ', '-')}.yml").write_text(text, "utf-8")


@pytest.fixture
def fete(studio: Path) -> None:
    """Two orders: of the jug itself, and of its variant, which takes the same cornflowers."""
    made("Fete", "used: {cornflower-blue: 91, scabious-lilac: 52}\nminutes: 125\n")
    made("Supper", "used: {cornflower-blue: 84, cosmos-white: 42}\n", ", late-summer", 22)


TOLD = """\
content/recipes/posy/kitchen-jug.yml:16: 7 cornflower-blue -> 9
  Goes for Kitchen jug and Kitchen jug (Late summer).
  Fete, Saturday 15 August 2026: 10 pieces; 91 went in where 70 were asked.
  Supper, Saturday 22 August 2026: 10 pieces; 84 went in where 70 were asked.
  Together 1.25 times what was asked.

content/recipes/posy/kitchen-jug.yml:43: 3 cosmos-white -> 4
  Supper, Saturday 22 August 2026: 10 pieces; 42 went in where 30 were asked.

Nothing was changed. To write it: add --write.
"""


@pytest.mark.usefixtures("fete")
def test_what_to_write_where_is_told_with_the_orders_that_speak_for_it(run: Run) -> None:
    before = JUG.read_text("utf-8")
    assert run("learn").output == TOLD
    assert JUG.read_text("utf-8") == before


@pytest.mark.usefixtures("fete")
def test_what_is_written_keeps_every_other_letter_and_is_not_told_again(run: Run) -> None:
    before = JUG.read_text("utf-8")
    result = run("learn", "--write")
    assert result.output.endswith("Wrote 2 numbers into content/recipes/posy/kitchen-jug.yml.\n")
    assert JUG.read_text("utf-8") == before.replace(
        "7 cornflower-blue", "9 cornflower-blue"
    ).replace("quaking-grass -> 3 cosmos-white", "quaking-grass -> 4 cosmos-white")
    assert run("check").exit_code == 0
    assert run("learn").output == (
        "2 orders tell what they took; nothing speaks against the recipes.\n"
    )


@pytest.mark.usefixtures("fete")
def test_line_ends_and_the_mark_of_a_file_stay(run: Run) -> None:
    text = JUG.read_text("utf-8").replace("\n", "\r\n")
    JUG.write_bytes(b"\xef\xbb\xbf" + text.encode())
    run("learn", "--write")
    written = JUG.read_bytes()
    assert written.startswith(b"\xef\xbb\xbf#") and b"9 cornflower-blue" in written
    assert written.count(b"\n") == written.count(b"\r\n")


def test_a_time_is_learnt_as_well(studio: Path, run: Run) -> None:
    made("Fete", "minutes: 200\n")
    assert f"{JUG}:9: time 15 min -> " in run("learn").output


def test_one_recipe_can_be_asked_for_by_its_id_or_its_name(studio: Path, run: Run) -> None:
    made("Fete", "used: {cornflower-blue: 140}\n")
    assert "-> 14" in run("learn", "kitchen-jug").output
    assert "-> 14" in run("learn", "Kitchen jug").output
    assert "-> 14" not in run("learn", "market-bunch").output
    wrong = run("learn", "kitchen-jog")
    assert (wrong.exit_code, wrong.output) == (
        1,
        "Error: There is no recipe called ‘kitchen-jog’. Did you mean ‘kitchen-jug’?\n",
    )


def test_a_count_that_no_line_says_by_itself_is_left_to_the_hand(studio: Path, run: Run) -> None:
    change(JUG, "    swap:     ", "    drop: [1 cornflower-blue]\n    swap:     ")
    made("Supper", "used: {cornflower-blue: 120}\n", ", late-summer")
    before = JUG.read_bytes()
    output = run("learn", "--write").output
    assert output.startswith(f"{JUG}: 6 cornflower-blue -> 12\n  No line says this by itself")
    assert output.endswith("Nothing was changed.\n1 number is left to change by hand.\n")
    assert JUG.read_bytes() == before


def test_without_orders_that_tell_it_says_what_to_write(studio: Path, run: Run) -> None:
    assert run("learn").output == (
        "No order tells yet what it took: write `used` and `minutes` into its file.\n"
    )


def test_a_studio_with_an_error_is_not_learnt_from(studio: Path, run: Run) -> None:
    change(JUG, "5 scabious-lilac", "5 scabius-lilac")
    result = run("learn", "--write")
    assert result.exit_code == 1
    assert "put them right first" in result.output
