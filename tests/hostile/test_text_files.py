"""Whatever bytes a text file holds, it is told in its place, at once, or it is a right page."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from time import process_time

import pytest

from corymb.checks import read_and_check
from tests.broken.bench import DAHLIAS, JAR, ORDER, PAGE, good, good_studio

SLOWEST = 2.0
"""Seconds of work that one file may take."""

LAUGHS = "a0: &a0 [x, x]\n" + "".join(f"a{i}: &a{i} [*a{i - 1}, *a{i - 1}]\n" for i in range(1, 60))
JAR_TEXT = good(JAR)
ON_PAGE = good(PAGE)
DEEP = "Things are nested more than 40 deep here"
UNSEEN = "A character that can't be seen stands here"


@dataclass(frozen=True)
class Hostile:
    """A file's text, and where what is said of it first; nothing is said of a right one."""

    name: str
    text: str | bytes
    told: str = ""
    file: str = JAR


def inside(head: str, line: str, count: int, file: str = JAR) -> str:
    """The good file with many more lines below a key."""
    return good(file).replace(head, head + "".join(line.format(n) for n in range(count)), 1)


def jar(named: str) -> str:
    """The good jar by another name."""
    return JAR_TEXT.replace("name: Hedgerow jar", f"name: {named}", 1)


def time(text: str) -> str:
    """The good jar that takes a different time."""
    return JAR_TEXT.replace("time: 20 min", f"time: {text}", 1)


