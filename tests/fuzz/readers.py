"""Does every reader answer whatever is written with a value or a sentence, and never fail?

    python -m tests.fuzz.readers            ten thousand examples of each kind
    python -m tests.fuzz.readers 500        fewer

The suite tries a few of each (`test_readers.py`).
"""

from __future__ import annotations

import re
import sys
from collections.abc import Callable
from pathlib import Path
from time import process_time
from typing import Any

from corymb.studio.assemble import MODELS
from corymb.studio.filing import Filed, file_text
from corymb.studio.folder import MARKDOWN_KINDS, Found
from corymb.studio.leads import leads_of
from corymb.studio.problems import Problem
from corymb.studio.validation import validate
from corymb.studio.values import (
    colour,
    dates,
    length,
    lines,
    money,
    place,
    recurrence,
    season_text,
    share,
    text,
    time,
    volume,
    weight,
    work,
)

KINDS = tuple(MODELS)
SENTENCE = re.compile(r"[^\W_a-z].*[.?]|[A-Z0-9‘`\"].*[.?\"']", re.DOTALL)
SLOWEST = 2.0
"""Seconds that reading one file may take."""

READERS: tuple[Callable[[str], Any], ...] = (
    colour.parse_colour_part,
    colour.parse_hex,
    colour.parse_named_colour,
    dates.parse_date,
    dates.parse_iso_week,
    length.parse_floor,
    length.parse_height,
    length.parse_length,
    length.parse_length_range,
    lines.parse_drop,
    lines.parse_link_item,
    lines.parse_order_line,
    lines.parse_recipe_line,
    lines.parse_sundry,
    lines.parse_swap,
    money.parse_money,
    money.parse_price_guide,
    place.parse_currency,
    place.parse_language,
    place.parse_latitude,
    place.parse_longitude,
    place.parse_time_zone,
    recurrence.parse_recurrence,
    season_text.parse_season,
    season_text.parse_window,
    share.parse_mark_up,
    share.parse_scale,
    share.parse_share,
    text.parse_count,
    text.parse_decimal,
    text.parse_email,
    text.parse_id,
    text.parse_number,
    text.parse_text,
    text.parse_whole,
    text.parse_yes_no,
    time.parse_clock,
    time.parse_clock_span,
    time.parse_day_range,
    time.parse_duration,
    volume.parse_volume,
    weight.parse_weight,
    work.parse_days_before,
    work.parse_hours_of_work,
    work.parse_people,
    work.parse_pieces,
)
PRINTED = (float, int, bool, str)
"""Values that a field prints in a way of its own."""


def read_value(which: int, written: str) -> Any:
    """The value that one of the readers takes a text for; None where it answers with a sentence."""
    parse = READERS[which % len(READERS)]
    try:
        value = parse(written)
    except ValueError as wrong:
        assert SENTENCE.fullmatch(str(wrong)), f"no sentence: {wrong}"
        assert type(wrong) is ValueError, f"not ours: {wrong!r}"
        return None
    if not isinstance(value, PRINTED) and type(value).__module__.startswith("corymb"):
        assert parse(str(value)) == value, f"{written!r} is printed as {value!s}"
        assert str(parse(str(value))) == str(value)
    return value


def read_file(which: int, raw: bytes) -> list[Problem]:
    """What is told of a file of some kind; it is read in good time, and in sentences."""
    kind = KINDS[which % len(KINDS)]
    file = Path("f.md" if kind in MARKDOWN_KINDS else "f.yml")
    began = process_time()
    filed = file_text(Found(kind, "f", file, ""), raw)
    problems = [*filed.problems, *_validated(kind, filed)]
    if filed.source and filed.markdown:
        leads_of(filed.markdown)
    took = process_time() - began
    assert took < SLOWEST, f"{took:.1f} s"
    assert filed.source is not None or problems
    for problem in problems:
        _is_sound(problem, filed.text)
    return problems


def _validated(kind: str, filed: Filed) -> tuple[Problem, ...]:
    if filed.source is None:
        return ()
    outcome = validate(MODELS[kind], filed.source.tree.data, filed.source)
    assert outcome.is_whole or filed.problems or outcome.problems
    return outcome.problems


def _is_sound(problem: Problem, whole: str) -> None:
    lines_there = whole.split("\n")
    assert 1 <= problem.line <= len(lines_there), f"{problem}"
    assert problem.column >= 1, f"{problem}"
    assert SENTENCE.fullmatch(problem.message), f"no sentence: {problem.message}"
    problem.shown().encode()


def main() -> None:
    """The command."""
    from tests.fuzz import test_readers

    test_readers.try_long(int(sys.argv[1]) if len(sys.argv) > 1 else 10_000)


if __name__ == "__main__":
    main()
