"""`corymb show`: a recipe at a glance."""

from pathlib import Path

import pytest

from corymb.cli.plain import for_terminal
from corymb.cli.sheet import Asked, sheet
from corymb.cli.strip import season_strip
from corymb.studio.load import read_studio
from tests.cli.conftest import Run, change

# By hand. The studio lies 1.1 degrees north of the book's dates and as high: 4.4 days. So 1 June,
# 21 June and 10 October are 5 June, 25 June and 6 October here. 31 July is half a day before the
# turn of summer and stays. 31 August is 30.5 days after it: x exp(-4.4 x 2 / 63) = 26.5, which is
# 27 August. The cells whose Thursday of a common year lies in 25 June to 31 July are those of
# week 26 (28 June) to 30 (26 July); then to 27 August those of week 31 to 34 (23 August).
JUG = """\
Kitchen jug
Posy · easy · 15 min to make · from €20
A loose handful of blue, lilac and lime, as if just carried in from the garden.
22 cm across, 28 cm high; half-litre jug

Stems    23
depth     7
        7  Cornflower, blue  5 June - 27 August
light    11
        5  Scabious, lilac   25 June - 6 October               essential
        6  Lady's mantle     5 June - 31 July
accent    5
        5  Quaking grass     5 June - 31 July

J   F   M    A   M    J   J   A    S   O   N    D
·························█████▒▒▒▒··················
█ as pictured   ▒ with a variant   · not then
As pictured: late June to late July.
With a variant: early to late August.

Variants
  late-summer: Late summer. When the lady's mantle and the grass are over.
    without  6 Lady's mantle
    without  5 Quaking grass
    with     3 Hornbeam
    with     3 Cosmos, white
    18 stems; early July to late August

Method
  1. Strip every leaf that would stand below the water.
"""


def test_a_recipe_is_shown_with_its_stems_year_variants_and_method(studio: Path, run: Run) -> None:
    assert run("show", "kitchen-jug").output.startswith(JUG)


def test_a_recipe_is_known_by_its_name_as_well(studio: Path, run: Run) -> None:
    assert run("show", "Kitchen Jug").output == run("show", "kitchen-jug").output


def test_a_variant_in_a_size_times_a_quantity_is_counted_in_whole_stems(
    studio: Path, run: Run
) -> None:
    result = run("show", "kitchen-jug", "--variant", "late-summer", "--size", "small", "-n", "4")
    shown = [" ".join(line.split()) for line in result.output.splitlines()]
    assert shown[0] == "Kitchen jug: Late summer (4 × small)"
    # By hand: depth 7 x 0.6 = 4.2, 4 stems; light 8 x 0.6 = 4.8, 5 stems as 3.1 and 1.9;
    # accent 3 x 0.6 = 1.8, 2 stems. Four pieces of 11. 20 October less 4.4 days is the 16th.
    assert shown[4] == "Width, height, time and price are those of the regular size."
    assert shown[6] == "Stems 44"
    assert "depth 16" in shown
    assert "12 Scabious, lilac 25 June - 6 October essential" in shown
    assert "8 Hornbeam 5 June - 16 October" in shown
    assert "accent 8" in shown
    assert "Changed" in shown


def test_a_variant_has_its_own_time_and_is_told_which_plants_have_gone(
    studio: Path, run: Run
) -> None:
    recipe = studio / "content/recipes/posy/kitchen-jug.yml"
    change(recipe, "    name: Late summer\n", "    name: Late summer\n    time: 35 min\n")
    change(recipe, "Strip every leaf that", "Strip the quaking grass of all that")
    result = run("show", "kitchen-jug", "--variant", "late-summer")
    assert "· 35 min to make ·" in result.output
    assert "Cosmos in place of Quaking grass." in " ".join(result.output.split())


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (
            ["kitchen-jog"],
            "There is no recipe called ‘kitchen-jog’. Did you mean ‘kitchen-jug’?",
        ),
        (
            ["zzz"],
            "There is no recipe called ‘zzz’. There are market-bunch, kitchen-jug.",
        ),
        (
            ["kitchen-jug", "--variant", "late-sumer"],
            "Kitchen jug has no variant called ‘late-sumer’. Did you mean ‘late-summer’?",
        ),
        (
            ["market-bunch", "--variant", "winter"],
            "Market bunch has no variant called ‘winter’. It has no variants.",
        ),
        (
            ["kitchen-jug", "--size", "huge"],
            "Kitchen jug has no size called ‘huge’. It has regular, small, large.",
        ),
    ],
)
def test_what_isn_t_there_is_answered_with_what_is(
    studio: Path, run: Run, arguments: list[str], told: str
) -> None:
    result = run("show", *arguments)
    assert (result.exit_code, result.output) == (1, f"Error: {told}\n")


def test_errors_elsewhere_don_t_keep_a_recipe_from_being_shown(studio: Path, run: Run) -> None:
    change(studio / "content/recipes/hand-tie/market-bunch.yml", "time:", "tme:")
    assert run("show", "kitchen-jug").output.startswith(JUG)


@pytest.mark.parametrize(
    ("before", "after", "told"),
    [
        ("time:", "tme:", "`tme` is not a key here. Did you mean `time`?"),
        ("5 dahlia-coral", "5 dahlia-corel", "There is no stem called ‘dahlia-corel’."),
    ],
)
def test_errors_of_its_own_are_told_instead(
    studio: Path, run: Run, before: str, after: str, told: str
) -> None:
    change(studio / "content/recipes/hand-tie/market-bunch.yml", before, after)
    result = run("show", "market-bunch")
    assert result.exit_code == 1
    assert told in result.output
    assert result.output.endswith("put them right first.\n")


def test_a_terminal_that_knows_only_ascii_gets_only_ascii(studio: Path) -> None:
    read, _ = read_studio(studio / "content")
    assert read is not None
    asked = sheet(read, read.recipes["kitchen-jug"], Asked("", "small", 3))
    lines = list(for_terminal(asked, plain=True))
    assert all(line.isascii() for line in lines)
    assert lines[0] == "Kitchen jug  (3 x small)"
    assert lines[1] == "Posy . easy . 15 min to make . from EUR 20"
    assert "." * 25 + "#" * 5 + "+" * 4 + "." * 18 in lines


def test_the_strip_has_a_cell_a_week_under_the_letters_of_its_months() -> None:
    months, cells, key = season_strip({1: "pictured", 52: "pictured", 2: "variant", 3: "swaps"})
    assert months == "J   F   M    A   M    J   J   A    S   O   N    D"
    assert cells == "█▒▂" + "·" * 48 + "█"
    assert key == "█ as pictured   ▒ with a variant   ▂ with swaps   · not then"
    assert list(season_strip(dict.fromkeys(range(1, 53), "pictured")))[1:] == ["█" * 52]
    assert list(for_terminal([cells], plain=True)) == ["#+_" + "." * 48 + "#"]
