"""An order's file, written once more for another day."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.order_line_text import LineChange
from corymb.studio.order_text import (
    Again,
    Learnt,
    order_again,
    standing_again,
    visit_as_order,
    with_modeline,
)

DEMO = Path(__file__).parents[2] / "content" / "orders"
ORDERS = sorted(file for file in DEMO.rglob("*.yml") if file.parent.name != "standing")
STANDING = sorted((DEMO / "standing").glob("*.yml"))
DAY = date(2027, 9, 18)
HEAD = "name: N\nclient: {name: C}\ndate: 2026-09-19\n"


def names(files: list[Path]) -> list[str]:
    return [file.stem for file in files]


def raw(text: str) -> Any:
    """What stands in it, every value as it is written; by the library alone."""
    return yaml.load(text, Loader=yaml.BaseLoader)


def lines_without(text: str, *keys: str) -> list[str]:
    """The lines of a file but those of some of its keys."""
    kept, out = [], False
    for line in text.splitlines():
        if line[:1] not in (" ", "#", ""):
            out = line.partition(":")[0] in keys
        elif line[:1] == "#":
            out = False
        if not out:
            kept.append(line)
    return kept


def stand_in_order(wanted: list[str], text: str) -> bool:
    """Whether all these lines are in the text, one after the other."""
    there = iter(text.splitlines())
    return all(line in there for line in wanted)


@pytest.mark.parametrize("file", ORDERS, ids=names(ORDERS))
def test_every_line_of_an_order_stays_but_its_day_and_what_was_counted(file: Path) -> None:
    text = file.read_text(encoding="utf-8")
    done = order_again(text, Again(DAY, Learnt("Take snips.", "once")))
    assert stand_in_order(
        lines_without(text, "date", "used", "minutes", "learnt", "visit of"), done
    )
    before = raw(text)
    after = {k: v for k, v in before.items() if k not in ("used", "minutes", "learnt", "visit of")}
    assert raw(done) == {**after, "date": "2027-09-18"}
    assert ("# Learnt once: Take snips." in done) == ("learnt" in before)


@pytest.mark.parametrize("file", STANDING, ids=names(STANDING))
def test_every_line_of_a_standing_order_stays_but_its_days(file: Path) -> None:
    text = file.read_text(encoding="utf-8")
    done = standing_again(text, date(2027, 1, 5), date(2027, 12, 28))
    left = lines_without(text, "from", "until", "skip", "moved", "learnt")
    assert stand_in_order(left, done)
    days = {"from": "2027-01-05", "until": "2027-12-28"}
    old = {k: v for k, v in raw(text).items() if k not in ("skip", "moved", "learnt")}
    assert raw(done) == {**old, **days}


def decorated(text: str, draw: st.DataObject) -> tuple[str, list[str]]:
    """The text with comments and empty lines put in, and the comments that have to stay."""
    lines, kept, inside = [], [], ""
    for number, line in enumerate(text.splitlines()):
        key = line[:1] not in (" ", "#", "")
        inside = line.partition(":")[0] if key else inside
        item = inside == "lines" and line.startswith("  - ")
        count = inside == "used" and line.startswith("  ")
        if key or item or count:
            for place in range(draw.draw(st.integers(0, 2))):
                mark = f"# c{number}-{place}"
                margin = draw.draw(st.sampled_from(["", "  "])) if item or count else ""
                lines += ["" for _ in range(draw.draw(st.integers(0, 1)))]
                lines.append(f"{margin}{mark}")
                kept += [] if count else [mark]
        if (item or line.startswith(("date:", "minutes:"))) and draw.draw(st.booleans()):
            line += f"  # r{number}"
            kept.append(f"# r{number}")
        lines.append(line)
    return "\n".join([*lines, "# at the foot", ""]), [*kept, "# at the foot"]


@given(data=st.data(), file=st.sampled_from(ORDERS))
def test_comments_stay_wherever_they_stand_but_among_the_counts(
    data: st.DataObject, file: Path
) -> None:
    text, kept = decorated(file.read_text(encoding="utf-8"), data)
    change = LineChange(1, "", remarks=["a swap"])
    done = order_again(text, Again(DAY, lines=[change]))
    words = done.split("\n")
    for mark in [*kept, "# a swap"]:
        assert any(line.rstrip().endswith(mark) for line in words), mark


LISTS = {
    "short": ("lines:\n  - 2 jar, later  # mine\n", "lines:\n  - 2 jar, late  # mine\n"),
    "short with a size": (
        "lines:\n- '2 jar, later, small, in buckets'\n",
        "lines:\n- '2 jar, late, small, in buckets'\n",
    ),
    "in brackets": ('lines: ["2 jar, later", 1 pot]\n', 'lines: ["2 jar, late", 1 pot]\n'),
    "in brackets, bare": ("lines: [2 jar, 1 pot]\n", 'lines: ["2 jar, late", 1 pot]\n'),
    "long": (
        "lines:\n  - quantity: 2  # two\n    recipe: jar\n    variant: later  # mine\n",
        "lines:\n  - quantity: 2  # two\n    recipe: jar\n    variant: late  # mine\n",
    ),
    "long without a variant": (
        "lines:\n  - recipe: jar  # mine\n    quantity: 2\n  - 1 pot\n",
        "lines:\n  - recipe: jar  # mine\n    variant: late\n    quantity: 2\n  - 1 pot\n",
    ),
    "long in braces": (
        "lines:\n  - {quantity: 2, recipe: jar, in buckets: yes}\n",
        "lines:\n  - {quantity: 2, recipe: jar, variant: late, in buckets: yes}\n",
    ),
}


@pytest.mark.parametrize("form", LISTS)
def test_a_line_takes_another_variant_in_the_form_it_has(form: str) -> None:
    before, after = LISTS[form]
    size = "small" if "size" in form else "regular"
    done = order_again(HEAD + before, Again(DAY, lines=[LineChange(1, "late", size)]))
    assert done == HEAD.replace("2026-09-19", "2027-09-18") + after


BACK = {
    "short": ("  - 2 jar, later, small\n", "  - 2 jar, small\n"),
    "long": (
        "  - quantity: 2\n    recipe: jar\n    variant: later  # mine\n    size: small\n",
        "  - quantity: 2\n    recipe: jar\n    # variant: later  # mine\n    size: small\n",
    ),
    "long, the variant first": (
        "  - variant: later\n    recipe: jar\n    quantity: 2\n    size: small\n",
        "  - recipe: jar\n    quantity: 2\n    size: small\n",
    ),
    "long in braces, the variant last": (
        "  - {quantity: 2, recipe: jar, size: small, variant: later}\n",
        "  - {quantity: 2, recipe: jar, size: small}\n",
    ),
}


@pytest.mark.parametrize("form", BACK)
def test_a_line_goes_back_to_the_recipe_itself_in_the_form_it_has(form: str) -> None:
    before, after = BACK[form]
    done = order_again(f"{HEAD}lines:\n{before}", Again(DAY, lines=[LineChange(1, "", "small")]))
    assert done.endswith(f"lines:\n{after}")


def test_a_size_that_stood_where_a_variant_may_stand_gets_its_own_key() -> None:
    text = f"{HEAD}lines:\n  - {{quantity: 2, recipe: jar, variant: small}}\n"
    done = order_again(text, Again(DAY, lines=[LineChange(1, "late", "small")]))
    line = {"quantity": "2", "recipe": "jar", "variant": "late", "size": "small"}
    assert raw(done)["lines"] == [line]


@pytest.mark.parametrize(
    "written",
    ["2026-09-19", '"2026-09-19"', "Saturday 19 September 2026  # a Saturday", ">-\n  2026-09-19"],
)
def test_the_day_is_found_however_it_is_written(written: str) -> None:
    text = f"name: N\ndate: {written}\nlines: [1 jar]\n"
    done = order_again(text, Again(DAY))
    assert raw(done) == {"name": "N", "date": "2027-09-18", "lines": ["1 jar"]}
    assert ("# a Saturday" in done) == ("# a Saturday" in written)


def test_what_was_counted_leaves_its_place_and_its_comments() -> None:
    text = f"{HEAD}# at the sink\nused:  # all\n  rose: 4  # broken\nminutes: 30  # two of us\n"
    done = order_again(text, Again(DAY))
    assert done.endswith("# at the sink\n# used:  # all\n# minutes:  # two of us\n")


def test_a_visit_of_a_standing_order_is_told_left_or_changed() -> None:
    text = f"{HEAD}visit of: hall\nlines: [1 jar]\n"
    assert raw(order_again(text, Again(DAY, visit_of="hall-2027")))["visit of"] == "hall-2027"
    assert "visit of" not in raw(order_again(text, Again(DAY)))
    without = f"{HEAD}lines: [1 jar]\n"
    assert raw(order_again(without, Again(DAY, visit_of="hall")))["visit of"] == "hall"


STOOD = """\
name: The hall
# How often.
repeats: weekly on Tuesday
from: 2026-01-06