FILES = [
    Hostile("aliases within aliases", LAUGHS, "1:5: ‘&a0’ names a value to be used elsewhere"),
    Hostile("three megabytes", "# x\n" * 800_000, "1:1: This file is 3.2 MB; a studio's file has"),
    Hostile("ten thousand brackets", "name: " + "[" * 10_000, f"1:46: {DEEP}"),
    Hostile("ten thousand braces", "name: " + "{a: " * 4_900, f"1:163: {DEEP}"),
    Hostile("brackets on lines", "name: " + "[\n" * 10_000, f"40:1: {DEEP}"),
    Hostile("keys in keys", "\n".join(" " * n + "a:" for n in range(1_900)), f"41:41: {DEEP}"),
    Hostile("dashes in dashes", "a:\n  " + "- " * 5_000 + "x", f"2:81: {DEEP}"),
    Hostile("a line without end", "name: " + "x" * 1_900_000, "1:20001: This line goes on for"),
    Hostile("a key without end", "x" * 30_000 + ": y", "1:20001: This line goes on for 30,003"),
    Hostile("colons in braces", "name: {" + "a: " * 6_000, "1:7: The bracket that opens here"),
    Hostile("a line of quotes", "name: [" + "'a', " * 2_900, "1:7: The bracket that opens here"),
    Hostile("empty lines", "name: x" + "\n" * 900_000 + "@", "100001:1: This file has over"),
    Hostile("lines of nothing", "x\n" * 30_000, "1:1: This line has no colon after its key"),
    Hostile(
        "a list of seventy thousand",
        inside("stems:\n", "  - 3 dahlia-shell, light\n", 70_000),
        "3016:5: This list goes on for over 3,000 entries",
    ),
    Hostile(
        "lists upon lists",
        "".join(f"k{n}: [" + "y, " * 2_900 + "z]\n" for n in range(40)),
        "35:3787: This file holds over 100,000 keys",
    ),
    Hostile(
        "thousands of slips",
        inside("stems:\n", "  - 3 dahlia shell\n", 2_000),
        "16:5: ‘dahlia shell’",
    ),
    Hostile(
        "thousands of strange names",
        inside("lines:\n", "  - 3 hedgerow-ja{0}\n", 2_000, ORDER),
        "10:7: There is no recipe called ‘hedgerow-ja0’",
        ORDER,
    ),
    Hostile("UTF-16", JAR_TEXT.encode("utf-16"), "1:1: This file is saved as UTF-16."),
    Hostile("UTF-16 unmarked", JAR_TEXT.encode("utf-16-le"), "1:1: This file is saved as UTF-16."),
    Hostile("UTF-16 turned", JAR_TEXT.encode("utf-16-be"), "1:1: This file is saved as UTF-16."),
    Hostile("UTF-32", JAR_TEXT.encode("utf-32"), "1:1: This file is saved as UTF-32."),
    Hostile("UTF-32 unmarked", JAR_TEXT.encode("utf-32-be"), "1:1: This file is saved as UTF-32."),
    Hostile("Latin-1", jar("Rosé").encode("latin-1"), "2:10: This file isn't saved as UTF-8"),
    Hostile("half a letter", b"name: a\xed\xa0\x80b", "1:8: This file isn't saved as UTF-8"),
    Hostile("a letter too long", b"name: a\xc0\x80b", "1:8: This file isn't saved as UTF-8"),
    Hostile("marked as UTF-8, Windows", JAR_TEXT.replace("\n", "\r\n").encode("utf-8-sig")),
    Hostile("lines ended as on old machines", JAR_TEXT.replace("\n", "\r")),
    Hostile("nothing", "", "1:1: This file is empty."),
    Hostile("a nought", jar("a\0b"), f"2:8: {UNSEEN} (U+0000, control character)"),
    Hostile("a bell", jar("a\ab"), f"2:8: {UNSEEN} (U+0007"),
    Hostile("turned about", jar("a\u202eb"), f"2:8: {UNSEEN} (U+202E, right-to-left override)"),
    Hostile("turned apart", jar("a\u2067b"), f"2:8: {UNSEEN} (U+2067, right-to-left isolate)"),
    Hostile("a hint of direction", jar("a\u200eb"), f"2:8: {UNSEEN} (U+200E, left-to-right mark)"),
    Hostile("no width", jar("a\u200bb"), f"2:8: {UNSEEN} (U+200B, zero width space)"),
    Hostile("joined where nothing joins", jar("a\u200db"), f"2:8: {UNSEEN} (U+200D"),
    Hostile("an empty letter", jar("a\u3164"), f"2:8: {UNSEEN} (U+3164, hangul filler)"),
    Hostile("a tag", jar("a\U000e0041"), f"2:8: {UNSEEN} (U+E0041, tag latin capital letter a)"),
    Hostile("turned about by a backslash", jar('"a\\u202eb"'), "2:7: A backslash makes a"),
    Hostile("a nought by a backslash", jar('"a\\0b"'), "2:7: A backslash makes a character here"),
    Hostile("half a letter by a backslash", jar('"a\\ud800"'), "2:9: A backslash with u or U"),
    Hostile("a letter that isn't there", jar('"a\\U00110000"'), "2:9: A backslash with u or U"),
    Hostile("Hebrew", jar("ורד הגינה")),
    Hostile("Persian, parted as it is spelt", jar("گل\u200cهای باغ")),  # noqa: RUF001 (Persian)
    Hostile("a family of signs", jar("👩\u200d🌾 and 🌹")),
    Hostile("a tab", jar("x").replace("vessel:", "\tvessel:"), "9:1: This line is moved in with"),
    Hostile(
        "an order to Python", jar("!!python/object/apply:os.system [ls]"), "2:7: A word with !"
    ),
    Hostile("keys from elsewhere", "<<: {a: b}\n" + JAR_TEXT, "1:1: ‘<<’ copies keys"),
    Hostile("a key twice", JAR_TEXT + "time: 30 min\n", "55:1: ‘time’ stands here twice"),
    Hostile("two in one", JAR_TEXT + "---\nname: x\n", "55:1: A second document starts here"),
    Hostile("a great number", time("1e999999999 min"), "6:7: "),
    Hostile("no number", time("NaN min"), "6:7: "),
    Hostile("a number without end", time("9" * 5_000 + " min"), "6:7: "),
    Hostile("a share past all bounds", JAR_TEXT.replace("small: 0.6", "small: 1e308 %"), "23:10: "),
    Hostile("the year 99999", good(ORDER).replace("2026-09-19", "99999-01-01"), "3:7: ", ORDER),
    Hostile("the year 1", good(ORDER).replace("2026-09-19", "0001-01-01"), "3:7: ", ORDER),
    Hostile("ten to the thirty", JAR_TEXT.replace("5 cosmos", f"{10**30} cosmos"), "17:5: "),
    Hostile("a page moved about", ON_PAGE + "\na\u202eb\n", f"10:2: {UNSEEN} (U+202E", PAGE),
    Hostile("a nought on a page", ON_PAGE + "\nx\0y\n", f"10:2: {UNSEEN}", PAGE),
    Hostile("brackets on a page", ON_PAGE + "[" * 9_000, "7:1: This text has over", PAGE),
    Hostile("pictures on a page", ON_PAGE + "\n" + "![a](b " * 300, "10:1: This paragraph", PAGE),
    Hostile("lists in lists on a page", ON_PAGE + "\n" + "1. " * 5_000, "10:1: ", PAGE),
    Hostile("quotes in quotes on a page", ON_PAGE + "\n" + "> " * 5_000, "10:1: ", PAGE),
    Hostile("a page far in", ON_PAGE + "\n" + " " * 90 + "- x", "10:1: This line is nested", PAGE),
    Hostile("stars on a page", ON_PAGE + "\n" + "*a **b " * 500, "10:1: This paragraph", PAGE),
    Hostile("a page without end", ON_PAGE + "x y\n" * 30_000, "7:1: This text has 120,", PAGE),
    Hostile("headings on a page", ON_PAGE + "\n" + "# x\n\n" * 300, "410:1: This text has", PAGE),
    Hostile("paragraphs on a page", ON_PAGE + "\n" + "x\n\n" * 2_000, "7:1: This text has", PAGE),
    Hostile("a heading that never ends", "---\ntitle: x\n" + "a: b\n" * 90_000, "1:1: ", PAGE),
    Hostile("comments never closed", ON_PAGE + "\n" + "<!-- x\n\n" * 900, "", PAGE),
]


@pytest.mark.parametrize("hostile", FILES, ids=lambda hostile: hostile.name)
def test_a_hostile_file_is_told_in_its_place_at_once(hostile: Hostile, tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    raw = hostile.text if isinstance(hostile.text, bytes) else hostile.text.encode()
    (studio / hostile.file).write_bytes(raw)
    began = process_time()
    problems = [p for p in read_and_check(studio)[1] if p.file == studio / hostile.file]
    took = process_time() - began
    first = next((f"{p.line}:{p.column}: {p.message}" for p in problems), "")
    assert first.startswith(hostile.told) if hostile.told else not problems, first
    assert took < SLOWEST


def test_what_stands_in_a_file_of_another_encoding_is_not_missed_elsewhere(tmp_path: Path) -> None:
    studio = good_studio(tmp_path)
    text = good(DAHLIAS).replace("name: Dahlia, shell", "name: Dahlia, rosé").replace("\n", "\r")
    (studio / DAHLIAS).write_bytes(text.encode("latin-1"))
    assert [p.file.name for p in read_and_check(studio)[1]] == [Path(DAHLIAS).name]
