"""`corymb show --on`: a recipe as it would be in the week of a day.

The garden lies about four days later than the book. Worked out by hand from the starter's files:
cornflowers stand from 5 June to 27 August, scabious from 25 June to 6 October, lady's mantle and
quaking grass from 5 June to 31 July, hornbeam and cosmos after that.
"""

from pathlib import Path

import pytest

from tests.cli.conftest import Run

PHACELIA = """
  phacelia-blue:
    name: Phacelia, blue
    botanical: Phacelia tanacetifolia
    use: filler
    form: cluster
    colours: [lilac blue 4a5fb0 100 %]
    head: 4 cm
    length: 40-60 cm
    weight: 8 g
    in season: August - October
    vase life: 5-7 days
    cut when: a third open
    conditioning: {hours: 4, do: Stand deep.}
    stems per bucket: 50
    cutting step: 50
    grown: 0.20
    hazards: [skin allergy]
    source: common practice, no source
"""


def said(run: Run, *options: str) -> str:
    """What is shown of the jug, with its lines run together."""
    return " ".join(run("show", "kitchen-jug", *options).output.split())


ANSWERS = {
    "as pictured": (
        ["--on", "2026-07-10"],
        "Week 28, 6 to 12 July 2026. As pictured: sure.",
    ),
    "by a variant": (
        ["--on", "12 August 2026"],
        "Kitchen jug: Late summer Posy",
    ),
    "not then": (
        ["--on", "2026-09-10"],
        "Week 37, 7 to 13 September 2026. Not then: nothing stands in for lady's mantle, "
        "quaking grass and blue cornflower. It can be made until week 34, 17 to 23 August 2026, "
        "and again from week 26, 28 June to 4 July 2027.",
    ),
    "a variant that is asked for": (
        ["--on", "2026-06-10", "--variant", "late-summer"],
        "Week 24, 8 to 14 June 2026. Not then: nothing stands in for white cosmos and "
        "lilac scabious. It can be made until week 34, 18 to 24 August 2025, and again from week "
        "27, 29 June to 5 July 2026.",
    ),
    "in a 53rd week": (
        ["--on", "2026-12-31"],
        "Week 53, 28 December 2026 to 3 January 2027. Not then:",
    ),
}


LOG = """\
cuts:
  scabious-lilac: June - September, 5 January - 14 January
  cornflower-blue: June - August, 5 January - 14 January
  ladys-mantle: June - July, 5 January - 14 January
  quaking-grass: June - July, 5 January - 14 January
"""


def test_what_the_log_doubts_is_never_called_as_pictured_and_not_then(
    studio: Path, run: Run
) -> None:
    logs = studio / "content/log"
    logs.mkdir(exist_ok=True)
    for year in ("2024", "2025"):
        (logs / f"{year}.yml").write_text(LOG, "utf-8")
    # Ten days in half of the years: a chance of three in ten at most.
    assert "Week 2, 5 to 11 January 2026. As pictured: touch and go." in said(
        run, "--on", "2026-01-08"
    )


@pytest.mark.parametrize(("options", "told"), ANSWERS.values(), ids=ANSWERS)
def test_the_answer_is_that_of_the_week_of_the_day(
    studio: Path, run: Run, options: list[str], told: str
) -> None:
    assert told in said(run, *options)


def test_what_can_t_be_made_then_has_no_stems_and_no_method(studio: Path, run: Run) -> None:
    shown = said(run, "--on", "2026-09-10")
    assert "Stems" not in shown and "Method" not in shown


def test_swaps_are_made_in_the_counts_of_the_size_and_told_with_why_and_what_can_hurt(
    studio: Path, run: Run
) -> None:
    stems = studio / "content/stems/flowers.yml"
    stems.write_text(f"{stems.read_text('utf-8').rstrip()}\n{PHACELIA}", "utf-8")
    cornflower, season = "cornflower-blue:", "in season: early June - late August"
    text = stems.read_text("utf-8")
    place = text.index(season, text.index(cornflower))
    stems.write_text(f"{text[:place]}in season: June{text[place + len(season) :]}", "utf-8")
    shown = said(run, "--on", "2026-08-12", "--size", "large", "-n", "2")
    assert "10 to 16 August 2026. With the variant ‘Late summer’ and swaps: sure." in shown
    # As large a cluster as the daisy, so one for one; by hand 7 x 1.5 = 10.5, 11 stems, twice.
    assert "22 blue phacelia in place of 22 blue cornflower (" in shown
    assert "22 Phacelia, blue 1 August - 27 October" in shown
    assert "without 22 Cornflower, blue" in shown and "with 22 Phacelia, blue" in shown
    assert "Phacelia: can set off a skin allergy. Gloves." in shown
    assert "several heights. Phacelia in place of Cornflower." in shown


def test_a_day_that_isn_t_one_is_answered_in_a_sentence(studio: Path, run: Run) -> None:
    result = run("show", "kitchen-jug", "--on", "3.10.2026")
    assert result.exit_code == 2
    assert "‘3.10.2026’ can be misread: write 2026-10-03 or 2026-03-10." in " ".join(
        result.output.split()
    )