# Whose turn.
rotation: [winter, summer]
lines:
    - 2 posy   # for the desk
# Below.
handover: delivery
"""


def test_a_visit_becomes_an_order_with_its_look_behind_what_it_always_gets() -> None:
    done = visit_as_order(
        STOOD, Again(DAY, visit_of="hall", added=["1 summer, ember"], remarks=[["a swap"]])
    )
    assert done == (
        "name: The hall\ndate: 2027-09-18\nvisit of: hall\n\nlines:\n"
        "    - 2 posy   # for the desk\n    - 1 summer, ember\n      # a swap\n"
        "# Below.\nhandover: delivery\n"
    )


def test_a_visit_of_a_rotation_alone_gets_lines_where_that_stood() -> None:
    alone = STOOD.replace("lines:\n    - 2 posy   # for the desk\n", "")
    done = visit_as_order(alone, Again(DAY, visit_of="hall", added=["1 summer"]))
    assert "\n\nlines:\n  - 1 summer\n# Below.\n" in done


def test_a_standing_order_without_an_end_gets_one_and_keeps_its_days_off_as_comments() -> None:
    text = STOOD + "skip:\n  - 2026-08-04  # shut\nmoved: {2026-12-22: 2026-12-23}\n"
    done = standing_again(text, date(2027, 1, 5), date(2027, 12, 28))
    assert "from: 2027-01-05\nuntil: 2027-12-28\n" in done
    assert done.endswith("# skip:\n#   - 2026-08-04  # shut\n# moved: {2026-12-22: 2026-12-23}\n")


@pytest.mark.parametrize(
    "text",
    [
        pytest.param(f"{HEAD}date: 2026-09-20\n", id="a key twice"),
        pytest.param(f"{HEAD}lines: [1 jar\n", id="a bracket left open"),
    ],
)
def test_a_file_with_errors_is_left_alone(text: str) -> None:
    with pytest.raises(ValueError, match="this file holds errors; put them right first"):
        order_again(text, Again(DAY))


def test_a_long_note_is_broken_into_lines_of_comment() -> None:
    done = order_again(f"{HEAD}learnt: x\n", Again(DAY, Learnt("a word " * 40, "last time")))
    notes = [line for line in done.splitlines() if line.startswith("# ")]
    assert len(notes) > 2 and max(map(len, notes)) <= 98
    assert " ".join(line[2:] for line in notes) == "Learnt last time: " + " ".join(["a word"] * 40)


MODELINE = "# yaml-language-server: $schema="


@pytest.mark.parametrize(
    ("line", "new"),
    [
        pytest.param("../../s/order.schema.json", "../../../s/standing.schema.json", id="deeper"),
        pytest.param("https://x.example/order.schema.json", None, id="an address stays"),
    ],
)
def test_an_editor_finds_the_schema_from_the_new_file(line: str, new: str | None) -> None:
    text = f"# mine\n{MODELINE}{line}\nname: N\n"
    done = with_modeline(text, Path("c/orders/a.yml"), Path("c/orders/standing/b.yml"), "standing")
    assert done == f"# mine\n{MODELINE}{new or line}\nname: N\n"


def test_an_order_in_braces_gets_its_new_day_all_the_same() -> None:
    text = '# mine\n{name: N, date: 2026-09-19, hours: 12:30-01:00, lines: ["2 jar, later"]}\n'
    done = order_again(text, Again(DAY, lines=[LineChange(1, "late")]))
    assert done == (
        '# mine\nname: N\ndate: 2027-09-18\nhours: 12:30-01:00\nlines: ["2 jar, late"]\n'
    )


def test_a_look_joins_a_list_in_brackets() -> None:
    text = STOOD.replace("lines:\n    - 2 posy   # for the desk\n", "lines: [2 posy]  # desk\n")
    done = visit_as_order(text, Again(DAY, visit_of="hall", added=["1 summer, ember"]))
    assert 'lines: [2 posy, "1 summer, ember"]  # desk\n' in done


def test_a_comment_on_a_line_in_brackets_stands_above_the_list() -> None:
    text = f"{HEAD}# mine\nlines: [2 jar]\n"
    done = order_again(text, Again(DAY, lines=[LineChange(1, remarks=["a swap"])]))
    assert done.endswith("# mine\n# Line 1: a swap\nlines: [2 jar]\n")
