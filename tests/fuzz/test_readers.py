"""Whatever is written, a reader gives a value or a sentence; whatever the file, it is read."""

from __future__ import annotations

import sys
from collections.abc import Callable
from functools import cache
from pathlib import Path
from time import process_time
from typing import Any

import pytest
import yaml
from hypothesis import given, settings
from hypothesis import strategies as st

from corymb.studio.assemble import MODELS
from corymb.studio.examples import EXAMPLES
from corymb.studio.folder import MARKDOWN_KINDS
from tests.fuzz.readers import KINDS, READERS, read_file, read_value

CONTENT = Path(__file__).parents[2] / "content"
FEW = 40
"""Examples of each in the suite; `python -m tests.fuzz.readers` tries thousands."""

WHICH = st.integers(0, 255)
NUMBERS = st.sampled_from(
    ["1e999999999", "1e308 %", "NaN", "inf", "-0", "0", "9" * 30, "1" * 4_400, ".5", "1.", "²", "٣",
     "99999-01-01", "0001-01-01", "2026-02-30", "24:00", "½", "FREQ=DAILY;INTERVAL=0",
     "FREQ=WEEKLY;COUNT=" + "9" * 40, "FREQ=YEARLY;BYDAY=99MO", "+353", "‮", "İ", "ß"]
)  # fmt: skip


MORE = ("2026-W38", "-7.1", "3 dahlia-shell, light, essential", "3 dahlia-shell -> 5 cosmos-white",
        "2 dahlia-shell", "6 hedgerow-jar, later, small, in buckets", "hedgerow-jar, later",
        "0.3 m jute twine, 0.05", "shell e8c2b4 80 %", "early July - mid October, W22 - W30",
        "name@garden.example", "120 %", "every 2 weeks on Friday", "FREQ=WEEKLY;BYDAY=TU",
        "5-7 days", "60-90 cm")  # fmt: skip


@cache
def friendly_examples() -> tuple[str, ...]:
    """Every value of the models' examples, and of what lists and fields hold."""
    return tuple(dict.fromkeys([*MORE, *(v for keys in EXAMPLES.values() for v in keys.values())]))


@st.composite
def slipped(draw: st.DrawFn, texts: st.SearchStrategy[str]) -> str:
    """A text with one to three slips of the hand."""
    text = draw(texts)
    for _ in range(draw(st.integers(1, 3))):
        at, gone = draw(st.integers(0, len(text))), draw(st.integers(0, 3))
        text = text[:at] + draw(NUMBERS | st.text(max_size=4)) + text[at + gone :]
    return text


KEYS = st.sampled_from(sorted({key for keys in EXAMPLES.values() for key in keys}))
VALUES = st.deferred(lambda: st.sampled_from(friendly_examples())) | NUMBERS | st.text(max_size=12)
TREES = st.recursive(
    VALUES,
    lambda inner: (
        st.lists(inner, max_size=3) | st.dictionaries(KEYS | st.text(max_size=5), inner, max_size=4)
    ),
    max_leaves=12,
)


def of_examples(kind: str) -> str:
    """A file of a kind with each of its keys, as the examples have them."""
    model = MODELS[kind]
    keys = {
        k: v
        for name in (m.__name__ for m in model.__mro__)
        for k, v in EXAMPLES.get(name, {}).items()
    }
    text = "".join(f"{key}: {value}\n" for key, value in keys.items())
    return f"---\n{text}---\n\nText.\n" if kind in MARKDOWN_KINDS else text


def any_value(which: int, written: str) -> None:
    read_value(which, written)


def any_slip_in_a_file(kind: str, text: str) -> None:
    read_file(KINDS.index(kind), text.encode("utf-8", "surrogatepass"))


def any_bytes(which: int, raw: bytes) -> None:
    read_file(which, raw)


def any_structure(which: int, data: Any) -> None:
    text = yaml.safe_dump(data, allow_unicode=True)
    read_file(
        which,
        f"---\n{text}---\n".encode() if KINDS[which % 11] in MARKDOWN_KINDS else text.encode(),
    )


SLIPPED_FILES = st.sampled_from(KINDS).flatmap(
    lambda kind: st.tuples(st.just(kind), slipped(st.just(of_examples(kind))))
)
TRIED: dict[str, tuple[Callable[..., None], st.SearchStrategy[tuple[Any, ...]]]] = {
    "any text for a value": (any_value, st.tuples(WHICH, st.text(max_size=60))),
    "an example for a value, with slips": (any_value, st.tuples(WHICH, slipped(VALUES))),
    "any bytes for a file": (any_bytes, st.tuples(WHICH, st.binary(max_size=200))),
    "any structure for a file": (any_structure, st.tuples(WHICH, TREES)),
    "a file of examples, with slips": (any_slip_in_a_file, SLIPPED_FILES),
}


def try_out(name: str, examples: int) -> None:
    """One kind of hostile input, so often."""
    hold, inputs = TRIED[name]

    @settings(max_examples=examples, deadline=None, database=None)
    @given(inputs)
    def holds(given_: tuple[Any, ...]) -> None:
        hold(*given_)

    holds()


def try_long(examples: int) -> None:
    """All of them, for the command."""
    for name in TRIED:
        try_out(name, examples)
        sys.stdout.write(f"{examples} of {name}\n")


@pytest.mark.parametrize("name", TRIED)
def test_nothing_that_is_written_makes_a_reader_fail(name: str) -> None:
    try_out(name, FEW)


@pytest.mark.parametrize("parse", READERS, ids=lambda parse: parse.__name__)
def test_a_value_prints_as_it_is_read(parse: Callable[[str], Any]) -> None:
    read = [read_value(READERS.index(parse), text) for text in friendly_examples()]
    assert any(value is not None for value in read), "no example is one"


REPEATED = ("a", "1", "-", " ", "1 ", "1,", "1.", "0", "a-", "a, ", "% ", "@", "a.", "a@b.", "to ",
            "and ", "monday, ", "->", "x ", "FREQ=DAILY;", "é")  # fmt: skip
LONGEST_VALUE = 2_000
"""Letters that a value can have at most before it is refused for its length alone."""


@pytest.mark.parametrize("parse", READERS, ids=lambda parse: parse.__name__)
def test_a_value_that_goes_on_and_on_is_answered_at_once(parse: Callable[[str], Any]) -> None:
    for piece in REPEATED:
        began = process_time()
        read_value(READERS.index(parse), piece * (LONGEST_VALUE // len(piece)) + "!")
        assert process_time() - began < 0.2, piece
