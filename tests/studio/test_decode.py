"""The bytes of a file become text, or a sentence that says why they can't."""

from pathlib import Path

import pytest

from corymb.studio.yaml_tree import decode

FILE = Path("f.yml")
SAVE = "Save it again as UTF-8: most editors offer that as ‘encoding’ when saving."


@pytest.mark.parametrize(
    ("raw", "text"),
    [
        pytest.param(b"a: 1\n", "a: 1\n", id="plain"),
        pytest.param("a: é花\n".encode(), "a: é花\n", id="letters of all kinds"),
        pytest.param(b"\xef\xbb\xbfa: 1\n", "a: 1\n", id="marked as UTF-8"),
        pytest.param(b"a: 1\r\nb: 2\r\n", "a: 1\nb: 2\n", id="Windows line ends"),
        pytest.param(b"a: 1\rb: 2\r", "a: 1\nb: 2\n", id="old line ends"),
        pytest.param(b"", "", id="nothing"),
    ],
)
def test_bytes_become_text(raw: bytes, text: str) -> None:
    assert decode(raw, FILE) == (text, [])


@pytest.mark.parametrize(
    ("raw", "expected", "source"),
    [
        pytest.param(
            "a: 1\r\nname: Rosé x\r\n".encode("cp1252"),
            "2:10: This file isn't saved as UTF-8: here stands a letter (probably ‘é’) that can't "
            f"be read. {SAVE}",
            "name: Ros\ufffd x",
            id="an old western encoding",
        ),
        pytest.param(
            "a: 1\n".encode("utf-16"),
            f"1:1: This file is saved as UTF-16. {SAVE}",
            None,
            id="UTF-16",
        ),
        pytest.param(
            b"\x89PNG" + b"\x00\xff" * 100,
            "1:1: This is not a text file. Only text can stand here.",
            None,
            id="a picture",
        ),
        pytest.param(
            b"x" * 2_000_001,
            "1:1: This file is 2.0 MB; a studio's file has at most 2 MB. Split it.",
            None,
            id="too large",
        ),
    ],
)
def test_what_is_not_text_is_told(raw: bytes, expected: str, source: str | None) -> None:
    text, [problem] = decode(raw, FILE)
    assert text is None
    assert str(problem) == f"f.yml:{expected}"
    assert source is None or problem.source == source
